package workers_test

import (
	"context"
	"sync/atomic"
	"testing"

	"coredays/model/workers"
)

func TestEachNumberIsDoneOnce(t *testing.T) {
	for _, of := range []int{0, 1, 3, 50} {
		done, hands := make([]atomic.Int32, 20), atomic.Int32{}
		workers.Share(t.Context(), of, 4, 20, func() func(int) {
			hands.Add(1)
			return func(n int) { done[n].Add(1) }
		})
		for n := range done {
			want := int32(1)
			if n < 4 {
				want = 0
			}
			if got := done[n].Load(); got != want {
				t.Errorf("%d workers: number %d was done %d times, want %d", of, n, got, want)
			}
		}
		if n := hands.Load(); of > 0 && int(n) != min(of, 16) {
			t.Errorf("%d workers asked for, %d made", of, n)
		}
	}
}

func TestNothingIsBegunAfterTheEnd(t *testing.T) {
	ctx, cancel := context.WithCancel(t.Context())
	begun := 0
	workers.Share(ctx, 1, 0, 10, func() func(int) {
		return func(n int) {
			if begun++; n == 2 {
				cancel()
			}
		}
	})
	if begun != 3 {
		t.Errorf("%d begun, want 3", begun)
	}
}

func TestWhatIsDroppedIsNotDone(t *testing.T) {
	after := 0
	workers.Share(t.Context(), 1, 0, 3, func() func(int) {
		return func(n int) {
			if n == 1 {
				workers.Drop()
			}
			after++
		}
	})
	if after != 2 {
		t.Errorf("%d pieces of work came to their end, want 2", after)
	}
	if workers.UnlessDropped(workers.Drop) || !workers.UnlessDropped(func() {}) {
		t.Error("done and dropped are mixed up")
	}
}

func TestOtherPanicsAreNotSwallowed(t *testing.T) {
	defer func() {
		if recover() != "a fault" {
			t.Error("a fault of the program was swallowed")
		}
	}()
	workers.UnlessDropped(func() { panic("a fault") })
}
