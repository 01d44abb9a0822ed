package text

import (
	"coredays/model/result"
	"coredays/output/words"
)

// SiteWidth holds the names of sites where there is room; longer ones are wrapped, never cut.
const SiteWidth = 36

// visits prints how long each site takes and when.
func (p *printer) visits(s *result.Summary) error {
	p.heading("Sites in the order of the visits: time")
	p.explainSites(s)
	p.WriteByte('\n')
	cols := threeColumns(wordColumn("site", SiteWidth), s.Replications, "days (d)", " (d)")
	cols = append(cols, numberColumn("arrives"), numberColumn("leaves"))
	var longest []float64
	for _, site := range s.Sites {
		longest = append(longest, words.InDays(site.Days).P50, words.InDays(site.Days).P90)
	}
	var rows [][]string
	for i := range s.Sites {
		rows = append(rows, visit(&s.Sites[i], s, words.Places(longest...)))
	}
	return p.table(cols, rows)
}

// explainSites says what the figures of sites belong to.
func (p *printer) explainSites(s *result.Summary) {
	p.say("Days, dates and metres are of the whole programme; chances are within the %s days.", words.Given(s.Allotted.SeaDays.Days()))
	for _, site := range s.Sites {
		if site.Alternate {
			p.say("Those of an alternate are of the expeditions that reached it within the days.")
			return
		}
	}
}

// visit is the row of one site.
func visit(site *result.Site, s *result.Summary, places int) []string {
	row := threeCells(words.SiteName(site), words.InDays(site.Days), places, s.Replications)
	if words.NeverReached(site) {
		return append(row, "not reached", "")
	}
	return append(row, words.Dates(s.Sails, site.Arrives), words.Dates(s.Sails, site.Leaves))
}
