package output

import (
	"fmt"
	"strings"

	"coredays/model/logbook"
)

// warnings prints what makes the answer weaker than it looks.
func (p *page) warnings(s *logbook.Summary) {
	if len(s.Warnings) == 0 {
		return
	}
	p.heading("Warnings")
	for _, w := range s.Warnings {
		p.item(w)
	}
}

// cautions prints what no plan decides.
func (p *page) cautions() {
	p.heading("An estimate, not a clearance. Licensed people and local codes decide on")
	for _, subject := range []string{
		"site safety, pollution prevention, and the depth to which each hole is approved;",
		"gas, watched on each core by people who may stop the work; a plan for hydrogen sulphide;",
		"stuck pipe, and being ready to sever the string;",
		"limits of weather and ice, which are the master's;",
		"loads and make-up torque, from the makers' current tables; no rating may be exceeded;",
		"marine mammals, by the rules of the place.",
	} {
		p.item(subject)
	}
}

// repeat prints the call that gives the same answer again.
func (p *page) repeat(s *logbook.Summary) {
	p.heading("The same answer again")
	call := call(s)
	if line := indent + printable(call); displayed(line) <= pageWidth {
		p.WriteString(line + "\n") // as it is, with several blanks in a path if it has them
		return
	}
	p.paragraph(indent, indent+indent, call)
}

// quoted makes one word of a path for a POSIX shell.
func quoted(path string) string {
	if strings.ContainsAny(path, " \t\"'$`\\*?[](){}<>|&;#!~") {
		return "'" + strings.ReplaceAll(path, "'", `'\''`) + "'"
	}
	return path
}

// call is the command line of a simulation.
func call(s *logbook.Summary) string {
	call := "coredays simulate"
	if s.File != "" && !s.Invented {
		call += " " + quoted(s.File)
	}
	for _, setting := range s.Settings {
		call += " --set " + quoted(setting)
	}
	if s.Anyway {
		call += " --anyway"
	}
	return call + fmt.Sprintf(" --seed %d --replications %d", s.Seed, max(s.Replications, 1))
}
