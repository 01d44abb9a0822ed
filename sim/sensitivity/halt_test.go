package sensitivity

import (
	"context"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"coredays/sim"
	"coredays/sim/parts"
	"coredays/sim/simtest"
)

func TestSensitivityIsStopped(t *testing.T) {
	r := sim.Replicate(t.Context(), simtest.Compiled(t, simtest.OneSite(simtest.PistonHole("A", 100))), sim.Run{Replications: 40})
	r.Layout.Voyage = simtest.Compiled(t, simtest.Endless()["waiting"])
	simtest.EndsSoon(t, "sensitivity", func(ctx context.Context) { Sensitivity(ctx, r) })
}

func TestPartsHaveTheSensitivityOfTheWhole(t *testing.T) {
	v := simtest.Compiled(t, simtest.Uncertain())
	joined := parts.Join(v, sim.Run{Seed: 3, Replications: 120})
	for first := 0; first < 120; first += 60 {
		err := parts.Sail(t.Context(), v, sim.Run{Seed: 3, First: first, Replications: 60}, func(p *parts.Part) error { return joined.Add(t.Context(), p, true) })
		if err != nil {
			t.Fatal(err)
		}
	}
	whole := sim.Replicate(t.Context(), v, sim.Run{Seed: 3, Replications: 120})
	if d := cmp.Diff(Sensitivity(t.Context(), whole), Sensitivity(t.Context(), joined.Results), cmpopts.EquateNaNs()); d != "" {
		t.Errorf("(-whole +parts):\n%s", d)
	}
}
