package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/sim/simtest"
)

// After a whole stroke of 9.5 m the next core begins 9.5 m deeper, whatever was recovered. Of a stroke of 8 m that was not
// whole half a core advances 4 m; one that swelled to 110 % no more than the 8 m that were cut; an empty one the
// 0.3 m that the pipe's weight pushes in. By the stroke it is 8 m.
func TestAdvanceByRecoveryIsWorkedOutByHand(t *testing.T) {
	s := sailedTo(t, simtest.OneSite(simtest.PistonHole("A", 100)))
	whole, partly := shot{stroke: 9.5, whole: true}, shot{stroke: 8}
	for _, c := range []struct {
		shot              shot
		share             float64
		recovered, stroke float64 // m that the next core begins deeper, by the two rules
	}{{whole, 0.5, 9.5, 9.5}, {whole, 1.1, 9.5, 9.5}, {partly, 0.5, 4, 8}, {partly, 1.1, 8, 8}, {partly, 0, 0.3, 8}} {
		for byStroke, want := range map[bool]float64{false: c.recovered, true: c.stroke} {
			s.Here.Refusal.AdvanceByStroke = byStroke
			if got := s.advance(c.shot, c.share); !simtest.Near(got, want) {
				t.Errorf("%+v of which %.0f %% came up, by stroke %v: %g m, by hand %g m", c.shot, 100*c.share, byStroke, got, want)
			}
		}
	}
}

// Where every shot at the mudline brings up water, twelve are made of a hole that begins with a piston core at the sea
// floor, and none of one that is drilled ahead, or begins with a rotated barrel.
func TestOnlyAPistonCoreFromTheSeaFloorLooksForTheMudline(t *testing.T) {
	ahead, extended := simtest.PistonHole("A", 133), simtest.PistonHole("A", 33)
	ahead.Hole.DrillAheadTo = 100
	extended.Hole.Stages[0].With = coring.XCB
	for name, c := range map[string]struct {
		item  plan.Item
		shots int
	}{"piston": {simtest.PistonHole("A", 33), 12}, "drilled ahead": {ahead, 0}, "extended": {extended, 0}, "rotary": {simtest.RotaryHole("A", 33), 0}, "drilled only": {simtest.DrilledHole("A", 50), 0}} {
		p := simtest.OneSite(c.item)
		p.Ship.Rates[rig.WaterCore] = simtest.Just(1)
		if got := sailed(t, p, false).Spent[activity.MudlineReset]; !simtest.Near(got, float64(c.shots)*30*simtest.Minutes) {
			t.Errorf("%s: the bit was set anew for %.1f h, by hand %.1f", name, got/simtest.Hours, float64(c.shots)/2)
		}
	}
}
