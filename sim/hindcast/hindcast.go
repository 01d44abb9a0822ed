// Package hindcast sails sites that were really drilled, visit by visit: each begins with the ship over the first hole
// and ends when the bit clears the rig floor after the last, as days on hole are counted on record.
package hindcast

import (
	"context"
	"sync/atomic"

	"coredays/model/chance"
	"coredays/model/voyage"
	"coredays/model/workers"
	"coredays/sim"
)

// Visits are the results of a hindcast.
type Visits struct {
	OnSite  [][]float64 // by voyage, by replication: s on site
	Lost    [][]float64 // of these: s waiting on weather and repairing breakdowns
	Stopped bool        // the context ended the run; OnSite is then empty
}

// Sail sails the first site of each voyage again and again. The sites of a group, a leg, share
// what is drawn for an expedition. As with sim.Replicate, the results are the same for any number of
// workers.
func Sail(ctx context.Context, voyages []*voyage.Voyage, groups []string, run sim.Run) *Visits {
	onSite, lost := make([][]float64, len(voyages)), make([][]float64, len(voyages))
	var finished atomic.Int64
	workers.Share(ctx, run.Workers, 0, len(voyages), func() func(int) {
		return func(n int) {
			onSite[n], lost[n] = visits(ctx, voyages[n], chance.SeedOf(run.Seed, groups[n]), max(1, run.Replications))
			if f := int(finished.Add(1)); run.Progress != nil {
				run.Progress(f)
			}
		}
	})
	if ctx.Err() != nil {
		return &Visits{Stopped: true}
	}
	return &Visits{OnSite: onSite, Lost: lost}
}

// visits are the times on site of the replications of one visit, and what of them was lost to weather and
// breakdowns, s.
func visits(ctx context.Context, v *voyage.Voyage, seed uint64, replications int) (onSite, lost []float64) {
	visitor := sim.NewVisitor(ctx, v)
	onSite, lost = make([]float64, replications), make([]float64, replications)
	for n := range onSite {
		if ctx.Err() != nil {
			break
		}
		onSite[n], lost[n] = visitor.First(seed, n)
	}
	return onSite, lost
}
