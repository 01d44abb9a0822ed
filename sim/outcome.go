package sim

import (
	"context"
	"math"

	"coredays/model/activity"
	"coredays/model/voyage"
)

// outcome is what alternatives are compared by: a few figures of one replication.
type outcome [outcomes]float64

const (
	days       = iota // s that the whole programme needs
	first             // 1 when everything of the first rank was done within the days
	all               // 1 when the whole programme was
	metres            // recovered within the days, m
	inHand            // s left of the days
	waiting           // s waiting on weather, whole programme
	sailing           // s under way, whole programme
	needMetres        // recovered by the whole programme, m
	outcomes
)

// outcomeOf takes the figures from the rows of a replication.
func outcomeOf(c columns, needed, bound row) outcome {
	return outcome{
		days:       needed[colDays],
		first:      bound[colFirst],
		all:        bound[colAll],
		metres:     recoveredIn(c, bound),
		inHand:     bound[colInHand],
		waiting:    needed[colClass+int(activity.Waiting)],
		sailing:    needed[colClass+int(activity.Sailing)],
		needMetres: recoveredIn(c, needed),
	}
}

// recoveredIn is what came up at all sites, m.
func recoveredIn(c columns, r row) (sum float64) {
	for n := range c.voyage.Sites {
		if m := r[c.site(n, siteRecovered)]; !math.IsNaN(m) {
			sum += m
		}
	}
	return sum
}

// candidate is an alternative sailed bit by bit.
type candidate struct {
	v        *voyage.Voyage
	outcomes []outcome // by replication
}

// sail does replications more, up to a number.
func (c *candidate) sail(ctx context.Context, seed uint64, upTo int) {
	sailor := newSailor(ctx, c.v)
	for n := len(c.outcomes); n < upTo; n++ {
		sailor.sail(seed, n)
		c.outcomes = append(c.outcomes, outcomeOf(sailor.columns, sailor.whole, sailor.within))
	}
}
