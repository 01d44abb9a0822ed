package choice

import (
	"testing"

	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/sim"
	"coredays/sim/simtest"
)

// Everything that is cut is recovered. Hole A goes to 100 m, hole B to 200: without A nothing is missing of the
// section, without B its lower half; that the rest then has a shallower section counts for nothing.
func TestWithoutTheDeepestHoleThePartBelowTheOthersIsMissing(t *testing.T) {
	p := simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 1500, simtest.PistonHole("A", 100), simtest.PistonHole("B", 200)))
	trial, err := Cuts(simtest.Compiled(t, p))
	if err != nil {
		t.Fatal(err)
	}
	c := trial.Sail(t.Context(), sim.Run{Seed: 1, Replications: 2})
	found := 0
	for _, cut := range c.Cuts {
		if want, is := map[string]float64{"A": 0, "B": 0.5}[cut.What]; is && cut.Kind == plan.WholeHole {
			found++
			if !simtest.Near(cut.Section, want) {
				t.Errorf("without hole %s %.3f of the section is missing, by hand %.1f", cut.What, cut.Section, want)
			}
		}
	}
	if found != 2 {
		t.Errorf("%d holes were left out, want 2", found)
	}
}
