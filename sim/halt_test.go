package sim

import (
	"context"
	"testing"
	"time"

	"coredays/model/spread"
	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// A task of three million years, hour by hour: the run is stopped in the midst of its first replication, which is
// dropped rather than counted half. Without that it would sail on for minutes.
func TestARunIsStoppedInTheMidstOfAReplication(t *testing.T) {
	p := simtest.Tasks(spread.Just(3e10 * simtest.Hours))
	v := simtest.Compiled(t, p)
	for name, run := range map[string]func(context.Context) (done int, stopped bool){
		"simulation": func(ctx context.Context) (int, bool) {
			r := Replicate(ctx, v, Run{Seed: 1, Replications: 4, Workers: 2})
			return len(r.Column(r.Unconstrained, statistics.ColDays)), r.Stopped
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

func TestAReplicationIsStoppedWhateverTheShipIsDoing(t *testing.T) {
	for name, p := range simtest.Endless() {
		simtest.EndsSoon(t, name, func(ctx context.Context) { Replicate(ctx, simtest.Compiled(t, p), Run{Replications: 5}) })
	}
}

func TestWhateverSailsIsStopped(t *testing.T) {
	v := simtest.Compiled(t, simtest.Endless()["waiting"])
	for name, call := range map[string]func(context.Context) (whole bool){
		"a diary": func(ctx context.Context) bool { return Diary(ctx, v, 1, 0, false) != nil },
	} {
		simtest.EndsSoon(t, name, func(ctx context.Context) {
			if call(ctx) {
				t.Errorf("%s: what was stopped is taken for whole", name)
			}
		})
	}
}
