// Package seastate prints what is known of a sea for a terminal.
package seastate

import (
	"fmt"
	"io"
	"math"
	"strings"
	"time"

	"coredays/model/sea"
	"coredays/output/text"
	"coredays/output/words"
)

// printer prints what is known of a sea.
type printer struct{ *text.Printer }

// Print prints the sea of one or more places for people: of several side by side what is asked first, unless all is
// wanted.
func Print(w io.Writer, studies []*sea.Study, d text.Detail) error {
	p := &printer{text.On(w)}
	if len(studies) > 1 && !d.All {
		if err := p.seas(studies); err != nil {
			return err
		}
		return p.To(w)
	}
	for i, s := range studies {
		if i > 0 {
			p.WriteByte('\n')
		}
		if err := p.study(s); err != nil {
			return err
		}
	}
	return p.To(w)
}

// study prints the sea of one place.
func (p *printer) study(s *sea.Study) error {
	p.Paragraph("", text.Indent, "The sea at "+s.Place)
	p.Say("Source: %s", s.Source)
	p.Say("Heights are significant wave heights (Hs) of 3-hour means; %d years of sea were made, seed %d.", s.Years, s.Seed)
	for _, section := range []func(*sea.Study) error{p.months, p.known, p.workable, p.spells} {
		if err := section(s); err != nil {
			return err
		}
	}
	p.trust(s)
	return nil
}

// months prints the year month by month.
func (p *printer) months(s *sea.Study) error {
	columns := []text.Column{text.WordColumn("month", 8), text.NumberColumn("mean\nHs (m)"), text.NumberColumn("sd (m)")}
	if s.Coring >= 0 {
		p.Heading("By month; storms are spells above %s m, the limit of coring", words.Figures(float64(s.Limits[s.Coring].Most)))
		columns = append(columns, text.NumberColumn("mean\nstorm (h)"), text.NumberColumn("P90 of\nstorm (h)"), text.NumberColumn("mean wait\nfor 24 h (h)"), text.NumberColumn("days lost\n(%)"))
	} else {
		p.Heading("By month; no limit of coring is known")
	}
	var rows [][]string
	for m := 1; m <= 12; m++ {
		row := []string{monthName(m), words.Fixed(s.MadeYear.Mean(m-1), 2), words.Fixed(s.MadeYear.Deviation(m-1), 2)}
		rows = append(rows, append(row, stormCells(s, m)...))
	}
	rows = append(rows, append([]string{"all year", "", ""}, stormCells(s, 0)...))
	if err := p.Table(columns, rows); err != nil {
		return err
	}
	if s.Coring >= 0 {
		p.Say("Days lost: the share of a coring ship's time above the limit or in calms shorter than 12 h between storms.")
	}
	return nil
}

// stormCells are the storms and waits of a month, or of all the year for 0.
func stormCells(s *sea.Study, month int) []string {
	if s.Coring < 0 {
		return nil
	}
	spells := s.Work.At(s.Coring, month)
	long, found := spells.StormAt(0.9)
	if !found {
		long = math.NaN()
	}
	return []string{hoursCell(spells.MeanAbove()), hoursCell(long), hoursCell(spells.MeanWait(1)), percentCell(s.Lost(month))}
}

// workable prints the share of the time in which each class of work goes on.
func (p *printer) workable(s *sea.Study) error {
	if len(s.Limits) == 0 {
		return nil
	}
	p.Heading("Share of the time below the limit of each class of work (%%)")
	columns := []text.Column{text.WordColumn("month", 8)}
	for _, l := range s.Limits {
		columns = append(columns, text.NumberColumn(strings.ReplaceAll(l.Name, " ", "\n")+"\n"+words.Figures(float64(l.Most))+" m"))
	}
	var rows [][]string
	for m := 1; m <= 13; m++ {
		row := []string{monthName(m)}
		for i := range s.Limits {
			row = append(row, percentCell(1-s.Work.At(i, m%13).ShareAbove()))
		}
		rows = append(rows, row)
	}
	return p.Table(columns, rows)
}

// spells prints how long the sea stays above and below heights: of the record beside the sea made
// like it, or of the sea made from a climate.
func (p *printer) spells(s *sea.Study) error {
	if s.Likeness == nil {
		p.Heading("How long the sea stays, all year")
	} else {
		p.Heading("The record and the sea made like it, all year (record / made)")
	}
	columns := []text.Column{text.NumberColumn("Hs (m)"), text.NumberColumn("share\nabove (%)"), text.NumberColumn("mean spell\nabove (h)"), text.NumberColumn("mean spell\nbelow (h)"),
		text.NumberColumn("mean wait\nfor 12 h (h)"), text.NumberColumn("for 24 h (h)"), text.NumberColumn("for 48 h (h)")}
	var rows [][]string
	for i, h := range s.Heights {
		one, other := s.Seasons.At(i, 0), s.Made.At(i, 0)
		if share := one.ShareAbove(); share < rarely || share > 1-rarely {
			continue
		}
		row := []string{words.Fixed(h, 1)}
		for _, figure := range []func(*sea.Spells) string{
			func(s *sea.Spells) string { return percentCell(s.ShareAbove()) },
			func(s *sea.Spells) string { return hoursCell(s.MeanAbove()) },
			func(s *sea.Spells) string { return hoursCell(s.MeanBelow()) },
			func(s *sea.Spells) string { return hoursCell(s.MeanWait(0)) },
			func(s *sea.Spells) string { return hoursCell(s.MeanWait(1)) },
			func(s *sea.Spells) string { return hoursCell(s.MeanWait(2)) },
		} {
			cell := figure(one)
			if s.Likeness != nil {
				cell += " / " + figure(other)
			}
			row = append(row, cell)
		}
		rows = append(rows, row)
	}
	return p.Table(columns, rows)
}

// rarely is the share of the time below which a sea is too rare for a mean spell to print; the JSON has
// it all the same.
const rarely = 0.005

// trust says how far to rely on all this.
func (p *printer) trust(s *sea.Study) {
	p.Heading("How far to trust it")
	for _, line := range trustOf(s) {
		p.Item(line)
	}
}

func trustOf(s *sea.Study) []string {
	if s.Likeness == nil {
		return append([]string{"from a climate alone, expect mean spells within about 12 % and waits within about 12 to 20 %, in the worst places 60 %; a record of the place does better"}, s.Notes...)
	}
	years := s.Likeness.Record.Years()
	return append([]string{fmt.Sprintf("%.2g years of heights leave about ±%.0f %% on mean spells and ±%.0f %% on waits (ten years leave ±10 %% and ±15 %%), "+
		"whatever is made of them", years, 10*math.Sqrt(10/years), 15*math.Sqrt(10/years)),
		fmt.Sprintf("the made sea beside the record is its hours %d times over, gaps and all", s.Times)}, s.Notes...)
}

func monthName(month int) string {
	if month > 12 {
		return "all year"
	}
	return time.Month(month).String()[:3]
}

// hoursCell writes hours in a table.
func hoursCell(hours float64) string {
	if math.Abs(hours) < 99.5 {
		return words.Fixed(hours, 1)
	}
	return words.Fixed(hours, 0)
}

// percentCell writes a share as per cent.
func percentCell(share float64) string { return words.Fixed(100*share, 1) }
