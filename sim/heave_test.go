package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/sim/simtest"
)

// A piston corer stops at 4 m, rotated barrels at 5 m. At half of the limit all of the core is recovered, at the
// limit 40 % less, and between in proportion.
func TestHeaveCostsRecoveryFromHalfTheLimitOn(t *testing.T) {
	for _, c := range []struct {
		height, piston, rotated float64
	}{
		{0.5, 1, 1}, {2, 1, 1}, {2.5, 0.9, 1}, {3, 0.8, 0.92}, {4, 0.6, 0.76},
	} {
		extended := plan.Item{Name: "A", Rank: 1, Hole: &plan.Hole{Stages: []plan.Stage{{With: coring.APC, To: 33}, {With: coring.XCB, To: 61.5}}}}
		p := simtest.OneSite(extended, simtest.RotaryHole("B", 38))
		p.Ship.Rates[rig.HeaveLoss] = simtest.Just(0.4)
		s := inPort(t, p)
		s.Sea.Forced = []float64{c.height}
		goHome(t, s)
		for tool, want := range map[coring.Tool]float64{coring.APC: c.piston, coring.XCB: c.rotated, coring.RCB: c.rotated} {
			log := s.Tools[tool]
			if got := log.Recovered / log.Cored; log.Cored < 28 || !simtest.Near(got, want) {
				t.Errorf("%v in %g m of sea: %.3f of %.1f m came up, by hand %.3f", tool, c.height, got, log.Cored, want)
			}
		}
	}
}

// A barrel that is on the wire is fetched in any sea: above the limit it costs no more than at it.
func TestASeaAboveTheLimitCostsNoMoreThanTheLimit(t *testing.T) {
	p := simtest.OneSite(simtest.PistonHole("A", 33))
	p.Ship.Rates[rig.HeaveLoss] = simtest.Just(0.4)
	s := sailedTo(t, p)
	for height, want := range map[float64]float64{4: 0.6, 4.5: 0.6, 9: 0.6} {
		forceSea(s, []float64{height})
		if got := s.Recovers(coring.APC, 10); !simtest.Near(got, want) {
			t.Errorf("in %g m of sea: %.3f, by hand %.3f", height, got, want)
		}
	}
}

// Rotated work stops at 5 m, so does what is pumped through pipe in the hole: cement waits for the sea before it is
// begun, and once it is in the pipe it is set in any sea. Conditioning is circulation: what was pumped before
// the sea rose stays pumped. Heavy mud is filled in whatever the sea, on the way out.
func TestWhatIsPumpedIntoTheHoleStopsAsOperationsDo(t *testing.T) {
	tests := []struct {
		kind         activity.Kind
		heights      []float64
		waited, ends float64 // h, of three hours of work
	}{
		{activity.CementPlug, []float64{5.5, 5.5, 1}, 2, 5},
		{activity.CementPlug, []float64{4.5}, 0, 3},
		{activity.CementPlug, []float64{1, 5.5, 5.5, 5.5, 1}, 0, 3},
		{activity.ConditionHole, []float64{1, 1, 5.5, 5.5, 5.5, 1}, 3, 6},
		{activity.ConditionHole, []float64{4.5}, 0, 3},
		{activity.HeavyMud, []float64{5.5, 5.5, 1}, 0, 3},
	}
	for _, test := range tests {
		s := stormy(t, test.heights...)
		s.Do(test.kind, 3*simtest.Hours)
		if got := s.Spent[activity.WaitOnWeather]; !simtest.Near(got, test.waited*simtest.Hours) || !simtest.Near(s.Clock, test.ends*simtest.Hours) || !simtest.Near(s.Spent[test.kind], s.Clock-got) {
			t.Errorf("%v in %v m: waited %.2f h, ended at %.2f h; want %g and %g", test.kind, test.heights, got/simtest.Hours, s.Clock/simtest.Hours, test.waited, test.ends)
		}
	}
}
