package sim

import (
	"context"

	"coredays/model/workers"
)

// sailedAgain is how many replications are sailed again to see where quantities count. Our choice.
const sailedAgain = 50

// usesIn sails the first replications of the results again, without a deadline, as many as the context leaves time for.
func usesIn(ctx context.Context, r *Results, numbers []int) [][]usedAt {
	v := r.columns.voyage
	u := newUses(v)
	s := newShip(v).until(ctx)
	numbers = numbers[:min(len(numbers), sailedAgain)]
	for _, n := range numbers {
		u.next()
		s.begins(r.seed, n)
		s.uses = u
		if !workers.UnlessDropped(s.sails) {
			break
		}
	}
	return u.worthwhile(len(numbers))
}
