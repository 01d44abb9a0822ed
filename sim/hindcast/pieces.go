package hindcast

import (
	"context"
	"math"
	"sync/atomic"

	"coredays/model/voyage"
	"coredays/model/workers"
	"coredays/sim"
)

// shared shares visits out among the processors: replications of voyages, voyage after voyage, from one on to before
// another. Each hand does those of a voyage, from one replication to before another, and is told where they
// stand in the piece.
func shared(ctx context.Context, run sim.Run, first, end int, visits func(voyage, from, to, at int)) {
	if end == first {
		return
	}
	each := max(1, run.Replications)
	var finished atomic.Int64
	workers.Share(ctx, run.Workers, first/each, (end-1)/each+1, func() func(int) {
		return func(i int) {
			from, to := max(first, i*each), min(end, (i+1)*each)
			visits(i, from-i*each, to-i*each, from-first)
			if f := int(finished.Add(1)); run.Progress != nil {
				run.Progress(f)
			}
		}
	})
}

// IsOf reports whether a piece is of a hindcast, by sailing its first visit again.
func IsOf(ctx context.Context, p *Piece, voyages []*voyage.Voyage, groups []string, run sim.Run) bool {
	n := p.End - p.First
	if len(p.OnSite) != n || len(p.Lost) != n || len(p.Recovered) != n || len(p.Cores) != n {
		return false
	}
	if n == 0 {
		return true
	}
	again, err := SailPiece(ctx, voyages, groups, run, p.First, p.First+1)
	same := func(a, b []float64) bool { return math.Float64bits(a[0]) == math.Float64bits(b[0]) }
	return err == nil && same(again.OnSite, p.OnSite) && same(again.Lost, p.Lost) && same(again.Recovered, p.Recovered) && same(again.Cores, p.Cores)
}
