package sim

import (
	"context"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
)

func TestSensitivityIsStopped(t *testing.T) {
	r := Replicate(t.Context(), compiled(t, oneSite(pistonHole("A", 100))), Run{Replications: 40})
	r.columns.voyage = compiled(t, endless()["waiting"])
	endsSoon(t, "sensitivity", func(ctx context.Context) { Sensitivity(ctx, r) })
}

func TestPartsHaveTheSensitivityOfTheWhole(t *testing.T) {
	v := compiled(t, uncertain())
	var parts []Part
	for first := 0; first < 120; first += 60 {
		p, err := SailPart(t.Context(), v, Run{Seed: 3, Replications: 60}, first)
		if err != nil {
			t.Fatal(err)
		}
		parts = append(parts, *p)
	}
	joined, err := Join(t.Context(), v, parts)
	if err != nil {
		t.Fatal(err)
	}
	whole := Replicate(t.Context(), v, Run{Seed: 3, Replications: 120})
	if d := cmp.Diff(Sensitivity(t.Context(), whole), Sensitivity(t.Context(), joined), cmpopts.EquateNaNs()); d != "" {
		t.Errorf("(-whole +parts):\n%s", d)
	}
}
