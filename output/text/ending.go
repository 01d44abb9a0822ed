package text

import (
	"fmt"
	"strings"

	"coredays/model/check"
	"coredays/model/result"
	"coredays/output/words"
)

// warnings prints warnings.
func (p *Printer) warnings(s *result.Summary) {
	if len(s.Warnings) == 0 {
		return
	}
	p.Heading("Warnings")
	for _, w := range s.Warnings {
		p.Item(w)
	}
}

// Cautions prints what no plan decides, in full or in short.
func (p *Printer) Cautions(full bool) {
	p.Heading("Not decided here")
	if !full {
		p.Say("A plan is an estimate, not a clearance. Site safety and approved depths, gas and H2S, stuck pipe and severing, limits of weather and ice, " +
			"ratings and marine mammals: licensed people and local codes decide (--cautions tells each).")
		return
	}
	for _, c := range check.Cautions() {
		p.Item(c)
	}
}

// Again prints the call that gives the same answer, and a word on what more there is.
func (p *Printer) Again(call, more string) {
	p.Heading("To reproduce")
	defer p.Says(more)
	if line := Indent + words.Printable(call); words.Displayed(line) <= p.width {
		p.WriteString(line + "\n") // as it is, with several blanks in a path if it has them
		return
	}
	p.Paragraph(Indent, Indent+Indent, call)
}

// Quoted makes one word of a path for a POSIX shell.
func Quoted(path string) string {
	if strings.ContainsAny(path, " \t\"'$`\\*?[](){}<>|&;#!~") {
		return "'" + strings.ReplaceAll(path, "'", `'\''`) + "'"
	}
	return path
}

// Call is the command line of a simulation.
func Call(s *result.Summary) string {
	call := "coredays simulate"
	if s.File != "" && !s.Invented {
		call += " " + Quoted(s.File)
	}
	for _, setting := range s.Settings {
		call += " --set " + Quoted(setting)
	}
	if s.Anyway {
		call += " --anyway"
	}
	return call + fmt.Sprintf(" --seed %d --replications %d", s.Seed, max(s.Replications, 1))
}
