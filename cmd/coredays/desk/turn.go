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
	worker chan struct{}
}

func newTurn() turn {
	var none context.CancelCauseFunc = func(error) {}
	return turn{&sync.Mutex{}, &none, make(chan struct{}, 1)}
}

// take ends whoever runs and waits until the workers are free. It fails where somebody newer came meanwhile.
func (t turn) take(ctx context.Context) (mine context.Context, done func(), err error) {
	mine, cancel := context.WithCancelCause(ctx)
	t.mu.Lock()
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
