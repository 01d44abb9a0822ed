package sim

import (
	"context"
	"runtime"
	"sync"
	"sync/atomic"
)

// sharedOut does what is numbered from one number to before another, by so many workers or, where that is
// 0, one a processor. Each has a hand of its own, made before any begins. When the context ends, nothing
// more is begun, and a ship that sails until it ends drops what is in hand.
func sharedOut(ctx context.Context, workers, from, to int, hand func() func(n int)) {
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
				unlessHalted(func() { do(n) })
			}
		})
	}
	group.Wait()
}
