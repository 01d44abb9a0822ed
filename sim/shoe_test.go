package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/spread"
	"coredays/sim/simtest"
)

// 30 m are cut at 30 m/h in an hour. A hard shoe cuts limestone at 1.5 times that rate, in 40 min, and recovers 1.2 times 70 %; mud it
// cuts at 0.8 times, in 75 min, with the same recovery. A rate that is stated holds.
func TestAHardShoeChangesRateAndRecoveryByAHandSum(t *testing.T) {
	for _, c := range []struct {
		rock          string
		hard, stated  bool
		minutes, core float64
	}{{"limestone", false, false, 60, 21}, {"limestone", true, false, 40, 25.2}, {"mud", true, false, 75, 21}, {"mud", false, false, 60, 21}, {"limestone", true, true, 60, 25.2}} {
		hole := plan.Item{Name: "A", Rank: 1, Hole: &plan.Hole{Stages: []plan.Stage{{With: coring.XCB, To: 30, HardShoe: c.hard}}}}
		p := simtest.OneSite(hole)
		layer := &p.Sites[0].Layers[0]
		layer.Lithology.Name, layer.Stated = c.rock, c.stated
		layer.Lithology.Recovery[coring.XCB] = spread.Just(0.7)
		s := inPort(t, p)
		goHome(t, s)
		if got := s.Spent[activity.CutCore] / simtest.Minutes; !simtest.Near(got, c.minutes) || !simtest.Near(s.Sites[0].Recovered, c.core) {
			t.Errorf("%+v: cut for %.1f min, %.2f m recovered", c, got, s.Sites[0].Recovered)
		}
	}
}
