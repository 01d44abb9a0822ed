package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/sim/simtest"
)

// Down to 57 m six cores of 9.5 m or twelve of half a joint. The cut and the joints are the same; each core more takes
// three traverses of the pipe at 250 m/min and 10 min on the rig floor, and every third a sweep of 15 min.
func TestShorterCoresCostACycleEach(t *testing.T) {
	spent := func(length float64) (cycles, sweeps float64, cores int) {
		p := simtest.OneSite(simtest.RotaryHole("A", 57))
		p.Sites[0].Layers[0].Lithology.Rate = simtest.Just(20 / simtest.Hours)
		p.Ship.Rates[rig.RotaryAdvance] = simtest.Just(length)
		s := sailed(t, p, false)
		if cut := s.Spent[activity.CutCore] / simtest.Hours; !simtest.Near(cut, 57.0/20) {
			t.Errorf("%.3f h of cutting 57 m at 20 m/h", cut)
		}
		return s.Spent[activity.DropBarrel] + s.Spent[activity.FetchBarrel] + s.Spent[activity.HandleBarrel], s.Spent[activity.Sweep], s.Tools[coring.RCB].Cores
	}
	byHand := func(length float64) (seconds float64) {
		for at := 0.0; at < 57; at += length {
			seconds += 3*(1500+at)/(250.0/60) + 10*simtest.Minutes
		}
		return seconds
	}
	for length, want := range map[float64]int{9.5: 6, 4.75: 12} {
		cycles, sweeps, cores := spent(length)
		if cores != want || !simtest.Near(cycles, byHand(length)) || !simtest.Near(sweeps, float64(want/3)*15*simtest.Minutes) {
			t.Errorf("cores of %g m: %d, %.1f min of barrel, %.0f min of sweeps; by hand %d, %.1f min, %d min", length, cores, cycles/60, sweeps/60,
				want, byHand(length)/60, want/3*15)
		}
	}
}

// What the plan states goes before what is usual, for the crew's estimate and for the cores themselves.
func TestAStatedLengthOfCoresGoesBeforeTheUsual(t *testing.T) {
	for stated, want := range map[unit.Length]float64{0: 5, 3: 3} {
		hole := simtest.RotaryHole("A", 30)
		hole.Hole.Stages[0].Advance = stated
		p := simtest.OneSite(hole)
		p.Ship.Rates[rig.RotaryAdvance] = simtest.Just(5)
		if s := sailedTo(t, p); s.Stroke(coring.RCB, s.RateMedian) != want {
			t.Errorf("stated %g m: the crew estimates %g m, want %g", float64(stated), s.Stroke(coring.RCB, s.RateMedian), want)
		}
		if cores := sailed(t, p, false).Tools[coring.RCB].Cores; cores != int(30/want) {
			t.Errorf("stated %g m: %d cores of 30 m, want %g", float64(stated), cores, 30/want)
		}
	}
}
