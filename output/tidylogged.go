package output

import (
	"fmt"
	"math"
	"slices"

	"coredays/model/logbook"
	"coredays/model/unit"
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

// passing is a depth that a hole passes in the log, s after arriving at the site, with what was simulated of it.
type passing struct {
	mark  logbook.DepthMark
	after float64
}

// passed are the marked depths that a hole passes in the log, and the deepest of the log; none of a hole
// that the scenario has not.
func passed(site *logbook.Site, way *logbook.Way) (list []passing) {
	n := slices.IndexFunc(site.Holes, func(h logbook.Hole) bool { return h.Name == way.Hole })
	if n < 0 {
		return nil
	}
	marks := site.Holes[n].Marks
	for i, m := range marks {
		after, came := way.CameTo(m.Depth)
		if !came {
			if last := amid(marks[max(0, i-1)], m, way.Deepest()); i > 0 && m.Share > 0 {
				at, _ := way.CameTo(last.Depth)
				list = append(list, passing{last, at})
			}
			break
		}
		list = append(list, passing{m, after})
	}
	return list
}

// amid is what was simulated of a depth between two marks, taken to lie evenly between them.
func amid(a, b logbook.DepthMark, depth unit.Depth) logbook.DepthMark {
	part := float64((depth - a.Depth) / (b.Depth - a.Depth))
	even := func(x, y float64) float64 { return x + part*(y-x) }
	return logbook.DepthMark{Depth: depth, Share: even(a.Share, b.Share), P10: even(a.P10, b.P10), P50: even(a.P50, b.P50), P90: even(a.P90, b.P90)}
}

// logged is what the log has of a site, nothing where there is no log.
func (r *Report) logged(site *logbook.Site) (stay logbook.Stay) {
	if r.Log != nil {
		stay, _ = r.Log.At(site.Name)
	}
	return stay
}

// loggedWords tells until when the log goes at a site and where it has the hole begun last; nothing where it
// has none.
func loggedWords(site *logbook.Site, stay *logbook.Stay) string {
	if len(stay.Ways) == 0 {
		return ""
	}
	way := &stay.Ways[len(stay.Ways)-1]
	away := ""
	if stay.Away > 0 {
		away = ", " + fixed(stay.Away/secondsOfDay, 1) + " days elsewhere not counted"
	}
	text := fmt.Sprintf("until %s%s: hole %s", moment(stay.Until), away, way.Hole)
	for _, p := range slices.Backward(passed(site, way)) {
		if p.mark.Share > 0 {
			simulated := logbook.Spread{N: 2, P10: p.mark.P10, P50: p.mark.P50, P90: p.mark.P90}
			return fmt.Sprintf("%s came to %s m %s days after arriving; simulated, %s days after. %s", text, given(float64(p.mark.Depth)),
				fixed(p.after/secondsOfDay, 1), ranged(inDays(simulated), 1), aheadOrBehind(p.after-p.mark.P50))
		}
	}
	end := way.Points[len(way.Points)-1]
	return fmt.Sprintf("%s is %s m deep %s days after arriving; no simulated hole of that name came so far.", text, given(float64(end.Depth)), fixed(end.After/secondsOfDay, 1))
}

// aheadOrBehind tells how much later than the even way a hole is, s.
func aheadOrBehind(late float64) string {
	days := fixed(math.Abs(late)/secondsOfDay, 1)
	switch {
	case days == fixed(0, 1):
		return "That is as P50 has it."
	case late > 0:
		return "That is " + days + " days behind P50."
	}
	return "That is " + days + " days ahead of P50."
}
