package sheet

import (
	"coredays/model/result"
	"coredays/output/text"
	"coredays/output/words"
)

// Logged sets what a log has of each hole beside what was simulated of it, at the marked depths and
// at the deepest of the log.
func Logged(s *result.Summary, log *result.Log) *Table {
	t := &Table{Name: "logged", Title: "As logged, beside what was simulated", Fields: []Field{{"site", "site", OfWords, ""}, {"hole", "hole", OfWords, ""},
		{"depth_m", "depth", ofMetres, "below the sea floor"}, {"days_logged", "logged, days after arrival", ofDays, "since the first line of the site, when the hole was first so deep"},
		{"share", "reached", ofShare, "of the simulated visits to the site in which the hole came so deep"}}}
	t.Fields = append(t.Fields, threeFields("days", "simulated", "days after arrival, simulated", ofDays)...)
	for i := range s.Sites {
		site := &s.Sites[i]
		stay, _ := log.At(site.Name)
		for _, way := range stay.Ways {
			for _, p := range text.Passed(site, &way) {
				m := p.Mark
				t.Add(site.Name, way.Hole, float64(m.Depth), p.After/words.SecondsOfDay, m.Share, m.P10/words.SecondsOfDay, m.P50/words.SecondsOfDay, m.P90/words.SecondsOfDay)
			}
		}
	}
	return t
}
