package sheet

import (
	"math"

	"coredays/model/result"
	"coredays/model/unit"
	"coredays/output"
	"coredays/output/words"
)

// Sites has a row for each site in the order of the visits.
func Sites(s *result.Summary) *Table {
	t := &Table{Name: "sites", Title: "Sites in the order of the visits", Fields: []Field{
		{"site", "site", OfWords, ""}, {"alternate", "alternate", OfTruth, "visited only when time is left"},
		{"water_depth_m", "water depth", ofMetres, "below sea level"}, {"target_m", "target", ofMetres, "below the sea floor"}}}
	t.Fields = append(t.Fields, threeFields("arrives_d", "arrives, days after sailing", "days after sailing", ofDays)...)
	t.Fields = append(t.Fields, threeFields("arrives", "arrives", "arrival", ofDate)...)
	t.Fields = append(t.Fields, threeFields("leaves_d", "leaves, days after sailing", "days after sailing", ofDays)...)
	t.Fields = append(t.Fields, threeFields("leaves", "leaves", "leaving", ofDate)...)
	t.Fields = append(t.Fields, threeFields("days", "days on site", "from arrival to leaving", ofDays)...)
	t.Fields = append(t.Fields, threeFields("waiting", "waiting on weather", "on station", ofDays)...)
	t.Fields = append(t.Fields, threeFields("cored", "cored", "all holes together", ofMetres)...)
	t.Fields = append(t.Fields, threeFields("recovered", "recovered", "all holes together", ofMetres)...)
	t.Fields = append(t.Fields, threeFields("recovered_percent", "recovered", "of what was cored", ofPercent)...)
	t.Fields = append(t.Fields, threeFields("section", "section", "of the section down to the target, recovered in at least one hole", ofShare)...)
	t.Fields = append(t.Fields, Field{"ranks", "ranks", OfWords, "of its holes and tasks; 1 is dropped last"}, Field{"chance_reached", "reached", ofShare, "within the sea days"},
		Field{"chance_complete", "complete", ofShare, "within the sea days: every hole and task done or not called for"})
	for i := range s.Sites {
		t.Rows = append(t.Rows, siteRow(&s.Sites[i], s))
	}
	return t
}

func siteRow(site *result.Site, s *result.Summary) []any {
	row := []any{site.Name, site.Alternate, float64(site.WaterDepth), float64(site.Target)}
	row = append(row, threeOf(words.InDays(site.Arrives))...)
	row = append(row, threeDates(s.Sails, site.Arrives)...)
	row = append(row, threeOf(words.InDays(site.Leaves))...)
	row = append(row, threeDates(s.Sails, site.Leaves)...)
	for _, x := range []result.Spread{words.InDays(site.Days), words.InDays(site.Waiting), site.Cored, site.Recovered, site.Percent, site.Coverage} {
		row = append(row, threeOf(x)...)
	}
	return append(row, words.Ranks(site), site.ChanceReached, site.ChanceComplete)
}

// Holes has a row for each hole and task.
func Holes(s *result.Summary) *Table {
	t := &Table{Name: "holes", Title: "Holes and tasks", Fields: []Field{
		{"site", "site", OfWords, ""}, {"hole", "hole or task", OfWords, ""}, {"task", "task", OfTruth, "a task rather than a hole"},
		{"rank", "rank", ofCount, "1 is dropped last"}}}
	t.Fields = append(t.Fields, threeFields("days", "days", "time taken", ofDays)...)
	t.Fields = append(t.Fields, threeFields("depth", "depth", "below the sea floor", ofMetres)...)
	t.Fields = append(t.Fields, threeFields("refusal", "refusal", "of a piston corer, below the sea floor, where one was refused", ofMetres)...)
	t.Fields = append(t.Fields, threeFields("section", "section", "of the site's, recovered in this hole or one before it", ofShare)...)
	t.Fields = append(t.Fields, Field{"chance_refused", "refused", ofShare, "of the replications"}, Field{"chance_done", "done", ofShare, "within the sea days: completed"},
		Field{"chance_not_called_for", "not called for", ofShare, "within the sea days: wanted only as another hole turns out, which turned out otherwise"},
		Field{"chance_dropped", "dropped", ofShare, "within the sea days: left out, or cut short; adds up to 1 with the two before it"})
	for i := range s.Sites {
		for j := range s.Sites[i].Holes {
			h := &s.Sites[i].Holes[j]
			row := []any{s.Sites[i].Name, h.Name, h.Task, float64(h.Rank)}
			for _, x := range []result.Spread{words.InDays(h.Days), h.Depth, h.Refusal, h.Covered} {
				row = append(row, threeOf(x)...)
			}
			t.Add(append(row, h.ChanceRefused, h.ChanceDone, h.ChanceNotCalled, h.ChanceDropped)...)
		}
	}
	return t
}

