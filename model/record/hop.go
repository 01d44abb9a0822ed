package record

import (
	"fmt"
	"slices"

	"coredays/model/coring"
	"coredays/model/geo"
	"coredays/model/unit"
)

// Between neighbouring sites a ship may leave the pipe hanging clear of the sea floor. The record says it by
// the pace of the hop: with pipe hanging she makes 1.0 to 1.6 kn (hanging_speed of the built-in ship), with all
// pipe on deck a few miles take minutes.
const (
	farthestHanging               = 2 * 1852.0       // m [judgement]
	longestHanging                = 4 * 3600.0       // s; longer hops hold other work [judgement]
	shallowestHanging unit.Length = 1000             // m: above it pipe is recovered as quickly [judgement]
	slowestHanging                = 0.15 * unit.Knot // [judgement]: the mean of a hop holds her taking station too
	fastestHanging                = 2 * unit.Knot    // [judgement]: 1.6 kn is the P90 value
)

// hopsOf marks the sites that were reached or left with pipe hanging. All rows of a leg count, so that a site
// that is not used still stands between its neighbours.
func hopsOf(rows []Row) (reached map[[3]string]coring.Assembly, left map[[3]string]bool) {
	reached, left = map[[3]string]coring.Assembly{}, map[[3]string]bool{}
	legs := map[[2]string][]Row{}
	for _, r := range rows {
		leg := [2]string{r.Program, r.Leg}
		legs[leg] = append(legs[leg], r)
	}
	for _, leg := range legs {
		slices.SortStableFunc(leg, func(a, b Row) int { return a.Hole.Start.Compare(b.Hole.Start) })
		for i := 1; i < len(leg); i++ {
			a, b := &leg[i-1], &leg[i]
			if a.Site != b.Site && hung(&a.Hole, &b.Hole) {
				reached[b.key()], left[a.key()] = a.Hole.assembly(), true
			}
		}
	}
	return reached, left
}

// hung reports whether the hop between two holes was made with pipe hanging.
func hung(a, b *Hole) bool {
	took := b.Start.Sub(a.End).Seconds()
	way := float64(geo.Distance(a.Position, b.Position))
	return a.Water >= shallowestHanging && took > 0 && took <= longestHanging && way <= farthestHanging &&
		way/took >= float64(slowestHanging) && way/took <= float64(fastestHanging)
}

// assembly is the one that a hole was drilled with.
func (h *Hole) assembly() coring.Assembly {
	if h.Cores[coring.RCB] > 0 || h.CoreCount() == 0 {
		return coring.RotaryBHA
	}
	return coring.PistonBHA
}

// HangingRule says in words where a hop counts as one with pipe hanging.
func HangingRule() string {
	return fmt.Sprintf("at most %.2g nmi in at most %.2g h, at %.2g to %.2g kn, in more than %.4g m of water", farthestHanging/1852.0, longestHanging/3600,
		float64(slowestHanging/unit.Knot), float64(fastestHanging/unit.Knot), float64(shallowestHanging))
}
