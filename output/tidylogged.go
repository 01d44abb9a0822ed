package output

import (
	"coredays/model/logbook"
)

// loggedSheet sets what a log has of each hole beside what was simulated of it, at the marked depths and
// at the deepest of the log.
func loggedSheet(s *logbook.Summary, log *logbook.Log) *sheet {
	t := &sheet{name: "logged", title: "As logged, beside what was simulated", fields: []field{{"site", "site", ofWords, ""}, {"hole", "hole", ofWords, ""},
		{"depth_m", "depth", ofMetres, "below the sea floor"}, {"days_logged", "logged, days after arrival", ofDays, "since the first line of the site, when the hole was first so deep"},
		{"share", "reached", ofShare, "of the simulated visits to the site in which the hole came so deep"}}}
	t.fields = append(t.fields, threeFields("days", "simulated", "days after arrival, simulated", ofDays)...)
	for i := range s.Sites {
		site := &s.Sites[i]
		stay, _ := log.At(site.Name)
		for _, way := range stay.Ways {
			for _, p := range passed(site, &way) {
				m := p.mark
				t.add(site.Name, way.Hole, float64(m.Depth), p.after/secondsOfDay, m.Share, m.P10/secondsOfDay, m.P50/secondsOfDay, m.P90/secondsOfDay)
			}
		}
	}
	return t
}
