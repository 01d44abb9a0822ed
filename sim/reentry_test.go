package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/rig"
)

// A funnel that was found once is found again: it can only be missing at the first return.
func TestAFunnelIsLostAtTheFirstReturnOrNever(t *testing.T) {
	for stabs, lost := range []bool{true, false, false} {
		s := inOpenHole(t, 300, 1)
		s.v.Quantities[rig.FunnelLost] = just(1).Compile()
		s.bit, s.hole.funnel, s.hole.stabs = 1470, true, stabs
		s.reenter()
		search := 0.3 * hours // camera down and up 1,500 m at 0.5 m/s, and a stab that is not the first
		if lost {
			search = 0
		}
		if s.hole.lost != lost || !near(s.spent[activity.Stab], search) || !lost && !near(s.spent[activity.CameraRun], 6000) {
			t.Errorf("after %d returns: lost %v, %.2f h of camera, %.2f h of stabbing", stabs, s.hole.lost, s.spent[activity.CameraRun]/hours, s.spent[activity.Stab]/hours)
		}
	}
}

// A funnel costs two hours to drop, and to come back by it 1.67 h of camera and an hour of stabbing: 4.67 h, in which
// 187 m are drilled at 40 m/h. A shallower hole is rather begun again.
func TestAFunnelIsDroppedWhereDrillingAgainWouldCostMore(t *testing.T) {
	storm := append([]float64{1, 7, 7, 7, 7, 7, 7}, repeated(9, 12)...)
	for depth, drops := range map[float64]bool{160: false, 180: false, 194: true, 240: true} {
		s := inOpenHole(t, depth, append(storm, 1)...)
		s.item.Hole.Reentry = plan.Funnel
		s.do(activity.ConditionHole, 2*hours)
		if s.hole.funnel != drops {
			t.Errorf("%g m deep: funnel %v", depth, s.hole.funnel)
		}
	}
}

// Only what ranks first counts to the chance of the first rank; all counts to the chance of all.
func TestWhatRanksSecondCountsToTheWholeOnly(t *testing.T) {
	a, b := pistonHole("A", 33), pistonHole("B", 33)
	b.Rank = 2
	for undone, want := range [][2]float64{{0, 0}, {0, 1}} { // all, first
		s := sailed(t, oneSite(a, b), false)
		c := newColumns(s.v)
		r := make(row, c.width)
		if c.write(r, s); r[colAll] != 1 || r[colFirst] != 1 {
			t.Fatalf("all done, yet %g and %g", r[colAll], r[colFirst])
		}
		s.items[undone].incomplete = true
		if c.write(r, s); r[colAll] != want[0] || r[colFirst] != want[1] {
			t.Errorf("item %d incomplete: all %g, first rank %g; want %v", undone, r[colAll], r[colFirst], want)
		}
	}
}

// After a whole stroke of 9.5 m the next core begins 9.5 m deeper, whatever came up. Of a stroke of 8 m that was not
// whole half a core advances 4 m; one that swelled to 110 % no more than the 8 m that were cut; an empty one the
// 0.3 m that the pipe's weight pushes in. By the stroke it is 8 m.
func TestAdvanceByRecoveryIsWorkedOutByHand(t *testing.T) {
	s := sailedTo(t, oneSite(pistonHole("A", 100)))
	whole, partly := shot{stroke: 9.5, whole: true}, shot{stroke: 8}
	for _, c := range []struct {
		shot              shot
		share             float64
		recovered, stroke float64 // m that the next core begins deeper, by the two rules
	}{{whole, 0.5, 9.5, 9.5}, {whole, 1.1, 9.5, 9.5}, {partly, 0.5, 4, 8}, {partly, 1.1, 8, 8}, {partly, 0, 0.3, 8}} {
		for byStroke, want := range map[bool]float64{false: c.recovered, true: c.stroke} {
			s.here.Refusal.AdvanceByStroke = byStroke
			if got := s.advance(c.shot, c.share); !near(got, want) {
				t.Errorf("%+v of which %.0f %% came up, by stroke %v: %g m, by hand %g m", c.shot, 100*c.share, byStroke, got, want)
			}
		}
	}
}

// Where every shot at the mudline brings up water, twelve are made of a hole that begins with a piston core at the sea
// floor, and none of one that is drilled ahead, or begins with a rotated barrel.
func TestOnlyAPistonCoreFromTheSeaFloorLooksForTheMudline(t *testing.T) {
	ahead, extended := pistonHole("A", 133), pistonHole("A", 33)
	ahead.Hole.DrillAheadTo = 100
	extended.Hole.Stages[0].With = coring.XCB
	for name, c := range map[string]struct {
		item  plan.Item
		shots int
	}{"piston": {pistonHole("A", 33), 12}, "drilled ahead": {ahead, 0}, "extended": {extended, 0}, "rotary": {rotaryHole("A", 33), 0}, "drilled only": {drilledHole("A", 50), 0}} {
		p := oneSite(c.item)
		p.Ship.Rates[rig.WaterCore] = just(1)
		if got := sailed(t, p, false).spent[activity.MudlineReset]; !near(got, float64(c.shots)*30*minutes) {
			t.Errorf("%s: the bit was set anew for %.1f h, by hand %.1f", name, got/hours, float64(c.shots)/2)
		}
	}
}
