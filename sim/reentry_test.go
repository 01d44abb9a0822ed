package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/sim/simtest"
)

// A funnel that was found once is found again: it can only be missing at the first return.
func TestAFunnelIsLostAtTheFirstReturnOrNever(t *testing.T) {
	for stabs, lost := range []bool{true, false, false} {
		s := inOpenHole(t, 300, 1)
		s.Voyage.Quantities[rig.FunnelLost] = simtest.Just(1).Compile()
		s.Bit, s.Hole.Funnel, s.Hole.Stabs = 1470, true, stabs
		s.reenter()
		search := 0.3 * simtest.Hours // camera down and up 1,500 m at 0.5 m/s, and a stab that is not the first
		if lost {
			search = 0
		}
		if s.Hole.Lost != lost || !simtest.Near(s.Spent[activity.Stab], search) || !lost && !simtest.Near(s.Spent[activity.CameraRun], 6000) {
			t.Errorf("after %d returns: lost %v, %.2f h of camera, %.2f h of stabbing", stabs, s.Hole.Lost, s.Spent[activity.CameraRun]/simtest.Hours, s.Spent[activity.Stab]/simtest.Hours)
		}
	}
}

// A funnel costs two hours to drop, and to come back by it 1.67 h of camera and an hour of stabbing: 4.67 h, in which
// 187 m are drilled at 40 m/h. A shallower hole is rather begun again.
func TestAFunnelIsDroppedWhereDrillingAgainWouldCostMore(t *testing.T) {
	storm := append([]float64{1, 7, 7, 7, 7, 7, 7}, repeated(9, 12)...)
	for depth, drops := range map[float64]bool{160: false, 180: false, 194: true, 240: true} {
		s := inOpenHole(t, depth, append(storm, 1)...)
		s.Item.Hole.Reentry = plan.Funnel
		s.Do(activity.ConditionHole, 2*simtest.Hours)
		if s.Hole.Funnel != drops {
			t.Errorf("%g m deep: funnel %v", depth, s.Hole.Funnel)
		}
	}
}
