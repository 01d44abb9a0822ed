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
	OnSite    [][]float64 // by voyage, by replication: s on site
	Lost      [][]float64 // of these: s waiting on weather and repairing breakdowns
	Recovered [][]float64 // by voyage, by replication: m of core
	Cores     [][]float64 // by voyage, by replication
	Stopped   bool        // the context ended the run; all else is then empty
}

// Sail sails the first site of each voyage again and again. The sites of a group, a leg, share
// what is drawn for an expedition. As with sim.Replicate, the results are the same for any number of
// workers.
func Sail(ctx context.Context, voyages []*voyage.Voyage, groups []string, run sim.Run) *Visits {
	all := newVisits(len(voyages))
	var finished atomic.Int64
	workers.Share(ctx, run.Workers, 0, len(voyages), func() func(int) {
		return func(n int) {
			all.fill(ctx, n, voyages[n], chance.SeedOf(run.Seed, groups[n]), max(1, run.Replications))
			if f := int(finished.Add(1)); run.Progress != nil {
				run.Progress(f)
			}
		}
	})
	if ctx.Err() != nil {
		return &Visits{Stopped: true}
	}
	return all
}

func newVisits(voyages int) *Visits {
	return &Visits{OnSite: make([][]float64, voyages), Lost: make([][]float64, voyages), Recovered: make([][]float64, voyages), Cores: make([][]float64, voyages)}
}

// fill does the replications of one visit.
func (all *Visits) fill(ctx context.Context, n int, v *voyage.Voyage, seed uint64, replications int) {
	columns := []*[]float64{&all.OnSite[n], &all.Lost[n], &all.Recovered[n], &all.Cores[n]}
	for _, column := range columns {
		*column = make([]float64, replications)
	}
	visitor := sim.NewVisitor(ctx, v)
	for i := 0; i < replications && ctx.Err() == nil; i++ {
		visited := visitor.First(seed, i)
		for c, x := range []float64{visited.Takes, visited.Lost, visited.Recovered, visited.Cores} {
			(*columns[c])[i] = x
		}
	}
}
