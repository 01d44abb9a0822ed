package sim

import (
	"context"
	"sync/atomic"

	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/model/workers"
	"coredays/sim/ship"
	"coredays/sim/statistics"
)

// Run says how often and how a voyage is sailed. The zero value is one replication of the seed 0
// on all processors.
type Run struct {
	Seed         uint64
	First        int           // number of the first replication
	Replications int           // at least so many
	Precision    unit.Duration // go on until P90 of days needed is known so well; 0 to stop at Replications
	Workers      int           // 0 for one a processor
	Progress     func(done int)
}

// batch is how many replications room is made for at a time.
const batch = 4096

// mostReplications ends a run whose precision can't be had.
const mostReplications = 1_000_000

// Replicate sails a voyage again and again. Each replication depends on the voyage, the seed and
// its number alone, so the results are the same for any number of workers. When the context ends,
// the replications done so far are returned.
func Replicate(ctx context.Context, v *voyage.Voyage, run Run) *statistics.Results {
	r := statistics.NewResults(v, run.Seed, run.First)
	r.Workers = run.Workers
	r.Reserve(max(1, run.Replications))
	crew := EstimateByCrew(v)
	for want := max(1, run.Replications); len(r.Done) < want && ctx.Err() == nil; {
		run.extend(ctx, r, crew, min(want, len(r.Done)+batch))
		if len(r.Done) == want {
			want = run.enough(r)
		}
	}
	r.Stopped = ctx.Err() != nil
	return r
}

// extend does the replications of the results up to a number.
func (run Run) extend(ctx context.Context, r *statistics.Results, crew *ship.CrewEstimates, want int) {
	v, from := r.Layout.Voyage, len(r.Done)
	r.Grow(want - from)
	var finished atomic.Int64
	finished.Store(int64(from))
	var sums []*statistics.BroughtUp
	workers.Share(ctx, run.Workers, from, want, func() func(int) {
		bound, mine := newExpedition(v).until(ctx), statistics.NewBroughtUp(v)
		bound.Crew, bound.unconstrained = crew, newExpedition(v).until(ctx)
		sums = append(sums, &mine)
		return func(n int) {
			free := bound.sailsTwice(run.Seed, r.First+n)
			writeRow(r.Layout, r.Row(r.Unconstrained, n), free)
			writeRow(r.Layout, r.Row(r.Constrained, n), bound)
			r.Done[n] = true
			keepByDepth(r, bound, free, n, &mine)
			if f := int(finished.Add(1)); run.Progress != nil {
				run.Progress(f)
			}
		}
	})
	for _, sum := range sums {
		r.Section.Join(sum)
	}
}

// sailsTwice does one replication: the bound expedition, and from where a rule first binds the one
// that knows no deadline, whose ship is returned.
func (s *expedition) sailsTwice(seed uint64, n int) (free *expedition) {
	s.begins(seed, n)
	s.Constrained = true
	s.sails()
	switch {
	case s.Rewind && !s.Forked:
		s.unconstrained.begins(seed, n)
		s.unconstrained.sails()
	case s.Forked:
		s.unconstrained.sails()
	default:
		return s
	}
	return s.unconstrained
}

// enough is how many replications the precision asked for needs, as far as those done tell.
func (run Run) enough(r *statistics.Results) int {
	n := len(r.Done)
	if run.Precision <= 0 || n >= mostReplications {
		return n
	}
	days := r.Column(r.Unconstrained, statistics.ColDays)
	s := statistics.Summarise(days)
	if half := (s.P90CI[1] - s.P90CI[0]) / 2; s.N > 1 && half <= float64(run.Precision) {
		return n
	}
	return min(2*n, mostReplications)
}
