package main

import (
	"os"
	"testing"

	"coredays/model/voyage"
	"coredays/scenario"
	"coredays/sim"
)

// Rotary holes in basalt with ten, four and two collars: usable weight of ten exceeds the 20 klbf that basalt needs (check's
// infeasible.txt has it by hand), that of fewer does not, and the days follow. A derrick that carries less than what hangs is for the check.
func TestFewerCollarsMakeARockHoleLonger(t *testing.T) {
	data, err := os.ReadFile("../../testdata/scenarios/kinds/legacy_basalt.yaml")
	if err != nil {
		t.Fatal(err)
	}
	last, weight := 0.0, 1e12
	for _, collars := range []string{"10", "4", "2"} {
		p, err := scenario.WithSettings(data, "legacy_basalt.yaml", []string{"string.collars=" + collars})
		if err != nil {
			t.Fatal(err)
		}
		v, err := voyage.Compile(p)
		if err != nil {
			t.Fatal(err)
		}
		takes := float64(sim.Estimate(v).Items[1])
		t.Logf("%s collars: %.1f klbf, %.1f h", collars, v.OnBoard.Weight/4448.22, takes/3600)
		if takes <= last*1.02 || v.OnBoard.Weight >= weight {
			t.Errorf("%s collars: %.1f klbf, %.1f h, with more collars %.1f h", collars, v.OnBoard.Weight/4448.22, takes/3600, last/3600)
		}
		last, weight = takes, v.OnBoard.Weight
	}
}
