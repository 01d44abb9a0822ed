// Package parts shares the replications of a run out among machines and puts them together again, to the last bit.
package parts

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"math"
	"slices"

	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/statistics"
)

// Part is some of the replications of a run, one after the other, as they come from one of several
// machines.
type Part struct {
	Seed                       uint64
	First, Replications        int       // number of its first replication, and how many it has
	Unconstrained, Constrained []float64 // row after row, as in Results
	Marks                      []float32 // s after sailing, as in Results
	Cut, Recovered, Covered    []int64   // by slice of all sites: cm, cm, half-metres
	Visits                     []int64   // by site
}

// Sail sails the replications of a run. What it returns is whole: where the context
// ends first it is an error.
func Sail(ctx context.Context, v *voyage.Voyage, run sim.Run) (*Part, error) {
	run.Precision = 0
	r := sim.Replicate(ctx, v, run)
	if r.Stopped {
		return nil, ctx.Err()
	}
	return &Part{run.Seed, run.First, len(r.Done), r.Unconstrained, r.Constrained, r.Marks, r.Section.Cut, r.Section.Recovered, r.Section.Covered, r.Section.Visits}, nil
}

// Join puts the parts of a run of a voyage together: the results are those of sailing all of it at once.
// The parts must follow each other without a gap from replication 0 on, and be of this voyage: of each
// part a replication is sailed again, and must come out the same to the last bit. Where the context ends before
// that, there is an error.
func Join(ctx context.Context, v *voyage.Voyage, parts []Part) (*statistics.Results, error) {
	if len(parts) == 0 {
		return nil, errors.New("there is no part")
	}
	parts = slices.SortedFunc(slices.Values(parts), func(a, b Part) int { return cmp.Compare(a.First, b.First) })
	r := statistics.NewResults(v, parts[0].Seed, 0)
	for i := range parts {
		if err := join(ctx, r, v, &parts[i], parts[0].Seed); err != nil {
			return nil, err
		}
	}
	return r, nil
}

// join adds a part behind those that are there.
func join(ctx context.Context, r *statistics.Results, v *voyage.Voyage, p *Part, seed uint64) error {
	switch n := len(r.Done); {
	case p.Seed != seed:
		return fmt.Errorf("the part from replication %d on is of seed %d, another of seed %d", p.First, p.Seed, seed)
	case p.First > n:
		return fmt.Errorf("replications %d to %d are in no part", n, p.First-1)
	case p.First < n:
		return fmt.Errorf("replication %d is in two parts", p.First)
	case !p.isOf(ctx, v):
		return cmp.Or(ctx.Err(), fmt.Errorf("the part from replication %d on is of another plan, or was sailed by another version of the program or on another kind of machine", p.First))
	}
	r.Unconstrained, r.Constrained, r.Marks = append(r.Unconstrained, p.Unconstrained...), append(r.Constrained, p.Constrained...), append(r.Marks, p.Marks...)
	for range p.Replications {
		r.Done = append(r.Done, true)
	}
	r.Section.Join(&statistics.BroughtUp{Cut: p.Cut, Recovered: p.Recovered, Covered: p.Covered, Visits: p.Visits})
	return nil
}

// isOf reports whether a part has the rows of a voyage, by sailing its first replication again.
func (p *Part) isOf(ctx context.Context, v *voyage.Voyage) bool {
	width, slices := statistics.NewLayout(v).Width, statistics.NewSlices(v).All
	if p.Replications < 1 || len(p.Unconstrained) != p.Replications*width || len(p.Constrained) != len(p.Unconstrained) || len(p.Marks) != p.Replications*v.Items*statistics.DepthMarks ||
		len(p.Cut) != slices || len(p.Recovered) != slices || len(p.Covered) != slices || len(p.Visits) != len(v.Sites) {
		return false
	}
	again := sim.Replicate(ctx, v, sim.Run{First: p.First, Seed: p.Seed, Replications: 1, Workers: 1})
	return !again.Stopped && sameBits(again.Unconstrained, p.Unconstrained[:width]) && sameBits(again.Constrained, p.Constrained[:width])
}

func sameBits(a, b []float64) bool {
	return slices.EqualFunc(a, b, func(x, y float64) bool { return math.Float64bits(x) == math.Float64bits(y) })
}
