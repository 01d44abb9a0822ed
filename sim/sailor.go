package sim

import (
	"context"

	"coredays/model/voyage"
)

// sailor sails replications of a voyage one by one, for those who look at each as it comes.
type sailor struct {
	columns       columns
	whole, within row // of the replication sailed last
	bound         *ship
}

func newSailor(ctx context.Context, v *voyage.Voyage) *sailor {
	s := &sailor{columns: newColumns(v), bound: newShip(v).until(ctx)}
	s.bound.guess, s.bound.needed = reckon(v), newShip(v).until(ctx)
	s.whole, s.within = make(row, s.columns.width), make(row, s.columns.width)
	return s
}

// sail sails the n-th replication of a seed, the whole programme and what gets done within the days.
func (s *sailor) sail(seed uint64, n int) {
	writeRow(s.columns, s.whole, s.bound.sailsTwice(seed, n))
	writeRow(s.columns, s.within, s.bound)
}
