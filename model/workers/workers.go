// Package workers shares numbered work out among the processors, and drops what is in hand when nobody waits for it
// any more.
package workers

import (
	"context"
	"runtime"
	"sync"
	"sync/atomic"
)

// Share does what is numbered from one number to before another, by so many workers or, where that is
// 0, one a processor. Each has a hand of its own, made before any begins. When the context ends, nothing
// more is begun; work that goes on for long may look at the context itself and call Drop.
func Share(ctx context.Context, workers, from, to int, hand func() func(n int)) {
	if workers <= 0 {
		workers = runtime.GOMAXPROCS(0)
	}
	var next atomic.Int64
	next.Store(int64(from))
	var group sync.WaitGroup
	for range min(workers, max(1, to-from)) {
		do := hand()
		group.Go(func() {
			for ctx.Err() == nil {
				n := int(next.Add(1)) - 1
				if n >= to {
					return
				}
				UnlessDropped(func() { do(n) })
			}
		})
	}
	group.Wait()
}

// dropped is thrown from the midst of work that is not to be finished.
type dropped struct{}

// Drop ends the work in hand from its midst. Share and UnlessDropped catch it.
func Drop() { panic(dropped{}) }

// UnlessDropped does something and reports whether it was done rather than dropped.
func UnlessDropped(do func()) (done bool) {
	defer func() {
		if r := recover(); r != nil {
			if _, is := r.(dropped); !is {
				panic(r)
			}
		}
	}()
	do()
	return true
}
