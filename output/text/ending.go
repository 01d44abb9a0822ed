package text

import (
	"fmt"
	"strings"

	"coredays/model/check"
	"coredays/model/result"
	"coredays/output/words"
)

// warnings prints warnings.
func (p *printer) warnings(s *result.Summary) {
	if len(s.Warnings) == 0 {
		return
	}
	p.heading("Warnings")
	for _, w := range s.Warnings {
		p.item(w)
	}
}

// cautions prints what no plan decides, in full or in short.
func (p *printer) cautions(full bool) {
	p.heading("Not decided here")
	if !full {
		p.say("A plan is an estimate, not a clearance. Site safety and approved depths, gas and H2S, stuck pipe and severing, limits of weather and ice, " +
			"ratings and marine mammals: licensed people and local codes decide (--cautions tells each).")
		return
	}
	for _, c := range check.Cautions() {
		p.item(c)
	}
}

// again prints the call that gives the same answer, and a word on what more there is.
func (p *printer) again(call, more string) {
	p.heading("To reproduce")
	defer p.says(more)
	if line := indent + words.Printable(call); words.Displayed(line) <= p.width {
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

// Call is the command line of a simulation.
func Call(s *result.Summary) string {
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
