package sim

import (
	"testing"

	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/sim/ship"
	"coredays/sim/simtest"
)

// givenDays sails a plan, bound, with shares of the time that the whole of it takes.
func givenDays(t *testing.T, p *plan.Plan, look func(share float64, s *expedition)) {
	t.Helper()
	whole := sailed(t, p, false).Clock
	for share := 0.3; share < 1.3; share += 0.01 {
		p.SeaDays = unit.Duration(whole * share)
		look(share, sailed(t, p, true))
	}
}

func TestASiteIsReachedOnlyToBeginSomethingThere(t *testing.T) {
	second := simtest.PistonHole("A", 200)
	second.Rank = 2
	near, far := simtest.Site("Near", geo.Position{Longitude: 8}, 3000, second), simtest.Site("Big", geo.Position{Longitude: -8}, 3000, simtest.PistonHole("A", 300), simtest.PistonHole("B", 300))
	for _, p := range []*plan.Plan{simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 3000, simtest.PistonHole("A", 300))), simtest.Expedition(near, far)} {
		begun, passed := 0, 0
		givenDays(t, p, func(share float64, s *expedition) {
			for n := range s.Sites {
				began := false
				for _, item := range s.Voyage.Sites[n].Items {
					began = began || s.Items[item.Number].Began > 0
				}
				if reached := s.Sites[n].State == ship.Done; reached != began {
					t.Errorf("given %.2f of the days, %s was reached: %v, work begun there: %v", share, s.Voyage.Sites[n].Name, reached, began)
				} else if reached {
					begun++
				} else {
					passed++
				}
			}
		})
		if begun == 0 || passed == 0 {
			t.Errorf("%d sites reached, %d passed over: this shows little", begun, passed)
		}
	}
}

// A site far away does not fit; what ranks below its hole is not kept waiting for it.
func TestNoTimeIsKeptForASiteThatIsDropped(t *testing.T) {
	second := simtest.PistonHole("B", 50)
	second.Rank = 2
	p := simtest.Expedition(simtest.Site("Far", geo.Position{Longitude: 40}, 4000, simtest.PistonHole("A", 300)), simtest.Site("Near", geo.Position{Longitude: 1}, 1500, simtest.PistonHole("A", 50), second))
	p.SeaDays = 14 * unit.Day
	s := sailed(t, p, true)
	if s.Sites[0].State != ship.Dropped || s.Items[1].Depth != 50 || s.Items[2].Depth != 50 {
		t.Errorf("the far site is in state %d, the holes of the near one are %g and %g m deep", s.Sites[0].State, s.Items[1].Depth, s.Items[2].Depth)
	}
}

// A site that comes later and can't be worked any more, for its distance, its own work or its last date,
// takes no time from what ranks below it and is at hand.
func TestNoTimeIsKeptForALaterSiteThatCannotFit(t *testing.T) {
	second := simtest.PistonHole("B", 50)
	second.Rank = 2
	near := simtest.Site("Near", geo.Position{Longitude: 1}, 1500, simtest.PistonHole("A", 50), second)
	far := simtest.Site("Later", geo.Position{Longitude: 40}, 4000, simtest.PistonHole("A", 300))
	long := simtest.Site("Later", geo.Position{Longitude: 2}, 1500, plan.Item{Name: "task", Rank: 1, Task: &plan.Task{Steps: []plan.Step{{Takes: simtest.Just(30 * simtest.Day)}}}})
	fits := simtest.Site("Later", geo.Position{Longitude: 2}, 1500, plan.Item{Name: "task", Rank: 1, Task: &plan.Task{Steps: []plan.Step{{Takes: simtest.Just(11 * simtest.Day)}}}})
	closed := fits
	closed.NotAfter = simtest.Expedition().Sails.AddDate(0, 0, 1)
	for name, c := range map[string]struct {
		later plan.Site
		kept  bool
	}{"far": {far, false}, "long": {long, false}, "closed": {closed, false}, "fits": {fits, true}} {
		p := simtest.Expedition(near, c.later)
		p.SeaDays = 14 * unit.Day
		s := sailed(t, p, true)
		if got := s.Items[1].Depth == 0; got != c.kept {
			t.Errorf("%s: the hole of rank 2 was left out: %t, want %t", name, got, c.kept)
		}
	}
}

// A hole is worth going to for three quarters of its estimate, one that is logged, or a task, for all of it.
func TestASiteIsPassedOverWhereLessThanItsWorthIsLeft(t *testing.T) {
	logged := simtest.PistonHole("A", 300)
	logged.Hole.Logging = []int{0}
	for name, c := range map[string]struct {
		item  plan.Item
		worth float64
	}{"a hole": {simtest.PistonHole("A", 300), 0.75}, "a hole to log": {logged, 1}, "a task": {plan.Item{Name: "task", Rank: 1, Task: &plan.Task{Steps: []plan.Step{{Takes: simtest.Just(3 * simtest.Day)}}}}, 1}} {
		s := inPort(t, simtest.OneSite(c.item))
		s.Constrained = true
		to := s.Voyage.Sites[0].Items[0]
		needed := s.passageTime(voyage.SitePlace(0)) + s.HomeTime(voyage.SitePlace(0)) + c.worth*s.crewEstimate(&to)
		for _, spare := range []float64{-60, 60} {
			s.Voyage.Deadline, s.Sites[0].State = s.Clock+needed+spare, ship.Ahead
			if got := s.nextPlace() == voyage.SitePlace(0); got != (spare > 0) {
				t.Errorf("%s, %g s more than it is worth: goes there %v", name, spare, got)
			}
		}
	}
}
