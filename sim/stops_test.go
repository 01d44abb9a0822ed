package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/sim/simtest"
)

// The site is a degree east of the port. A call a degree further on is two degrees more, and a day in port; a boat takes its 6 h; a
// waypoint home a degree west of the port is two degrees more.
func TestACallAndAWayHomeCostTheirHandSum(t *testing.T) {
	plain := simtest.OneSite(simtest.PistonHole("A", 20))
	called := simtest.OneSite(simtest.PistonHole("A", 20))
	called.Sites[0].Call = plan.Call{Name: "Call", Position: &geo.Position{Longitude: 2}, Takes: simtest.Just(24 * simtest.Hours)}
	boat := simtest.OneSite(simtest.PistonHole("A", 20))
	boat.Sites[0].Call = plan.Call{Name: "boat", Takes: simtest.Just(6 * simtest.Hours)}
	around := simtest.OneSite(simtest.PistonHole("A", 20))
	around.To.Via = []geo.Position{{Longitude: -1}}
	degree := float64(geo.Distance(geo.Position{}, geo.Position{Longitude: 1})) / 5
	days := func(p *plan.Plan) float64 {
		s := inPort(t, p)
		goHome(t, s)
		return s.Clock
	}
	base := days(plain)
	for name, c := range map[string]struct {
		plan *plan.Plan
		more float64
	}{"call in port": {called, 2*degree + 24*simtest.Hours}, "boat": {boat, 6 * simtest.Hours}, "way home": {around, 2 * degree}} {
		if got := days(c.plan) - base; !simtest.Near(got, c.more) {
			t.Errorf("%s: %+.3f h, by hand %+.3f h", name, got/simtest.Hours, c.more/simtest.Hours)
		}
	}
	s := inPort(t, called)
	if got, want := s.Crew.Leg[0][2]-inPort(t, plain).Crew.Leg[0][2], 2*degree+24*simtest.Hours; got < want*0.99 || got > want*1.01 {
		t.Errorf("the crew counts %.2f h for the call, by hand %.2f h", got/simtest.Hours, want/simtest.Hours)
	}
}

// Of closings every 10 h that last 1 h and every 30 h that last 3 h, three in four are short: 1.5 h each, one every 7.5 h of open
// site, a sixth of the time closed.
func TestSeveralThingsCloseASiteEachAsOftenAsItComes(t *testing.T) {
	p := simtest.Tasks(simtest.Just(20_000 * simtest.Hours))
	p.Sites[0].Items[0].Task.Steps[0].SeaLimit, p.Sites[0].Items[0].Task.Steps[0].Interruptible = 9, true
	p.Sites[0].Unusable = plan.Unusable{Because: "ice", Every: simtest.Just(10 * simtest.Hours), Lasts: simtest.Just(1 * simtest.Hours)}
	p.Sites[0].More = []plan.Unusable{{Because: "whales", Every: simtest.Just(30 * simtest.Hours), Lasts: simtest.Just(3 * simtest.Hours)}}
	p.SeaDays = 1000 * unit.Day
	s := inPort(t, p)
	goHome(t, s)
	waited := s.Spent[activity.WaitOnWeather] / simtest.Hours
	if want := 20_000 / 7.5 * 1.5; waited < 0.93*want || waited > 1.07*want { // 2,667 closings: 2 % and a bit for one standard error
		t.Errorf("closed for %.0f h, by hand %.0f h", waited, want)
	}
}

// A rule that is met for sure below 20 m ends both holes at the same depth, after 5 h for results each, with 5 h of cement; one with a
// chance of 25 % in a quarter of the expeditions.
func TestARuleEndsAllHolesOfASiteAlike(t *testing.T) {
	site := func(chance float64) *plan.Plan {
		var items []plan.Item
		for _, name := range []string{"A", "B"} {
			item := simtest.RotaryHole(name, 100)
			item.Hole.EndsEarly = &plan.EndsEarly{Because: "gas", Chance: chance, From: 20, Waits: 5 * unit.Hour, Plugged: true}
			items = append(items, item)
		}
		return simtest.OneSite(items...)
	}
	s := inPort(t, site(1))
	goHome(t, s)
	a, b := s.Items[0], s.Items[1]
	if a.Depth != b.Depth || a.Depth < 20 || a.Depth >= 100 || !a.Incomplete || !b.Incomplete || !simtest.Near(s.Spent[activity.AwaitResults], 10*simtest.Hours) || !simtest.Near(s.Spent[activity.CementPlug], 10*simtest.Hours) {
		t.Errorf("ended at %g m and %g m; %v", a.Depth, b.Depth, s.Spent)
	}
	const many = 400
	ended := 0
	v := simtest.Compiled(t, site(0.25))
	for n := range many {
		s := newExpedition(v)
		s.begins(1, n)
		s.sails()
		if s.Items[0].Incomplete {
			ended++
		}
	}
	if share := float64(ended) / many; share < 0.25-3*0.0217 || share > 0.25+3*0.0217 { // three standard errors
		t.Errorf("%.3f of the expeditions ended early, by the rule 0.25", share)
	}
}
