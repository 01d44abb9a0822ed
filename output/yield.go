package output

import "coredays/model/logbook"

// yield prints what each site brings and the chances of getting there.
func (p *page) yield(s *logbook.Summary) error {
	p.heading("Sites in the order of the visits: waiting on weather, core, chances")
	p.WriteByte('\n')
	several := s.Replications >= 2
	cols := []column{
		words("site", siteWidth),
		numbers("waiting (d)" + orLess("\nP50 (P10–P90)", several)),
		numbers("cored (m)" + orLess("\nP50", several)),
		numbers("recovered (%)" + orLess("\nP50 (P10–P90)", several)),
		numbers("section\n(%)"),
		numbers("reached" + orLess(" (%)", several)),
		numbers("complete" + orLess("\n(%)", several)),
	}
	var longest []float64
	for _, site := range s.Sites {
		longest = append(longest, inDays(site.Waiting).P50, inDays(site.Waiting).P90)
	}
	var rows [][]string
	for i := range s.Sites {
		rows = append(rows, yieldOf(&s.Sites[i], s, places(longest...)))
	}
	if err := p.table(cols, rows); err != nil {
		return err
	}
	p.say("Section: share of the section down to the target that is recovered in at least one hole%s.", orLess(", P50", several))
	return nil
}

// yieldOf is the row of one site.
func yieldOf(site *logbook.Site, s *logbook.Summary, places int) []string {
	reached, complete := chance(site.ChanceReached, s.Replications), chance(site.ChanceComplete, s.Replications)
	if site.ChanceReached == 0 {
		reached, complete = "not reached", absent
	}
	return []string{
		siteName(site),
		ranged(inDays(site.Waiting), places),
		fixed(middle(site.Cored), 0),
		ranged(site.Percent, 0),
		percent(middle(site.Coverage)),
		reached,
		complete,
	}
}
