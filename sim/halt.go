package sim

import (
	"context"

	"coredays/model/workers"
)

// until lets the ship's replications end with a context.
func (s *ship) until(ctx context.Context) *ship {
	s.halt = ctx.Done()
	return s
}

// lookUp is how many activities pass between two looks at the context.
const lookUp = 4096

// mayBeHalted looks at the context now and then, and drops the replication where it has ended: one may take long, and
// whoever pressed Ctrl-C waits.
func (s *ship) mayBeHalted() {
	if s.ticks++; s.ticks%lookUp != 0 {
		return
	}
	select {
	case <-s.halt: // none where nobody asked: that blocks for ever, and the default is taken
		workers.Drop()
	default:
	}
}
