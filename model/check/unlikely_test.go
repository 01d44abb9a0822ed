package check_test

import (
	"strings"
	"testing"

	"coredays/model/check"
)

// Piston holes of 280 and 315 m in ooze and a rotary hole begun in 22.6 m of sediment are on record (hole summaries,
// doi:10.5281/zenodo.10498831): unlikely, and no reason to stop a plan.
func TestWhatWasDoneIsNoStop(t *testing.T) {
	for _, settings := range [][]string{
		{"sites[0].approved_to=400 mbsf", "sites[0].layers=[{bottom: 400 mbsf, lithology: nannofossil ooze}]", "sites[0].holes=[{name: A, core: [{with: APC, to: 280 mbsf}]}]"},
		{"sites[0].approved_to=400 mbsf", "sites[0].layers=[{bottom: 400 mbsf, lithology: nannofossil ooze}]", "sites[0].holes=[{name: A, core: [{with: APC, to: 315 mbsf}]}]"},
		{"sites[0].layers=[{bottom: 22.6 mbsf, lithology: pelagic clay}, {bottom: 400 mbsf, lithology: basalt}]", "sites[0].holes=[{name: A, core: [{with: RCB, to: 60 mbsf}]}]"},
	} {
		found := checked(t, settings...)
		if stops := check.Of(found, check.Stop); len(stops) > 0 {
			t.Errorf("%s is stopped: %s", settings[len(settings)-1], stops[0].What)
		}
		if len(check.Of(found, check.Caution)) == 0 {
			t.Errorf("%s gets no caution", settings[len(settings)-1])
		}
	}
}

// The chance is that of ground weak enough. By hand: of strengths spread evenly between 0.4 and 2 kPa/m those below 0.5
// reach about 260 m (130.7 m at 1 kPa/m, infeasible.txt, and depth goes with one over strength), one in sixteen.
func TestTheChanceOfADeepPistonHoleIsThatOfWeakGround(t *testing.T) {
	found := checked(t, "sites[0].approved_to=400 mbsf", "sites[0].layers=[{bottom: 400 mbsf, lithology: nannofossil ooze, side_shear: {shape: uniform, lowest: 0.4 kPa/m, highest: 2 kPa/m}}]",
		"sites[0].holes=[{name: A, core: [{with: APC, to: 261 mbsf}]}]")
	for _, f := range found {
		if strings.HasPrefix(f.What, "APC gets to its depth") {
			if f.Chance == nil || *f.Chance < 0.045 || *f.Chance > 0.08 || f.Verdict != check.Caution {
				t.Errorf("%v, %v: want about 6 of 100", f.Verdict, f.Chance)
			}
			return
		}
	}
	t.Error("nothing is said of it")
}
