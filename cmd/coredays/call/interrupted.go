package call

import (
	"context"
	"errors"
	"time"
)

// grace is how long what can't be stopped may go on after Ctrl-C: most of it, such as reading a plan, is done by then.
const grace = time.Second / 2

// OrInterrupted does what can't be stopped on the way, and goes on without it where that takes long after the context
// has ended: the program is then about to end, and nobody looks at what it does any more.
func OrInterrupted(ctx context.Context, do func() error) error {
	done := make(chan error, 1)
	late := make(chan struct{})
	defer context.AfterFunc(ctx, func() { time.AfterFunc(grace, func() { close(late) }) })()
	go func() { done <- do() }()
	select {
	case err := <-done:
		if ended := ctx.Err(); ended != nil && errors.Is(err, ended) {
			return ErrInterrupted
		}
		return err
	case <-late:
		return ErrInterrupted
	}
}
