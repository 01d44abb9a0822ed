package text

import (
	"fmt"
	"io"

	"coredays/model/result"
	"coredays/output/words"
)

// Detail is how much is printed: the answer, which fits two screens, or more.
type Detail struct {
	All      bool // every table
	Cautions bool // what no plan decides, in full
}

// Simulation prints the answer of a simulation for people.
func Simulation(w io.Writer, s *result.Summary, d Detail) error {
	p := On(w)
	p.title(s)
	if s.Replications > 0 {
		sections := []section{p.needed, p.allotted, p.sites, p.tools}
		if d.All {
			sections = append(sections, p.dates, p.holes, p.classes, p.drivers, p.consumables)
		} else {
			sections = append(sections, p.inShort)
		}
		if err := p.answer(s, sections); err != nil {
			return err
		}
	}
	p.warnings(s)
	p.Cautions(d.All || d.Cautions)
	p.Again(Call(s), words.OrLess("--all prints every hole, date, class of time and cause.", !d.All))
	return p.To(w)
}

// section prints a part of the answer.
type section func(*result.Summary) error

func (p *Printer) answer(s *result.Summary, sections []section) error {
	for _, section := range sections {
		if err := section(s); err != nil {
			return err
		}
	}
	return nil
}

// title says what was simulated and how to read it.
func (p *Printer) title(s *result.Summary) {
	p.Paragraph("", Indent, fmt.Sprintf("%s%s; %s; seed %d; %s", words.OrElse(s.Scenario, "Unnamed scenario"), words.Invented(s),
		words.OrElse(s.Ship, "unnamed ship"), s.Seed, words.Simulated(s)))
	if !s.Sails.IsZero() {
		p.Paragraph("", Indent, "Sails "+words.Moment(s.Sails)+inPort(s.InPort))
	}
	if s.Checked != "" {
		p.Paragraph("", Indent, s.Checked)
	}
	if s.Based != "" {
		p.Paragraph("", Indent, s.Based)
	}
	if s.Replications >= 2 {
		p.Paragraph("", Indent, "P10, P50, P90: 1, 5 and 9 expeditions in 10 stay below the figure.")
	}
}

func inPort(days result.Spread) string {
	if days.N < 1 || !words.Defined(days.P50) {
		return ""
	}
	days = words.InDays(days)
	return fmt.Sprintf(", after %s days in port, not counted", words.Ranged(days, words.DayPlaces))
}
