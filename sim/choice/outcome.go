package choice

import (
	"context"
	"math"

	"coredays/model/activity"
	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/statistics"
)

// outcome is what alternatives are compared by: a few figures of one replication.
type outcome [outcomes]float64

const (
	daysNeeded   = iota // s that the whole programme needs
	rankOneDone         // 1 when everything of the first rank was done within the days
	allDone             // 1 when the whole programme was
	metresWithin        // recovered within the days, m
	daysInHand          // s left of the days
	daysWaiting         // s waiting on weather, whole programme
	daysSailing         // s under way, whole programme
	metresWhole         // recovered by the whole programme, m
	outcomes
)

// outcomeOf takes the figures from the rows of a replication.
func outcomeOf(c statistics.Layout, needed, bound statistics.Row) outcome {
	return outcome{
		daysNeeded:   needed[statistics.ColDays],
		rankOneDone:  bound[statistics.ColFirst],
		allDone:      bound[statistics.ColAll],
		metresWithin: recoveredIn(c, bound),
		daysInHand:   bound[statistics.ColInHand],
		daysWaiting:  needed[statistics.ColClass+int(activity.Waiting)],
		daysSailing:  needed[statistics.ColClass+int(activity.Sailing)],
		metresWhole:  recoveredIn(c, needed),
	}
}

// recoveredIn is what was recovered at all sites, m.
func recoveredIn(c statistics.Layout, r statistics.Row) (sum float64) {
	for n := range c.Voyage.Sites {
		if m := r[c.Site(n, statistics.SiteRecovered)]; !math.IsNaN(m) {
			sum += m
		}
	}
	return sum
}

// candidate is an alternative sailed bit by bit.
type candidate struct {
	v        *voyage.Voyage
	outcomes []outcome
}

// sail does the replications from one number to before another.
func (c *candidate) sail(ctx context.Context, seed uint64, from, to int) {
	sailor := sim.NewSailor(ctx, c.v)
	for n := from; n < to; n++ {
		sailor.Sail(seed, n)
		c.outcomes = append(c.outcomes, outcomeOf(sailor.Layout, sailor.Whole, sailor.Within))
	}
}
