package sim

import (
	"math"
	"testing"

	"coredays/model/activity"
	"coredays/model/rig"
	"coredays/sim/simtest"
)

// Running 1,470 m of pipe: 30 kg/m, lighter by 1025/7850 in sea water, hang 735 m deep on average, with 50 t of
// blocks: (0.86943 x 30 x 735 + 50,000) kg x 9.80665 m/s2 x 1,470 m = 997.2 MJ.
const runningWork = (30*(1-1025.0/7850)*735 + 50_000) * 9.80665 * 1470

func TestTheLineIsCutWhenItHasDoneItsWork(t *testing.T) {
	if math.Abs(runningWork-997.2e6) > 1e5 {
		t.Fatalf("%.1f MJ", runningWork/1e6)
	}
	for share, cuts := range map[float64]float64{0.999: 1, 1.001: 0} {
		p := simtest.OneSite(simtest.PistonHole("A", 33))
		p.Ship.Rates[rig.LineWork], p.Ship.Rates[rig.SlipAndCut] = simtest.Just(share*runningWork), simtest.Just(80*simtest.Minutes)
		s := sailed(t, p, false)
		if got := s.Spent[activity.SlipAndCut]; !simtest.Near(got, cuts*80*simtest.Minutes) {
			t.Errorf("cut after %g of the work of running pipe: slipped and cut for %.1f min, by hand %.0f", share, got/simtest.Minutes, cuts*80)
		}
		// What is left on the line at the end: all since it was cut, out of the hole and out of the water.
		out := s.LineWorkOf(1533, 1500) + s.LineWorkOf(1500, 1470) + s.LineWorkOf(1470, 0)
		if want := out + (1-cuts)*runningWork; math.Abs(s.LineWork-want) > 1 {
			t.Errorf("%.1f MJ on the line at the end, by hand %.1f", s.LineWork/1e6, want/1e6)
		}
	}
}

// A wait as long as a rig service of half an hour and the cutting, 80 min, is used for both.
func TestTheLineIsCutWhileTheShipWaits(t *testing.T) {
	for waited, left := range map[float64]float64{109: 5e8, 111: 0} {
		p := simtest.OneSite(simtest.PistonHole("A", 33))
		p.Ship.Rates[rig.SlipAndCut], p.Ship.Rates[rig.RigService] = simtest.Just(80*simtest.Minutes), simtest.Just(30*simtest.Minutes)
		s := sailedTo(t, p)
		s.LineWork, s.Clock = 5e8, waited*simtest.Minutes
		s.UseTheWait(0)
		if s.LineWork != left {
			t.Errorf("%g min of waiting leave %g J on the line, by hand %g", waited, s.LineWork, left)
		}
	}
}
