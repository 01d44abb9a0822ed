package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/sim/simtest"
)

// oneToolVisit is a visit to a hole cored with one tool from the sea floor down.
func oneToolVisit(tool coring.Tool, to unit.Depth) *plan.Plan {
	hole := simtest.PistonHole("A", to)
	hole.Hole.Stages[0].With = tool
	return simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 1500, hole))
}

// Wire, shot, pull and handling go at the pace of sites where only piston corers are used; all else stays.
func TestPistonCyclesAreQuickerWhereNoOtherToolIsUsed(t *testing.T) {
	kinds := []activity.Kind{activity.RunBarrel, activity.ShootPiston, activity.PullPiston, activity.FetchCorer, activity.HandleCorer}
	p := oneVisit()
	even := visited(t, p)
	p.Ship.Rates[rig.PistonAlone] = spread.Just(0.8)
	quick := visited(t, p)
	saved := 0.0
	for _, k := range kinds {
		saved += 0.2 * even.Spent[k]
		if !simtest.Near(quick.Spent[k], 0.8*even.Spent[k]) || even.Spent[k] == 0 {
			t.Errorf("%v takes %.3f h of %.3f h, want 0.8 of it", k, quick.Spent[k]/simtest.Hours, even.Spent[k]/simtest.Hours)
		}
	}
	if got := even.Clock - quick.Clock; !simtest.Near(got, saved) {
		t.Errorf("the visit is %.3f h shorter, by hand %.3f h", got/simtest.Hours, saved/simtest.Hours)
	}
	hole := p.Sites[0].Items[0].Hole
	hole.Stages = append(hole.Stages, plan.Stage{With: coring.XCB, To: 42})
	both := visited(t, p)
	p.Ship.Rates[rig.PistonAlone] = spread.Just(1)
	if other := visited(t, p); both.Clock != other.Clock {
		t.Errorf("with another tool it takes %.3f h, want %.3f h", both.Clock/simtest.Hours, other.Clock/simtest.Hours)
	}
}

// From 20 mbsf on the extended barrel cuts at half the rate of the lithology: of four cores of 9.5 m that is the last one, at
// 28.5 m. A stated rate and the rotary barrel stay.
func TestTheExtendedBarrelCutsSlowerDeepDown(t *testing.T) {
	for _, c := range []struct {
		what   string
		tool   coring.Tool
		stated bool
		slower float64 // m cut at half the rate
	}{{"extended", coring.XCB, false, 9.5}, {"rate stated", coring.XCB, true, 0}, {"rotary", coring.RCB, false, 0}} {
		p := oneToolVisit(c.tool, 38)
		p.Sites[0].Layers[0].Stated = c.stated
		even := visited(t, p)
		p.Ship.Rates[rig.ExtendedDeepFrom], p.Ship.Rates[rig.ExtendedDeep] = spread.Just(20), spread.Just(0.5)
		slow := visited(t, p)
		want := even.Spent[activity.CutCore] * (1 + c.slower/38)
		if got := slow.Spent[activity.CutCore]; !simtest.Near(got, want) || even.Spent[activity.CutCore] == 0 {
			t.Errorf("%s: cutting takes %.3f h, by hand %.3f h", c.what, got/simtest.Hours, want/simtest.Hours)
		}
	}
}
