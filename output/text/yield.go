package text

import (
	"coredays/model/result"
	"coredays/output/words"
)

// yield prints what each site brings and the chances of getting there.
func (p *printer) yield(s *result.Summary) error {
	p.heading("Sites in the order of the visits: waiting on weather, core, chances")
	p.WriteByte('\n')
	several := s.Replications >= 2
	cols := []column{
		wordColumn("site", SiteWidth),
		numberColumn("waiting (d)" + words.OrLess("\nP50 (P10–P90)", several)),
		numberColumn("cored (m)" + words.OrLess("\nP50", several)),
		numberColumn("recovered (%)" + words.OrLess("\nP50 (P10–P90)", several)),
		numberColumn("section\n(%)"),
		numberColumn("reached" + words.OrLess(" (%)", several)),
		numberColumn("complete" + words.OrLess("\n(%)", several)),
	}
	var longest []float64
	for _, site := range s.Sites {
		longest = append(longest, words.InDays(site.Waiting).P50, words.InDays(site.Waiting).P90)
	}
	var rows [][]string
	for i := range s.Sites {
		rows = append(rows, yieldOf(&s.Sites[i], s, words.Places(longest...)))
	}
	if err := p.table(cols, rows); err != nil {
		return err
	}
	p.say("Section: share of the section down to the target that is recovered in at least one hole%s.", words.OrLess(", P50", several))
	return nil
}

// yieldOf is the row of one site.
func yieldOf(site *result.Site, s *result.Summary, places int) []string {
	reached, complete := words.Chance(site.ChanceReached, s.Replications), words.Chance(site.ChanceComplete, s.Replications)
	if site.ChanceReached == 0 {
		reached, complete = "not reached", words.Absent
	}
	return []string{
		words.SiteName(site),
		words.Ranged(words.InDays(site.Waiting), places),
		words.Fixed(words.Middle(site.Cored), 0),
		words.Ranged(site.Percent, 0),
		words.Percent(words.Middle(site.Coverage)),
		reached,
		complete,
	}
}
