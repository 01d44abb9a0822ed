package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/sim/simtest"
)

// slowGround is a hole cored with the piston to 20 m and from there with the extended barrel in ground
// that it cuts at 0.2 m/h, far below its least rate of 4 m/h.
func slowGround(t *testing.T, to unit.Depth) *expedition {
	t.Helper()
	p := simtest.OneSite(plan.Item{Name: "A", Rank: 1, Hole: &plan.Hole{Stages: []plan.Stage{{With: coring.APC, To: 20}, {With: coring.XCB, To: to}}}})
	p.Sites[0].Layers[0].Lithology.Rate = simtest.Just(0.2 / simtest.Hours)
	return sailed(t, p, false)
}

// Two cores of two hours, 0.4 m each.
func TestAnExtendedBarrelThatMakesNoWayIsGivenUp(t *testing.T) {
	s := slowGround(t, 100)
	if cut := s.Spent[activity.CutCore]; !simtest.Near(cut, 4*simtest.Hours) {
		t.Errorf("cut for %.2f h, by hand 4 h", cut/simtest.Hours)
	}
	if log := s.Items[0]; !simtest.Near(log.Depth, 20.8) || !log.Incomplete {
		t.Errorf("given up at %.2f m, by hand 20.8 m; incomplete %v", log.Depth, log.Incomplete)
	}
}

// The 0.2 m that are left below 20.8 m are not worth a core.
func TestAnExtendedBarrelGivenUpAtItsTargetHasDoneItsWork(t *testing.T) {
	if log := slowGround(t, 21).Items[0]; !simtest.Near(log.Depth, 20.8) || log.Incomplete {
		t.Errorf("ends at %.2f m of 21, incomplete %v", log.Depth, log.Incomplete)
	}
}
