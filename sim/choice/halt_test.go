package choice

import (
	"context"
	"testing"

	"coredays/model/workers"
	"coredays/sim"
	"coredays/sim/simtest"
)

func TestChoosingIsStopped(t *testing.T) {
	v, quick := simtest.Compiled(t, simtest.Endless()["waiting"]), simtest.Compiled(t, simtest.OneSite(simtest.PistonHole("A", 100)))
	run := sim.Run{Replications: 40, Workers: 2}
	for name, call := range map[string]func(context.Context) (whole bool){
		"a comparison": func(ctx context.Context) bool {
			return !Compare(ctx, []Alternative{{"a", v}, {"b", v}}, run).StoppedEarly
		},
		"cuts":         func(ctx context.Context) bool { trial, _ := Cuts(v); return !trial.Sail(ctx, run).StoppedEarly },
		"orders":       func(ctx context.Context) bool { return !BestOrder(ctx, v, run).StoppedEarly },
		"a visit book": func(ctx context.Context) bool { newVisitBook(v, 4).fill(ctx, 1, 2, 0, 4); return false },
		"a stage": func(ctx context.Context) bool {
			return workers.UnlessDropped(func() { (&candidate{v: v}).sail(ctx, 1, 0, 3) })
		},
		"a stage of 1e9": func(ctx context.Context) bool {
			return workers.UnlessDropped(func() { (&candidate{v: quick}).sail(ctx, 1, 0, 1e9) })
		},
	} {
		simtest.EndsSoon(t, name, func(ctx context.Context) {
			if call(ctx) {
				t.Errorf("%s: what was stopped is taken for whole", name)
			}
		})
	}
}
