package text

import (
	"fmt"

	"coredays/model/result"
	"coredays/output/words"
)

// SiteWidth holds the names of sites where there is room; longer ones are wrapped, never cut.
const SiteWidth = 36

// sites prints what each site takes and brings, and the chances of getting there.
func (p *Printer) sites(s *result.Summary) error {
	p.Heading("Sites in the order of the visits")
	p.explainSites(s)
	p.WriteByte('\n')
	var cols []Column
	for i, head := range SiteHeads(s.Replications >= 2) {
		if i == 0 {
			cols = append(cols, WordColumn(head, SiteWidth))
		} else {
			cols = append(cols, NumberColumn(head))
		}
	}
	var rows [][]string
	for i := range s.Sites {
		rows = append(rows, SiteRow(&s.Sites[i], s.Replications))
	}
	return p.Table(cols, rows)
}

// explainSites says what the figures of sites belong to.
func (p *Printer) explainSites(s *result.Summary) { p.Say("%s", SitesNote(s)) }

// SitesNote says what the figures of sites belong to.
func SitesNote(s *result.Summary) string {
	text := fmt.Sprintf("Of the whole programme; chances are within the %s days.", words.Given(s.Allotted.SeaDays.Days()))
	for _, site := range s.Sites {
		if site.Alternate {
			text += " An alternate's are of the expeditions that reached it."
			break
		}
	}
	return text
}

// SiteHeads head the columns of SiteRow.
func SiteHeads(several bool) []string {
	below := words.OrLess("\nP50 (P10–P90)", several)
	return []string{"site", "ranks", "days (d)" + below, "waiting (d)" + below, "core (m)" + words.OrLess("\nP50", several),
		"recovered\n(%)", "reached" + words.OrLess("\n(%)", several), "complete" + words.OrLess("\n(%)", several)}
}

// SiteRow is the row of one site.
func SiteRow(site *result.Site, replications int) []string {
	reached, complete := words.Chance(site.ChanceReached, replications), words.Chance(site.ChanceComplete, replications)
	if site.ChanceReached == 0 {
		complete = words.Absent
	}
	return []string{
		words.SiteName(site), words.Ranks(site),
		words.Ranged(words.InDays(site.Days), words.DayPlaces), words.Ranged(words.InDays(site.Waiting), words.DayPlaces),
		words.Fixed(words.Middle(site.Recovered), 0), words.Fixed(words.Middle(site.Percent), 0),
		reached, complete,
	}
}

// dates prints when each site is visited, and how much is cored of its section.
func (p *Printer) dates(s *result.Summary) error {
	p.Heading("Sites in the order of the visits: dates and section (whole programme)")
	p.WriteByte('\n')
	several := s.Replications >= 2
	below := words.OrLess("\nP50 (P10–P90)", several)
	cols := []Column{WordColumn("site", SiteWidth), NumberColumn("arrives" + below), NumberColumn("leaves" + below),
		NumberColumn("cored (m)" + words.OrLess("\nP50", several)), NumberColumn("recovered (%)" + below), NumberColumn("section\n(%)")}
	var rows [][]string
	for i := range s.Sites {
		site := &s.Sites[i]
		row := []string{words.SiteName(site), "not reached", "", words.Absent, words.Absent, words.Absent}
		if !words.NeverReached(site) {
			row = []string{words.SiteName(site), words.Dates(s.Sails, site.Arrives), words.Dates(s.Sails, site.Leaves),
				words.Fixed(words.Middle(site.Cored), 0), words.Ranged(site.Percent, 0), words.Percent(words.Middle(site.Coverage))}
		}
		rows = append(rows, row)
	}
	if err := p.Table(cols, rows); err != nil {
		return err
	}
	p.Say("Section: share of the section down to the target that is recovered in at least one hole%s.", words.OrLess(", P50", several))
	return nil
}
