package sim

import (
	"context"

	"coredays/model/voyage"
	"coredays/model/workers"
	"coredays/sim/random"
	"coredays/sim/statistics"
)

// sailor sails replications of a voyage one by one, for those who look at each as it comes.
type sailor struct {
	Layout        statistics.Layout
	Whole, Within statistics.Row // of the replication sailed last
	bound         *expedition
}

func NewSailor(ctx context.Context, v *voyage.Voyage) *sailor {
	s := &sailor{Layout: statistics.NewLayout(v), bound: newExpedition(v).until(ctx)}
	s.bound.Crew, s.bound.unconstrained = EstimateByCrew(v), newExpedition(v).until(ctx)
	s.Whole, s.Within = make(statistics.Row, s.Layout.Width), make(statistics.Row, s.Layout.Width)
	return s
}

// Sail sails the n-th replication of a seed, the whole programme and what gets done within the days.
func (s *sailor) Sail(seed uint64, n int) {
	writeRow(s.Layout, s.Whole, s.bound.sailsTwice(seed, n))
	writeRow(s.Layout, s.Within, s.bound)
}

// sailedAgain is how many replications are sailed again to see where quantities count. Our choice.
const sailedAgain = 50

// UsesIn sails the first replications of the results again, without a deadline, as many as the context leaves time for.
func UsesIn(ctx context.Context, r *statistics.Results, numbers []int) [][]random.UsedAt {
	v := r.Layout.Voyage
	u := random.NewUses(v)
	s := newExpedition(v).until(ctx)
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
