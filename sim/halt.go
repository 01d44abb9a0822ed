package sim

import "context"

// halted is what a ship throws from the midst of a replication when the context ends: a replication may take
// long, and whoever pressed Ctrl-C waits. sharedOut catches it; what was in hand is dropped.
type halted struct{}

// until lets the ship's replications end with a context.
func (s *ship) until(ctx context.Context) *ship {
	s.halt = ctx.Done()
	return s
}

// lookUp is how many activities pass between two looks at the context.
const lookUp = 4096

// mayBeHalted looks at the context now and then.
func (s *ship) mayBeHalted() {
	if s.ticks++; s.ticks%lookUp != 0 {
		return
	}
	select {
	case <-s.halt: // none where nobody asked: that blocks for ever, and the default is taken
		panic(halted{})
	default:
	}
}

// unlessHalted does something, drops it where it is halted, and tells whether it was done.
func unlessHalted(do func()) (done bool) {
	defer func() {
		if r := recover(); r != nil {
			if _, is := r.(halted); !is {
				panic(r)
			}
		}
	}()
	do()
	return true
}
