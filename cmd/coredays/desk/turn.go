package desk

import (
	"context"
	"errors"
	"sync"
)

// errSuperseded is why a run ended: the plan was edited, or another window asked.
var errSuperseded = errors.New("a newer question came")

// turn lets one simulation run at a time, with all processors; a new one ends the one before.
type turn struct {
	mu     *sync.Mutex
	last   *context.CancelCauseFunc
	newest map[string]int // number of the newest question of each window
	worker chan struct{}
}

func newTurn() turn {
	var none context.CancelCauseFunc = func(error) {}
	return turn{&sync.Mutex{}, &none, map[string]int{}, make(chan struct{}, 1)}
}

// take ends whoever runs and waits until the workers are free. It fails where somebody newer came meanwhile, and where
// the same window has asked something newer already: its questions come by several connections, so that one may
// overtake the one before.
func (t turn) take(ctx context.Context, q *question) (mine context.Context, done func(), err error) {
	mine, cancel := context.WithCancelCause(ctx)
	t.mu.Lock()
	window := q.Window[:min(len(q.Window), longestName)]
	if q.Number < t.newest[window] || ctx.Err() != nil {
		t.mu.Unlock()
		cancel(nil)
		return nil, nil, errSuperseded
	}
	if len(t.newest) >= mostWindows {
		clear(t.newest)
	}
	t.newest[window] = q.Number
	(*t.last)(errSuperseded)
	*t.last = cancel
	t.mu.Unlock()
	select {
	case t.worker <- struct{}{}:
		return mine, func() { <-t.worker; cancel(nil) }, nil
	case <-mine.Done():
		return nil, nil, context.Cause(mine)
	}
}
