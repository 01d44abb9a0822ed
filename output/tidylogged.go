package output

import (
	"fmt"
	"slices"

	"coredays/model/logbook"
)

// loggedSheet sets what a log has of each hole beside what was simulated of it, at the depths that are
// marked in both.
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

// passing is a mark of a hole that the log passes, s after arriving at the site.
type passing struct {
	mark  logbook.DepthMark
	after float64
}

// passed are the marks that a hole passes in the log; none of a hole that the scenario has not.
func passed(site *logbook.Site, way *logbook.Way) (list []passing) {
	n := slices.IndexFunc(site.Holes, func(h logbook.Hole) bool { return h.Name == way.Hole })
	if n < 0 {
		return nil
	}
	for _, m := range site.Holes[n].Marks {
		if after, came := way.CameTo(m.Depth); came {
			list = append(list, passing{m, after})
		}
	}
	return list
}

// logged is what the log has of a site, nothing where there is no log.
func (r *Report) logged(site *logbook.Site) (stay logbook.Stay) {
	if r.Log != nil {
		stay, _ = r.Log.At(site.Name)
	}
	return stay
}

// loggedWords tells where the log has the hole of the site that was begun last; nothing where it has none.
func loggedWords(site *logbook.Site, stay *logbook.Stay) string {
	if len(stay.Ways) == 0 {
		return ""
	}
	way := &stay.Ways[len(stay.Ways)-1]
	text := fmt.Sprintf(" Logged until %s: hole %s", moment(stay.Until), way.Hole)
	for _, p := range slices.Backward(passed(site, way)) {
		if p.mark.Share > 0 {
			simulated := logbook.Spread{N: 2, P10: p.mark.P10, P50: p.mark.P50, P90: p.mark.P90}
			return fmt.Sprintf("%s came to %s m %s days after arriving; simulated, %s days after.", text, figures(float64(p.mark.Depth)),
				fixed(p.after/secondsOfDay, 1), ranged(inDays(simulated), 1))
		}
	}
	end := way.Points[len(way.Points)-1]
	return fmt.Sprintf("%s is %s m deep %s days after arriving; no simulated hole of that name came so far.", text, figures(float64(end.Depth)), fixed(end.After/secondsOfDay, 1))
}
