package seastate

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"coredays/model/sea"
	"coredays/output/text"
	"coredays/output/words"
)

// seas prints the sea of several places side by side, as far as people ask first.
func (p *printer) seas(studies []*sea.Study) error {
	p.Paragraph("", text.Indent, fmt.Sprintf("The sea at %d places: %s", len(studies), strings.Join(placesOf(studies, func(*sea.Study) bool { return true }), ", ")))
	p.Say("Heights are significant wave heights (Hs) of 3-hour means; %d years of sea were made, seed %d.", studies[0].Years, studies[0].Seed)
	if err := p.lostByMonth(studies); err != nil {
		return err
	}
	if err := p.yearsOfPlaces(studies); err != nil {
		return err
	}
	p.knownOf(studies)
	p.Heading("Sources, and how far to trust them")
	var lines []string
	for _, s := range studies {
		for _, line := range append([]string{s.Source}, trustOf(s)...) {
			if !slices.Contains(lines, line) {
				lines = append(lines, line)
			}
		}
	}
	for _, line := range lines {
		p.Item(line)
	}
	p.Heading("Months, classes of work and spells of each place: --all, or --site NAME")
	return nil
}

// placesOf names the places of some studies.
func placesOf(studies []*sea.Study, some func(*sea.Study) bool) (names []string) {
	for _, s := range studies {
		if some(s) {
			names = append(names, s.Place)
		}
	}
	return names
}

// lostByMonth has a row for each place and a column for each month.
func (p *printer) lostByMonth(studies []*sea.Study) error {
	p.Heading("Days lost to a coring ship by month (%%)")
	p.WriteByte('\n')
	cols := []text.Column{text.WordColumn("place", 18)}
	for m := time.January; m <= time.December; m++ {
		cols = append(cols, text.NumberColumn(m.String()[:3]))
	}
	cols = append(cols, text.NumberColumn("year"))
	var rows [][]string
	for _, s := range studies {
		row := []string{s.Place}
		for m := 1; m <= 13; m++ {
			cell := words.Absent
			if s.Coring >= 0 {
				cell = words.Percent(s.Lost(m % 13))
			}
			row = append(row, cell)
		}
		rows = append(rows, row)
	}
	if err := p.Table(cols, rows); err != nil {
		return err
	}
	p.Say("The share of a coring ship's time above the limit of coring, or in calms shorter than 12 h between storms.")
	return nil
}

// yearsOfPlaces has a row for each place: the year as a whole.
func (p *printer) yearsOfPlaces(studies []*sea.Study) error {
	p.Heading("All year; storms are spells above the limit of coring")
	p.WriteByte('\n')
	cols := []text.Column{text.WordColumn("place", 18), text.NumberColumn("mean\nHs (m)"), text.NumberColumn("limit of\ncoring (m)"), text.NumberColumn("mean\nstorm (h)"), text.NumberColumn("P90 of\nstorm (h)"), text.NumberColumn("mean wait\nfor 24 h (h)"),
		text.NumberColumn("calmest\nmonth"), text.NumberColumn("roughest\nmonth")}
	var rows [][]string
	for _, s := range studies {
		mean, calm, rough := 0.0, 0, 0
		for m := range 12 {
			mean += s.MadeYear.Mean(m) / 12
			if s.MadeYear.Mean(m) < s.MadeYear.Mean(calm) {
				calm = m
			}
			if s.MadeYear.Mean(m) > s.MadeYear.Mean(rough) {
				rough = m
			}
		}
		row := []string{s.Place, words.Fixed(mean, 1), words.Absent, words.Absent, words.Absent, words.Absent}
		if s.Coring >= 0 {
			row = append(append(row[:2], words.Figures(float64(s.Limits[s.Coring].Most))), stormCells(s, 0)[:3]...)
		}
		rows = append(rows, append(row, monthName(calm+1), monthName(rough+1)))
	}
	return p.Table(cols, rows)
}

// knownOf says where cyclones and ice are on record.
func (p *printer) knownOf(studies []*sea.Study) {
	stated := placesOf(studies, func(s *sea.Study) bool { return s.Known != nil })
	if len(stated) == 0 {
		return
	}
	p.Heading("Cyclones and ice")
	some := placesOf(studies, func(s *sea.Study) bool { return s.Known != nil && !quiet(s.Known) })
	if len(some) == 0 {
		p.Say("None on record in any month. The long swell that a distant storm leaves is not in it.")
		return
	}
	p.Say("On record at %s: --site tells the months.", strings.Join(some, ", "))
}
