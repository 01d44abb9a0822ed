package sim

import (
	"context"
	"testing"
	"time"

	"coredays/model/spread"
	"coredays/model/voyage"
)

// A task of three million years, hour by hour: the run is stopped in the midst of its first replication, which is
// dropped rather than counted half. Without that it would sail on for minutes.
func TestARunIsStoppedInTheMidstOfAReplication(t *testing.T) {
	p := tasks(spread.Just(3e10 * hours))
	v := compiled(t, p)
	for name, run := range map[string]func(context.Context) (done int, stopped bool){
		"simulation": func(ctx context.Context) (int, bool) {
			r := Replicate(ctx, v, Run{Seed: 1, Replications: 4, Workers: 2})
			return len(r.column(r.needed, colDays)), r.Stopped
		},
		"hindcast": func(ctx context.Context) (int, bool) {
			r := HindcastCores(ctx, []*voyage.Voyage{v}, []string{"a"}, Run{Replications: 1})
			return len(r), r == nil
		},
		"candidate": func(ctx context.Context) (int, bool) {
			c := candidate{v: v}
			unlessHalted(func() { c.sail(ctx, 1, 1) })
			return len(c.outcomes), ctx.Err() != nil
		},
	} {
		ctx, cancel := context.WithTimeout(t.Context(), 30*time.Millisecond)
		done, stopped := run(ctx)
		cancel()
		if done != 0 || !stopped {
			t.Errorf("%s: %d replications done, stopped is %v", name, done, stopped)
		}
	}
}

func TestOtherPanicsAreNotSwallowed(t *testing.T) {
	defer func() {
		if recover() != "a fault" {
			t.Error("a fault of the program was swallowed")
		}
	}()
	unlessHalted(func() { panic("a fault") })
}
