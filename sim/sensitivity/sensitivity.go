package sensitivity

import (
	"context"
	"math"

	"coredays/model/result"
	"coredays/model/voyage"
	"coredays/model/workers"
	"coredays/sim"
	"coredays/sim/random"
	"coredays/sim/statistics"
)

// Sensitivity says how much each quantity matters: its share of the variance of days needed, split by the
// causes in whose time it lies. It is the same estimate as that of the drivers: the covariance of a part with
// the total, over the variance of the total. The part of a quantity is what a regression on its own scores
// gives the days, where and as often as it is drawn. What the shares of all quantities leave to 1 is the
// random stream of sea, breakdowns and trouble, and what several quantities do together.
//
// It needs no further runs but a few, since scores are keyed. Where the context ends before them, the shares are
// worth nothing. Shares of regressors that add up to the
// coefficient of determination are Pratt's (1987), those of a polynomial in normal scores Sudret's (2008),
// Reliability Engineering and System Safety 93, 964-979; both from memory.
func Sensitivity(ctx context.Context, r *statistics.Results) []result.Influence {
	v := r.Layout.Voyage
	list := make([]result.Influence, len(v.Quantities))
	for i := range list {
		list[i].Share = math.NaN()
	}
	f := fitTo(r)
	if f == nil {
		return list
	}
	places := sim.UsesIn(ctx, r, f.numbers)
	sharing := random.SharingOf(v, places)
	workers.Share(ctx, r.Workers, 0, len(list), func() func(int) {
		s := random.New(v)
		return func(id int) {
			if scores := random.ScoresOf(v, voyage.Quantity(id), places[id], sharing); len(scores) > 0 {
				list[id] = f.influence(&s, scores)
			}
		}
	})
	return list
}
