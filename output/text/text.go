package text

import (
	"fmt"
	"io"

	"coredays/model/result"
	"coredays/output/words"
)

// Simulation prints the answer of a simulation for people.
func Simulation(w io.Writer, s *result.Summary) error {
	var p printer
	p.title(s)
	if s.Replications > 0 {
		if err := p.answer(s); err != nil {
			return err
		}
	}
	p.warnings(s)
	p.cautions()
	p.again(Call(s))
	return p.to(w)
}

// answer prints the sections that rest on replications.
func (p *printer) answer(s *result.Summary) error {
	for _, section := range []func(*result.Summary) error{
		p.needed, p.allotted, p.visits, p.yield, p.holes, p.classes, p.tools, p.drivers, p.consumables,
	} {
		if err := section(s); err != nil {
			return err
		}
	}
	return nil
}

// title says what was simulated and how to read it.
func (p *printer) title(s *result.Summary) {
	p.paragraph("", indent, fmt.Sprintf("%s%s; %s; seed %d; %s", words.OrElse(s.Scenario, "Unnamed scenario"), words.Invented(s),
		words.OrElse(s.Ship, "unnamed ship"), s.Seed, words.Simulated(s)))
	if !s.Sails.IsZero() {
		p.paragraph("", indent, "Sails "+words.Moment(s.Sails)+inPort(s.InPort))
	}
	if s.Replications >= 2 {
		p.paragraph("", indent, "P10, P50, P90: one expedition in ten, five in ten, nine in ten stay below the figure.")
	}
}

func inPort(days result.Spread) string {
	if days.N < 1 || !words.Defined(days.P50) {
		return ""
	}
	days = words.InDays(days)
	return fmt.Sprintf(", after %s days in port, not included below", words.Ranged(days, words.Places(days.P90, days.P50)))
}
