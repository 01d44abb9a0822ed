package output

import "coredays/model/logbook"

// siteWidth holds the names of sites where there is room; longer ones are wrapped, never cut.
const siteWidth = 36

// visits prints how long each site takes and when.
func (p *page) visits(s *logbook.Summary) error {
	p.heading("Sites in the order of the visits: time")
	p.explainSites(s)
	p.WriteByte('\n')
	cols := threeColumns(words("site", siteWidth), s.Replications, "days (d)", " (d)")
	cols = append(cols, numbers("arrives"), numbers("leaves"))
	var longest []float64
	for _, site := range s.Sites {
		longest = append(longest, inDays(site.Days).P50, inDays(site.Days).P90)
	}
	var rows [][]string
	for i := range s.Sites {
		rows = append(rows, visit(&s.Sites[i], s, places(longest...)))
	}
	return p.table(cols, rows)
}

// explainSites says what the figures of sites belong to.
func (p *page) explainSites(s *logbook.Summary) {
	p.say("Days, dates and metres are of the whole programme; chances are within the %s days.", given(s.Allotted.SeaDays.Days()))
	for _, site := range s.Sites {
		if site.Alternate {
			p.say("Those of an alternate are of the expeditions that reached it within the days.")
			return
		}
	}
}

// visit is the row of one site.
func visit(site *logbook.Site, s *logbook.Summary, places int) []string {
	row := threeCells(siteName(site), inDays(site.Days), places, s.Replications)
	if neverReached(site) {
		return append(row, "not reached", "")
	}
	return append(row, dates(s.Sails, site.Arrives), dates(s.Sails, site.Leaves))
}
