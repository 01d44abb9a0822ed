package parts

import (
	"cmp"
	"context"
	"fmt"
	"math"
	"slices"

	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/share"
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

// SailRun sails a share of a run.
func SailRun(ctx context.Context, v *voyage.Voyage, run sim.Run, which share.Which, put func(any) error) error {
	first, end := which.Range(run.Replications)
	run.First, run.Replications = first, end-first
	return Sail(ctx, v, run, func(p *Part) error { return put(p) })
}

// JoinRun puts the shares of a run of a voyage together.
func JoinRun(ctx context.Context, v *voyage.Voyage, run sim.Run, all share.All) (*statistics.Results, error) {
	j := Join(v, run)
	for _, share := range all {
		first, end := share.Head.Which.Range(run.Replications)
		for next := first; next < end; next = len(j.Done) {
			var p Part
			if err := share.Take(&p); err != nil {
				return nil, err
			}
			if err := j.Add(ctx, &p, next == first); err != nil {
				return nil, fmt.Errorf("%s: %w", share.Path, err)
			}
		}
	}
	return j.Results, nil
}

// most is how many replications a part has: so many rows take some megabytes, however many there are in all.
const most = 1024

// Sail sails the replications of a run part by part, in their order, and puts each where it goes. Where the
// context ends first that is an error, and what was put is not all.
func Sail(ctx context.Context, v *voyage.Voyage, run sim.Run, put func(*Part) error) error {
	run.Precision = 0
	progress, first, end := run.Progress, run.First, run.First+run.Replications
	for run.First < end {
		run.Replications = min(most, end-run.First)
		if progress != nil {
			run.Progress = func(done int) { progress(run.First - first + done) }
		}
		r := sim.Replicate(ctx, v, run)
		if r.Stopped {
			return ctx.Err()
		}
		if err := put(&Part{run.Seed, run.First, len(r.Done), r.Unconstrained, r.Constrained, r.Marks, r.Section.Cut, r.Section.Recovered, r.Section.Covered, r.Section.Visits}); err != nil {
			return err
		}
		run.First += run.Replications
	}
	return nil
}

// Joined is the results of a run as far as they were put together.
type Joined struct {
	*statistics.Results
	seed uint64
}

// Join begins to put the parts of a run of a voyage together: the results are those of sailing all of it at once.
func Join(v *voyage.Voyage, run sim.Run) *Joined {
	r := statistics.NewResults(v, run.Seed, 0)
	r.Reserve(run.Replications)
	return &Joined{r, run.Seed}
}

// Add adds the part that comes next. It must be of this voyage: where again says so its first replication is sailed
// again, and must come out the same to the last bit. Where the context ends before that, there is an error.
func (j *Joined) Add(ctx context.Context, p *Part, again bool) error {
	switch n := len(j.Done); {
	case p.Seed != j.seed:
		return fmt.Errorf("the part from replication %d on is of seed %d, another of seed %d", p.First, p.Seed, j.seed)
	case p.First > n:
		return fmt.Errorf("replications %d to %d are in no part", n, p.First-1)
	case p.First < n:
		return fmt.Errorf("replication %d is in two parts", p.First)
	case !p.fits(j.Layout.Voyage), again && !p.isOf(ctx, j.Layout.Voyage):
		return cmp.Or(ctx.Err(), fmt.Errorf("the part from replication %d on is of another plan, or was sailed by another version of the program or on another kind of machine", p.First))
	}
	j.Unconstrained, j.Constrained, j.Marks = append(j.Unconstrained, p.Unconstrained...), append(j.Constrained, p.Constrained...), append(j.Marks, p.Marks...)
	for range p.Replications {
		j.Done = append(j.Done, true)
	}
	j.Section.Join(&statistics.BroughtUp{Cut: p.Cut, Recovered: p.Recovered, Covered: p.Covered, Visits: p.Visits})
	return nil
}

// fits reports whether a part has rows as those of a voyage are.
func (p *Part) fits(v *voyage.Voyage) bool {
	width, slices := statistics.NewLayout(v).Width, statistics.NewSlices(v).All
	return p.Replications > 0 && len(p.Unconstrained) == p.Replications*width && len(p.Constrained) == len(p.Unconstrained) && len(p.Marks) == p.Replications*v.Items*statistics.DepthMarks &&
		len(p.Cut) == slices && len(p.Recovered) == slices && len(p.Covered) == slices && len(p.Visits) == len(v.Sites)
}

// isOf reports whether a part is of a voyage, by sailing its first replication again.
func (p *Part) isOf(ctx context.Context, v *voyage.Voyage) bool {
	width := statistics.NewLayout(v).Width
	again := sim.Replicate(ctx, v, sim.Run{First: p.First, Seed: p.Seed, Replications: 1, Workers: 1})
	return !again.Stopped && sameBits(again.Unconstrained, p.Unconstrained[:width]) && sameBits(again.Constrained, p.Constrained[:width])
}

func sameBits(a, b []float64) bool {
	return slices.EqualFunc(a, b, func(x, y float64) bool { return math.Float64bits(x) == math.Float64bits(y) })
}
