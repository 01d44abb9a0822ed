package output

import (
	"math"

	"coredays/model/logbook"
	"coredays/model/unit"
)

// sitesSheet has a row for each site in the order of the visits.
func sitesSheet(s *logbook.Summary) *sheet {
	t := &sheet{name: "sites", title: "Sites in the order of the visits", fields: []field{
		{"site", "site", ofWords, ""}, {"alternate", "alternate", ofTruth, "visited only when time is left"},
		{"water_depth_m", "water depth", ofMetres, "below sea level"}, {"target_m", "target", ofMetres, "below the sea floor"}}}
	t.fields = append(t.fields, threeFields("arrives_d", "arrives, days after sailing", "days after sailing", ofDays)...)
	t.fields = append(t.fields, threeFields("arrives", "arrives", "arrival", ofDate)...)
	t.fields = append(t.fields, threeFields("leaves_d", "leaves, days after sailing", "days after sailing", ofDays)...)
	t.fields = append(t.fields, threeFields("leaves", "leaves", "leaving", ofDate)...)
	t.fields = append(t.fields, threeFields("days", "days on site", "from arrival to leaving", ofDays)...)
	t.fields = append(t.fields, threeFields("waiting", "waiting on weather", "on station", ofDays)...)
	t.fields = append(t.fields, threeFields("cored", "cored", "all holes together", ofMetres)...)
	t.fields = append(t.fields, threeFields("recovered", "recovered", "all holes together", ofMetres)...)
	t.fields = append(t.fields, threeFields("recovered_percent", "recovered", "of what was cored", ofPercent)...)
	t.fields = append(t.fields, threeFields("section", "section", "of the section down to the target, recovered in at least one hole", ofShare)...)
	t.fields = append(t.fields, field{"chance_reached", "reached", ofShare, "within the sea days"},
		field{"chance_complete", "complete", ofShare, "within the sea days: every hole and task done or not called for"})
	for i := range s.Sites {
		t.rows = append(t.rows, siteRow(&s.Sites[i], s))
	}
	return t
}

func siteRow(site *logbook.Site, s *logbook.Summary) []any {
	row := []any{site.Name, site.Alternate, float64(site.WaterDepth), float64(site.Target)}
	row = append(row, threeOf(inDays(site.Arrives))...)
	row = append(row, threeDates(s.Sails, site.Arrives)...)
	row = append(row, threeOf(inDays(site.Leaves))...)
	row = append(row, threeDates(s.Sails, site.Leaves)...)
	for _, x := range []logbook.Spread{inDays(site.Days), inDays(site.Waiting), site.Cored, site.Recovered, site.Percent, site.Coverage} {
		row = append(row, threeOf(x)...)
	}
	return append(row, site.ChanceReached, site.ChanceComplete)
}

// holesSheet has a row for each hole and task.
func holesSheet(s *logbook.Summary) *sheet {
	t := &sheet{name: "holes", title: "Holes and tasks", fields: []field{
		{"site", "site", ofWords, ""}, {"hole", "hole or task", ofWords, ""}, {"task", "task", ofTruth, "a task rather than a hole"},
		{"rank", "rank", ofCount, "1 is dropped last"}}}
	t.fields = append(t.fields, threeFields("days", "days", "time taken", ofDays)...)
	t.fields = append(t.fields, threeFields("depth", "depth", "below the sea floor", ofMetres)...)
	t.fields = append(t.fields, threeFields("refusal", "refusal", "of a piston corer, below the sea floor, where one was refused", ofMetres)...)
	t.fields = append(t.fields, threeFields("section", "section", "of the site's, recovered in this hole or one before it", ofShare)...)
	t.fields = append(t.fields, field{"chance_refused", "refused", ofShare, "of the replications"}, field{"chance_done", "done", ofShare, "within the sea days: completed"},
		field{"chance_not_called_for", "not called for", ofShare, "within the sea days: wanted only as another hole turns out, which turned out otherwise"},
		field{"chance_dropped", "dropped", ofShare, "within the sea days: left out, or cut short; adds up to 1 with the two before it"})
	for i := range s.Sites {
		for j := range s.Sites[i].Holes {
			h := &s.Sites[i].Holes[j]
			row := []any{s.Sites[i].Name, h.Name, h.Task, float64(h.Rank)}
			for _, x := range []logbook.Spread{inDays(h.Days), h.Depth, h.Refusal, h.Covered} {
				row = append(row, threeOf(x)...)
			}
			t.add(append(row, h.ChanceRefused, h.ChanceDone, h.ChanceNotCalled, h.ChanceDropped)...)
		}
	}
	return t
}

