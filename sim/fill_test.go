package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/sim/simtest"
)

// existingHole is 200 m deep, with a cone, and deepened by one rotary core.
func existingHole() *plan.Hole {
	return &plan.Hole{Existing: 200, DrillAheadTo: 200, Reentry: plan.Cone, IfLost: plan.GiveUp, Stages: []plan.Stage{{With: coring.RCB, To: 209.5}}}
}

// 30 m of fill are washed out at 60 m/h in half an hour, and the wash barrel comes up: two ways of 1,700 m at 250 m/min and ten
// minutes on the floor. Pipe runs 30 m less
// in the hole, a stand, 0.1 h.
func TestFillOfAnExistingHoleIsWashedOutBeforeCoring(t *testing.T) {
	const h, m = simtest.Hours, simtest.Minutes
	clean, filled := existingHole(), existingHole()
	filled.Fill = 30
	var at [2]float64
	for i, hole := range []*plan.Hole{clean, filled} {
		s := inPort(t, simtest.OneSite(plan.Item{Name: "A", Rank: 1, Hole: hole}))
		goOnUntil(t, s, func() bool { return s.Here != nil && s.Hole.Stabs > 0 && s.onBottom() })
		at[i] = s.Clock
	}
	want := 30/60.0*h + 2*1700/250.0*m + 10*m - 30/30.0/10*h
	if got := at[1] - at[0]; !simtest.Near(got, want) {
		t.Errorf("fill costs %.3f h, by hand %.3f h", got/h, want/h)
	}
}

// What falls in after a trip goes with the ground, and only where the hole is open: 6 m in mud, 24 m where it falls in four
// times as much, and 10 m at most where all but 10 m are cased.
func TestFillAfterATripGoesWithGroundAndOpenHole(t *testing.T) {
	for _, c := range []struct{ grips, shoe, want float64 }{{1, 0, 6}, {4, 0, 24}, {4, 290, 10}, {4, 300, 0}} {
		s := inOpenHole(t, 300, 1)
		s.Voyage.Quantities[rig.TripFill] = simtest.Just(6).Compile()
		s.Voyage.Quantities[s.Here.Layers[0].Sticking].Median = c.grips
		s.Bit, s.Hole.Funnel, s.Hole.Stabs, s.Hole.Cased.Shoe = 1470, true, 1, c.shoe
		s.reenter()
		if !simtest.Near(s.Hole.Fill, c.want) {
			t.Errorf("grips %g times, cased to %g m: %g m of fill, by hand %g m", c.grips, c.shoe, s.Hole.Fill, c.want)
		}
		s.runToBottom()
		if !simtest.Near(s.Spent[activity.WashDown], c.want/60*simtest.Hours) || !s.onBottom() || s.Hole.Fill > 1e-9 {
			t.Errorf("washed for %g s, bit at %g m, %g m left", s.Spent[activity.WashDown], s.Bit, s.Hole.Fill)
		}
	}
}

// The crew expects what will have fallen in: 30 m at 60 m/h are half an hour instead of a stand in 6 min, and the wash barrel comes up
// from 1,700 m at 250 m/min, with ten minutes on the floor.
func TestTheCrewExpectsToWashOutWhatFallsIn(t *testing.T) {
	const h, m = simtest.Hours, simtest.Minutes
	s := inPort(t, simtest.OneSite(plan.Item{Name: "A", Rank: 1, Hole: existingHole()}))
	goOnUntil(t, s, func() bool { return s.Here != nil && s.Hole.Open && s.Bit > 1000 })
	s.Voyage.Quantities[rig.WashDown] = simtest.Just(60 / h).Compile()
	estimate := func(fill float64) float64 {
		s.Voyage.Quantities[rig.TripFill] = simtest.Just(fill).Compile()
		return s.backTime()
	}
	want := 30/60.0*h - 30/30.0/10*h + 2*1700/250.0*m + 10*m
	if got := estimate(30) - estimate(0); s.Bit >= s.Here.Floor || !simtest.Near(got, want) {
		t.Errorf("fill adds %.3f h to the estimate, by hand %.3f h", got/h, want/h)
	}
}