// Passages has a row for each passage of the whole programme.
func Passages(r *output.Report) *Table {
	t := &Table{Name: "passages", Title: "Passages", Fields: []Field{{"from", "from", OfWords, ""}, {"to", "to", OfWords, ""},
		{"distance_nmi", "distance", ofNauticalMiles, "along the track"}}}
	for _, p := range r.Passages {
		t.Add(p.From, p.To, p.Distance/float64(unit.NauticalMile))
	}
	return t
}

// Way has a row for each depth of each hole.
func Way(s *result.Summary) *Table {
	t := &Table{Name: "depth_days", Title: "Depth against days", Fields: []Field{{"site", "site", OfWords, ""}, {"hole", "hole", OfWords, ""},
		{"depth_m", "depth", ofMetres, "below the sea floor"}, {"share", "reached", ofShare, "of the visits to the site in which the hole came so deep"}}}
	t.Fields = append(t.Fields, threeFields("days", "days after arrival", "since arriving at the site, when it first came so deep", ofDays)...)
	for _, site := range s.Sites {
		for _, h := range site.Holes {
			for _, m := range h.Marks {
				t.Add(site.Name, h.Name, float64(m.Depth), m.Share, m.P10/words.SecondsOfDay, m.P50/words.SecondsOfDay, m.P90/words.SecondsOfDay)
			}
		}
	}
	return t
}

// Section has a row for each slice of each site's section.
func Section(s *result.Summary) *Table {
	t := &Table{Name: "section", Title: "Recovery and section by depth", Fields: []Field{{"site", "site", OfWords, ""},
		{"from_m", "from", ofMetres, "below the sea floor"}, {"to_m", "to", ofMetres, "below the sea floor"},
		{"cored_m", "cored", ofMetres, "mean a visit, all holes together"}, {"recovered_m", "recovered", ofMetres, "mean a visit, all holes together"},
		{"recovered_percent", "recovered", ofPercent, "of what was cored; not given where it was cored in fewer than 1 visit of 20"},
		{"covered", "section", ofShare, "of the slice, recovered in at least one hole, mean over the visits"}}}
	for _, site := range s.Sites {
		for _, c := range site.Section {
			t.Add(site.Name, float64(c.From), float64(c.To), float64(c.Cored), float64(c.Recovered), RecoveredPercent(&c), c.Covered)
		}
	}
	return t
}

// RecoveredPercent of a slice; few cores tell nothing.
func RecoveredPercent(c *result.Slice) float64 {
	if float64(c.Cored) < float64(c.To-c.From)/20 {
		return math.NaN()
	}
	return 100 * float64(c.Recovered) / float64(c.Cored)
}

func Layers(s *result.Summary) *Table {
	t := &Table{Name: "layers", Title: "Layers as the survey has them", Fields: []Field{{"site", "site", OfWords, ""},
		{"layer", "layer", OfWords, ""}, {"bottom_m", "bottom", ofMetres, "below the sea floor"}}}
	for _, site := range s.Sites {
		for _, l := range site.Layers {
			t.Add(site.Name, l.Name, float64(l.Bottom))
		}
	}
	return t
}