// passagesSheet has a row for each passage of the whole programme.
func passagesSheet(r *Report) *sheet {
	t := &sheet{name: "passages", title: "Passages", fields: []field{{"from", "from", ofWords, ""}, {"to", "to", ofWords, ""},
		{"distance_nmi", "distance", ofNauticalMiles, "along the track"}}}
	for _, p := range r.Passages {
		t.add(p.From, p.To, p.Distance/float64(unit.NauticalMile))
	}
	return t
}

// waySheet has a row for each depth of each hole.
func waySheet(s *logbook.Summary) *sheet {
	t := &sheet{name: "depth_days", title: "Depth against days", fields: []field{{"site", "site", ofWords, ""}, {"hole", "hole", ofWords, ""},
		{"depth_m", "depth", ofMetres, "below the sea floor"}, {"share", "reached", ofShare, "of the visits to the site in which the hole came so deep"}}}
	t.fields = append(t.fields, threeFields("days", "days after arrival", "since arriving at the site, when it first came so deep", ofDays)...)
	for _, site := range s.Sites {
		for _, h := range site.Holes {
			for _, m := range h.Marks {
				t.add(site.Name, h.Name, float64(m.Depth), m.Share, m.P10/secondsOfDay, m.P50/secondsOfDay, m.P90/secondsOfDay)
			}
		}
	}
	return t
}

// sectionSheet has a row for each slice of each site's section.
func sectionSheet(s *logbook.Summary) *sheet {
	t := &sheet{name: "section", title: "Recovery and section by depth", fields: []field{{"site", "site", ofWords, ""},
		{"from_m", "from", ofMetres, "below the sea floor"}, {"to_m", "to", ofMetres, "below the sea floor"},
		{"cored_m", "cored", ofMetres, "mean a visit, all holes together"}, {"recovered_m", "recovered", ofMetres, "mean a visit, all holes together"},
		{"recovered_percent", "recovered", ofPercent, "of what was cored; not told where it was cored in fewer than 1 visit of 20"},
		{"covered", "section", ofShare, "of the slice, recovered in at least one hole, mean over the visits"}}}
	for _, site := range s.Sites {
		for _, c := range site.Section {
			t.add(site.Name, float64(c.From), float64(c.To), float64(c.Cored), float64(c.Recovered), recoveredPercent(&c), c.Covered)
		}
	}
	return t
}

// recoveredPercent of a slice; few cores tell nothing.
func recoveredPercent(c *logbook.Slice) float64 {
	if float64(c.Cored) < float64(c.To-c.From)/20 {
		return math.NaN()
	}
	return 100 * float64(c.Recovered) / float64(c.Cored)
}

func layersSheet(s *logbook.Summary) *sheet {
	t := &sheet{name: "layers", title: "Layers as the survey has them", fields: []field{{"site", "site", ofWords, ""},
		{"layer", "layer", ofWords, ""}, {"bottom_m", "bottom", ofMetres, "below the sea floor"}}}
	for _, site := range s.Sites {
		for _, l := range site.Layers {
			t.add(site.Name, l.Name, float64(l.Bottom))
		}
	}
	return t
}
