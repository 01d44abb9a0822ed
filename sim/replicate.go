package sim

import (
	"context"
	"sync/atomic"

	"coredays/model/unit"
	"coredays/model/voyage"
)

// Run says how often and how a voyage is sailed. The zero value is one replication of the seed 0
// on all processors.
type Run struct {
	Seed         uint64
	Replications int           // at least so many
	Precision    unit.Duration // go on until P90 of days needed is known so well; 0 to stop at Replications
	Workers      int           // 0 for one a processor
	Progress     func(done int)
}

// batch is how many replications room is made for at a time.
const batch = 4096

// mostReplications ends a run whose precision can't be had.
const mostReplications = 1_000_000

// Results are the rows of all replications that were done.
type Results struct {
	columns columns
	run     Run
	first   int       // number of the first replication
	needed  []float64 // row after row: the whole programme, no deadline
	bound   []float64 // the same replications under the rules of the expedition
	done    []bool    // by replication
	marks   []float32 // s after sailing, by replication, item and mark of its depth; NaN where it was not reached
	section broughtUp // what was cored, came up and is covered by depth
	Stopped bool      // the context ended the run
}

// Replicate sails a voyage again and again. Each replication depends on the voyage, the seed and
// its number alone, so the results are the same for any number of workers. When the context ends,
// the replications done so far are returned.
func Replicate(ctx context.Context, v *voyage.Voyage, run Run) *Results {
	return replicate(ctx, v, run, 0)
}

// replicate begins with the replication of a number.
func replicate(ctx context.Context, v *voyage.Voyage, run Run, first int) *Results {
	r := &Results{columns: newColumns(v), run: run, first: first, section: newBroughtUp(v)}
	guess := reckon(v)
	for want := max(1, run.Replications); len(r.done) < want && ctx.Err() == nil; {
		r.extend(ctx, v, guess, min(want, len(r.done)+batch))
		if len(r.done) == want {
			want = r.enough()
		}
	}
	r.Stopped = ctx.Err() != nil
	return r
}

// extend does the replications up to a number.
func (r *Results) extend(ctx context.Context, v *voyage.Voyage, guess *estimates, want int) {
	from, width := len(r.done), r.columns.width
	r.needed = append(r.needed, make([]float64, (want-from)*width)...)
	r.bound = append(r.bound, make([]float64, (want-from)*width)...)
	r.done = append(r.done, make([]bool, want-from)...)
	r.marks = append(r.marks, make([]float32, (want-from)*v.Items*depthMarks)...)
	var finished atomic.Int64
	finished.Store(int64(from))
	var sums []*broughtUp
	sharedOut(ctx, r.run.Workers, from, want, func() func(int) {
		bound, mine := newShip(v).until(ctx), newBroughtUp(v)
		bound.guess, bound.needed = guess, newShip(v).until(ctx)
		sums = append(sums, &mine)
		return func(n int) {
			r.byDepth(bound, r.sail(bound, n), n, &mine)
			if f := int(finished.Add(1)); r.run.Progress != nil {
				r.run.Progress(f)
			}
		}
	})
	for _, sum := range sums {
		r.section.join(sum)
	}
}

// sail does the n-th replication of the results and returns the ship that knows no deadline.
func (r *Results) sail(bound *ship, n int) (free *ship) {
	free = bound.sailsTwice(r.run.Seed, r.first+n)
	width := r.columns.width
	r.columns.write(r.needed[n*width:(n+1)*width], free)
	r.columns.write(r.bound[n*width:(n+1)*width], bound)
	r.done[n] = true
	return free
}

// sailsTwice does one replication: the bound expedition, and from where a rule first bites the one
// that knows no deadline, whose ship is returned.
func (s *ship) sailsTwice(seed uint64, n int) (free *ship) {
	s.begins(seed, n)
	s.bound = true
	s.sails()
	switch {
	case s.rewind && !s.forked:
		s.needed.begins(seed, n)
		s.needed.sails()
	case s.forked:
		s.needed.sails()
	default:
		return s
	}
	return s.needed
}

// enough is how many replications the precision asked for needs, as far as those done tell.
func (r *Results) enough() int {
	n := len(r.done)
	if r.run.Precision <= 0 || n >= mostReplications {
		return n
	}
	days := r.column(r.needed, colDays)
	s := summarise(days)
	if half := (s.P90CI[1] - s.P90CI[0]) / 2; s.N > 1 && half <= float64(r.run.Precision) {
		return n
	}
	return min(2*n, mostReplications)
}

// Replications is how many there are, done or not.
func (r *Results) Replications() int { return len(r.done) }

// column collects a column over the replications that were done.
func (r *Results) column(rows []float64, column int) []float64 {
	values := make([]float64, 0, len(r.done))
	for n, done := range r.done {
		if done {
			values = append(values, rows[n*r.columns.width+column])
		}
	}
	return values
}
