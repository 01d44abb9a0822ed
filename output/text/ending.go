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

// cautions prints what no plan decides.
func (p *printer) cautions() {
	p.heading("Not decided here")
	for _, c := range check.Cautions() {
		p.item(c)
	}
}

// again prints the call that gives the same answer.
func (p *printer) again(call string) {
	p.heading("To reproduce")
	if line := indent + words.Printable(call); words.Displayed(line) <= PageWidth {
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
