package study

import (
	"context"
	"runtime"
	"sync"
	"sync/atomic"

	"coredays/model/voyage"
	"coredays/model/workers"
	"coredays/sim"
)

// Plan is one of a study.
type Plan struct {
	Work   int // of a replication, as WorkOf has it
	Voyage func() (*voyage.Voyage, error)
}

// Piece is some replications of a plan.
type Piece struct {
	Plan, First, End int       // number of the plan; its replications from the first to before the end
	Rows             []float64 // row after row
}

// most is how many replications a piece has: their whole rows, of which few figures are kept, take some 30 MB.
const most = 8192

// cut lists the pieces of some replications, counted plan after plan, without their rows.
func cut(each, first, end int) (list []*Piece) {
	for first < end {
		p := &Piece{Plan: first / each, First: first % each}
		p.End = min(each, p.First+most, p.First+end-first)
		list, first = append(list, p), first+p.End-p.First
	}
	return list
}

// Sail simulates some replications of the plans, counted plan after plan, from the first to before the end. It puts
// them in their order. Several plans are sailed at a time, so that reading and compiling one does not keep all
// processors waiting. The first fault of a plan ends it, and so does the context.
func Sail(ctx context.Context, plans []Plan, run sim.Run, first, end int, put func(*Piece) error) error {
	list := cut(run.Replications, first, end)
	processors := run.Workers
	if processors <= 0 {
		processors = runtime.GOMAXPROCS(0)
	}
	ctx, stop := context.WithCancelCause(ctx)
	defer stop(nil)
	q := &queue{put: put, done: make([]bool, len(list)), list: list}
	outer := min(processors, max(1, len(list)))
	progress, sailed := run.Progress, make([]atomic.Int64, len(list))
	workers.Share(ctx, outer, 0, len(list), func() func(int) {
		return func(i int) {
			mine := run
			mine.Workers = max(1, processors/outer)
			if progress != nil {
				mine.Progress = func(done int) {
					sailed[i].Store(int64(done))
					progress(total(sailed))
				}
			}
			err := list[i].sail(ctx, plans, mine)
			if err == nil {
				err = q.finished(i)
			}
			if err != nil {
				stop(err)
			}
		}
	})
	return context.Cause(ctx)
}

// total adds up what was sailed of all pieces.
func total(sailed []atomic.Int64) (sum int) {
	for i := range sailed {
		sum += int(sailed[i].Load())
	}
	return sum
}

// sail fills in the rows of a piece.
func (p *Piece) sail(ctx context.Context, plans []Plan, run sim.Run) error {
	v, err := plans[p.Plan].Voyage()
	if err != nil {
		return err
	}
	run.First, run.Replications, run.Precision = p.First, p.End-p.First, 0
	r := sim.Replicate(ctx, v, run)
	if r.Stopped {
		return context.Cause(ctx)
	}
	p.Rows = make([]float64, 0, figures*len(r.Done))
	for n := range r.Done {
		p.Rows = appended(p.Rows, r.Layout, r.Row(r.Unconstrained, n), r.Row(r.Constrained, n))
	}
	return nil
}

// queue puts pieces in their order, in whatever order they are finished.
type queue struct {
	mutex sync.Mutex
	put   func(*Piece) error
	list  []*Piece
	done  []bool
	next  int
}

// finished notes a piece and puts what can be put.
func (q *queue) finished(i int) error {
	q.mutex.Lock()
	defer q.mutex.Unlock()
	for q.done[i] = true; q.next < len(q.list) && q.done[q.next]; q.next++ {
		if err := q.put(q.list[q.next]); err != nil {
			return err
		}
		q.list[q.next].Rows = nil // it may be far to the end
	}
	return nil
}
