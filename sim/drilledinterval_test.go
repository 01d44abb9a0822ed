package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/sim/simtest"
)

// A hole is cored to 14.5 m, drilled to 33 m at 40 m/h, and cored with one stroke to 42.5 m. Beyond the first two
// cores that is 18.5 m of drilling, joints at 20, 30 and 40 m, a core at 33 m (two ways of 1,533 m at 250 m/min and
// 17 min), and 28 m more to pull out of the hole, at 10 stands an hour.
func TestAnIntervalIsDrilledBetweenCores(t *testing.T) {
	spot := simtest.PistonHole("A", 14.5)
	short := sailed(t, simtest.OneSite(spot), false)
	hole := *spot.Hole
	hole.Stages = append(hole.Stages[:1:1], plan.Stage{With: coring.APC, From: 33, To: 42.5})
	spot.Hole = &hole
	s := sailed(t, simtest.OneSite(spot), false)
	want := 18.5/40*simtest.Hours + 3*6*simtest.Minutes + (2*1533.0/250+17)*simtest.Minutes + 28.0/30/10*simtest.Hours
	if got := s.Clock - short.Clock; !simtest.Near(got, want) {
		t.Errorf("%.3f h more, by hand %.3f h; by kind %v", got/simtest.Hours, want/simtest.Hours, s.Spent)
	}
	if got := s.Spent[activity.DrillAhead]; !simtest.Near(got, 18.5/40*simtest.Hours) {
		t.Errorf("%.3f h of drilling", got/simtest.Hours)
	}
	if got := s.Sites[0].Cored; !simtest.Near(got, 24) {
		t.Errorf("cored %g m, want 14.5 and 9.5", got)
	}
	if got := s.Items[0].Depth; !simtest.Near(got, 42.5) {
		t.Errorf("%g m deep", got)
	}
}
