package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/sim/simtest"
)

// A hole of 200 m with a cone, deepened to 209.5 m by one rotary core. To it: pilotage, passage, station, assembly,
// 49 stands to 30 m above the sea floor, camera down and up (3,000 m at 0.5 m/s), an hour to stab, then 200 m of pipe
// at 10 stands an hour. No sea floor is looked for, nothing is spudded or drilled ahead, and no funnel is dropped.
func TestAnExistingHoleIsFoundByCameraAndDeepened(t *testing.T) {
	at := geo.Position{Longitude: 1}
	item := plan.Item{Name: "A", Rank: 1, Hole: &plan.Hole{Existing: 200, DrillAheadTo: 200, Reentry: plan.Cone, IfLost: plan.GiveUp,
		Stages: []plan.Stage{{With: coring.RCB, To: 209.5}}}}
	p := simtest.Expedition(simtest.Site("S", at, 1500, item))
	p.Ship.Rates[rig.FunnelLost] = simtest.Just(1) // a cone does not sink as funnels do
	s := inPort(t, p)
	goOnUntil(t, s, func() bool { return s.Hole.Stabs > 0 })
	if s.Stickiness() != 0 {
		t.Errorf("%.2f times the usual chance of sticking in a hole just come to: what has stood for years stands", s.Stickiness())
	}
	goOnUntil(t, s, s.onBottom)
	want := 2*simtest.Hours + float64(geo.Distance(geo.Position{}, at))/5 + 30*simtest.Minutes + simtest.RoundRates[rig.RotaryMakeUp] + 1470.0/30/20*simtest.Hours +
		3000/0.5 + 1*simtest.Hours + (200-0.001)/30.0/10*simtest.Hours // a stab ends a millimetre below the sea floor
	if !simtest.Near(s.Clock, want) {
		t.Errorf("at the bottom after %.3f h, by hand %.3f h; by kind %v", s.Clock/simtest.Hours, want/simtest.Hours, s.Spent)
	}
	goHome(t, s)
	if s.Spent[activity.DrillAhead]+s.Spent[activity.WaterCore]+s.Spent[activity.DropFunnel] > 0 || !simtest.Near(s.Sites[0].Cored, 9.5) || !simtest.Near(s.Items[0].Depth, 209.5) {
		t.Errorf("cored %g m to %g m; by kind %v", s.Sites[0].Cored, s.Items[0].Depth, s.Spent)
	}
}
