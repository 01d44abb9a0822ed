package sim

import (
	"context"

	"coredays/model/workers"
	"coredays/sim/random"
	"coredays/sim/statistics"
)

// sailedAgain is how many replications are sailed again to see where quantities count. Our choice.
const sailedAgain = 50

// UsesIn sails the first replications of the results again, without a deadline, as many as the context leaves time for.
func UsesIn(ctx context.Context, r *statistics.Results, numbers []int) [][]random.UsedAt {
	v := r.Layout.Voyage
	u := random.NewUses(v)
	s := newShip(v).until(ctx)
	numbers = numbers[:min(len(numbers), sailedAgain)]
	for _, n := range numbers {
		u.Next()
		s.begins(r.Seed, n)
		s.Uses = u
		if !workers.UnlessDropped(s.sails) {
			break
		}
	}
	return u.Worthwhile(len(numbers))
}
