package sim

import (
	"slices"
	"testing"

	"gonum.org/v1/gonum/stat"

	"coredays/model/activity"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// everyDeadline sails a plan, bound, with each number of sea days in steps from none to what the whole
// takes and some hours more.
func everyDeadline(t *testing.T, p *plan.Plan, step float64, look func(*ship)) {
	t.Helper()
	whole := sailed(t, p, false).clock
	for days := step; days < whole+20*simtest.Hours; days += step {
		p.SeaDays = unit.Duration(days)
		s := sailed(t, p, true)
		if s.sites[0].state == done && s.clock > s.v.Deadline {
			t.Errorf("%.1f h given: %.2f h late", days/simtest.Hours, (s.clock-s.v.Deadline)/simtest.Hours)
		}
		look(s)
	}
}

func TestAHoleThatReachesItsTargetIsCompleteHoweverNearTheEnd(t *testing.T) {
	everyDeadline(t, simtest.OneSite(simtest.PistonHole("A", 100)), simtest.Hours/4, func(s *ship) {
		if log := s.items[0]; log.depth >= 100 && log.incomplete {
			t.Errorf("%.1f h given: at its target, yet incomplete", s.v.Deadline/simtest.Hours)
		}
	})
}

func TestAHoleThatWasLoggedIsCompleteHoweverNearTheEnd(t *testing.T) {
	hole := simtest.RotaryHole("A", 400)
	hole.Hole.Logging = []int{0}
	everyDeadline(t, simtest.OneSite(hole, simtest.PistonHole("B", 300)), simtest.Hours, func(s *ship) {
		if s.items[0].incomplete && s.spent[activity.RigDownLogging] > 0 {
			t.Errorf("%.1f h given: logged and rigged down, yet incomplete", s.v.Deadline/simtest.Hours)
		}
	})
}

// A sea too high for trips holds the ship in the hole that she is about to leave, until time is up.
func TestAHoleIsPluggedOnce(t *testing.T) {
	hole := simtest.PistonHole("A", 300)
	hole.Hole.Abandon = plan.Cement
	s := inPort(t, simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 4000, hole)))
	s.constrained = true
	goOnUntil(t, s, func() bool { return s.hole.finished })
	seaAhead(s, slices.Concat(repeated(1, 2), repeated(7, 27), []float64{1})...)
	s.v.Deadline = s.clock + 12*simtest.Hours + s.leaveTime() + s.homeTime(s.at)
	goHome(t, s)
	if !s.timeUp {
		t.Fatal("the sea did not hold the ship up: this shows nothing")
	}
	if s.consumed[statistics.CementPlugs] != 1 || !simtest.Near(s.spent[activity.CementPlug], 5*simtest.Hours) {
		t.Errorf("%d plugs in %.1f h, want one in 5", s.consumed[statistics.CementPlugs], s.spent[activity.CementPlug]/simtest.Hours)
	}
}

// A storm has the pipe recovered, and the sea then stays too high for the ship to take station again.
func TestAShipWhoseTimeIsUpDoesNotWaitToTakeStation(t *testing.T) {
	s := inPort(t, simtest.OneSite(simtest.PistonHole("A", 300)))
	s.constrained = true
	goOnUntil(t, s, func() bool { return s.hole.depth > 50 })
	seaAhead(s, 11, 11, 7)
	s.sails()
	if !s.home || s.clock > s.v.Deadline || !s.items[0].incomplete {
		t.Errorf("home %v after %.1f d of %.1f", s.home, s.clock/86400, s.v.Deadline/86400)
	}
}

// Drilling that is slower than the crew estimated is broken off when it is time to leave. The joint in
// hand is finished: three hours where the rate is three times below its median, as seldom as once in
// 600 holes.
func TestDrillingAheadIsBrokenOffInTime(t *testing.T) {
	p := simtest.OneSite(simtest.DrilledHole("D", 800))
	p.Sites[0].Layers[0].Lithology.Ahead = simtest.Wide(10/simtest.Hours, 1.6)
	p.Ship.Rates[rig.BitLife] = simtest.Just(500 * simtest.Hours)
	p.SeaDays = 150 * unit.Hour
	r := replicated(t, p, 300, 2)
	if latest := -slices.Min(r.Column(r.Constrained, statistics.ColInHand)); latest > 3*simtest.Hours {
		t.Errorf("up to %.1f h late", latest/simtest.Hours)
	}
	if done := stat.Mean(r.Column(r.Constrained, r.Layout.Item(0, statistics.ItemDone)), nil); done < 0.5 || done > 0.95 {
		t.Errorf("%.2f of the holes are complete: this shows little", done)
	}
}

// Assemblies are not handled in more than 4 m of sea. With pipe on deck and so many hours left beyond the way
// home, the ship leaves when the forecast, stated every 3 h for 84 h, has as many hours of such a sea;
// further than three days ahead nobody looks.
func TestTheCrewLeavesWhileTheForecastLetsIt(t *testing.T) {
	tests := []struct {
		name    string
		heights []float64
		spare   float64 // h
		leaves  bool
	}{
		{"calm, time left", []float64{1}, 0.1, false},
		{"calm, no time left", []float64{1}, -0.1, true},
		{"12 h of 5 m, 11.9 h left", slices.Concat(repeated(1, 8), repeated(5, 12), []float64{1}), 11.9, true},
		{"12 h of 5 m, 12.1 h left", slices.Concat(repeated(1, 8), repeated(5, 12), []float64{1}), 12.1, false},
		{"12 h of 3.9 m, an hour left", slices.Concat(repeated(1, 8), repeated(3.9, 12), []float64{1}), 1, false},
		{"5 m for ever, 71.9 h left", []float64{5}, 71.9, true},
		{"5 m for ever, 72.1 h left", []float64{5}, 72.1, false},
	}
	for _, test := range tests {
		s := stormy(t, test.heights...)
		s.v.Forecast.Skill = 1
		const work = 3 * simtest.Hours
		s.v.Deadline = s.clock + work + s.leaveTime() + s.homeTime(s.at) + test.spare*simtest.Hours
		if got := s.mustLeave(work); got != test.leaves {
			t.Errorf("%s: leaves %v", test.name, got)
		}
	}
}
