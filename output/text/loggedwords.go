package text

import (
	"fmt"
	"math"
	"slices"

	"coredays/model/result"
	"coredays/model/unit"
	"coredays/output/words"
)

// passing is a depth that a hole passes in the log, s after arriving at the site, with what was simulated of it.
type passing struct {
	Mark  result.DepthMark
	After float64
}

// Passed are the marked depths that a hole passes in the log, and the deepest of the log; none of a hole
// that the scenario has not.
func Passed(site *result.Site, way *result.Way) (list []passing) {
	n := slices.IndexFunc(site.Holes, func(h result.Hole) bool { return h.Name == way.Hole })
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
func amid(a, b result.DepthMark, depth unit.Depth) result.DepthMark {
	part := float64((depth - a.Depth) / (b.Depth - a.Depth))
	even := func(x, y float64) float64 { return x + part*(y-x) }
	return result.DepthMark{Depth: depth, Share: even(a.Share, b.Share), P10: even(a.P10, b.P10), P50: even(a.P50, b.P50), P90: even(a.P90, b.P90)}
}

// LoggedWords says until when the log goes at a site and where it has the hole begun last; nothing where it
// has none.
func LoggedWords(site *result.Site, stay *result.Stay) string {
	if len(stay.Ways) == 0 {
		return ""
	}
	way := &stay.Ways[len(stay.Ways)-1]
	away := ""
	if stay.Away > 0 {
		away = ", " + words.Fixed(stay.Away/words.SecondsOfDay, 1) + " days elsewhere not counted"
	}
	text := fmt.Sprintf("until %s%s: hole %s", words.Moment(stay.Until), away, way.Hole)
	for _, p := range slices.Backward(Passed(site, way)) {
		if p.Mark.Share > 0 {
			simulated := result.Spread{N: 2, P10: p.Mark.P10, P50: p.Mark.P50, P90: p.Mark.P90}
			return fmt.Sprintf("%s came to %s m %s days after arriving; simulated, %s days after. %s", text, words.Given(float64(p.Mark.Depth)),
				words.Fixed(p.After/words.SecondsOfDay, 1), words.Ranged(words.InDays(simulated), 1), aheadOrBehind(p.After-p.Mark.P50))
		}
	}
	end := way.Points[len(way.Points)-1]
	return fmt.Sprintf("%s is %s m deep %s days after arriving; no simulated hole of that name came so far.", text, words.Given(float64(end.Depth)), words.Fixed(end.After/words.SecondsOfDay, 1))
}

// aheadOrBehind says how much later than the median way a hole is, s.
func aheadOrBehind(late float64) string {
	days := words.Fixed(math.Abs(late)/words.SecondsOfDay, 1)
	switch {
	case days == words.Fixed(0, 1):
		return "That is as P50 has it."
	case late > 0:
		return "That is " + days + " days behind P50."
	}
	return "That is " + days + " days ahead of P50."
}
