package sim

import (
	"context"
	"sync/atomic"

	"coredays/model/activity"
	"coredays/model/chance"
	"coredays/model/voyage"
	"coredays/model/workers"
)

// A hindcast sails one visit to one site at a time: it begins with the ship over the first hole and
// ends when the bit clears the rig floor after the last, as days on hole are counted on record.

// Visits are the results of a hindcast.
type Visits struct {
	Days    [][]float64 // by voyage, by replication: s on site
	Lost    [][]float64 // of these: s waiting on weather and repairing breakdowns
	Stopped bool        // the context ended the run; Days is then empty
}

// Hindcast sails the first site of each voyage again and again. The sites of a group, a leg, share
// what is drawn for an expedition. As with Replicate, the results are the same for any number of
// workers.
func Hindcast(ctx context.Context, voyages []*voyage.Voyage, groups []string, run Run) *Visits {
	days, lost := make([][]float64, len(voyages)), make([][]float64, len(voyages))
	var finished atomic.Int64
	workers.Share(ctx, run.Workers, 0, len(voyages), func() func(int) {
		return func(n int) {
			days[n], lost[n] = visits(ctx, voyages[n], chance.SeedOf(run.Seed, groups[n]), max(1, run.Replications))
			if f := int(finished.Add(1)); run.Progress != nil {
				run.Progress(f)
			}
		}
	})
	if ctx.Err() != nil {
		return &Visits{Stopped: true}
	}
	return &Visits{Days: days, Lost: lost}
}

// visits are the days of the replications of one visit, and what of them was lost to weather and
// breakdowns, s.
func visits(ctx context.Context, v *voyage.Voyage, seed uint64, replications int) (days, lost []float64) {
	s := newShip(v).until(ctx)
	days, lost = make([]float64, replications), make([]float64, replications)
	for n := range days {
		if ctx.Err() != nil {
			break
		}
		s.begins(seed, n)
		s.visits()
		days[n] = s.clock
		lost[n] = s.spent[activity.WaitOnWeather] + s.spent[activity.Breakdown]
	}
	return days, lost
}
