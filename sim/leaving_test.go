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
	"coredays/sim/ship"
	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// everyDeadline sails a plan, bound, with each number of sea days in steps from none to what the whole
// takes and some hours more.
func everyDeadline(t *testing.T, p *plan.Plan, step float64, look func(*expedition)) {
	t.Helper()
	whole := sailed(t, p, false).Clock
	for days := step; days < whole+20*simtest.Hours; days += step {
		p.SeaDays = unit.Duration(days)
		s := sailed(t, p, true)
		if s.Sites[0].State == ship.Done && s.Clock > s.Voyage.Deadline {
			t.Errorf("%.1f h given: %.2f h late", days/simtest.Hours, (s.Clock-s.Voyage.Deadline)/simtest.Hours)
		}
		look(s)
	}
}

func TestAHoleThatReachesItsTargetIsCompleteHoweverNearTheEnd(t *testing.T) {
	everyDeadline(t, simtest.OneSite(simtest.PistonHole("A", 100)), simtest.Hours/4, func(s *expedition) {
		if log := s.Items[0]; log.Depth >= 100 && log.Incomplete {
			t.Errorf("%.1f h given: at its target, yet incomplete", s.Voyage.Deadline/simtest.Hours)
		}
	})
}

func TestAHoleThatWasLoggedIsCompleteHoweverNearTheEnd(t *testing.T) {
	hole := simtest.RotaryHole("A", 400)
	hole.Hole.Logging = []int{0}
	everyDeadline(t, simtest.OneSite(hole, simtest.PistonHole("B", 300)), simtest.Hours, func(s *expedition) {
		if s.Items[0].Incomplete && s.Spent[activity.RigDownLogging] > 0 {
			t.Errorf("%.1f h given: logged and rigged down, yet incomplete", s.Voyage.Deadline/simtest.Hours)
		}
	})
}

// A sea too high for trips holds the ship in the hole that she is about to leave, until time is up.
func TestAHoleIsPluggedOnce(t *testing.T) {
	hole := simtest.PistonHole("A", 300)
	hole.Hole.Abandon = plan.Cement
	s := inPort(t, simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 4000, hole)))
	s.Constrained = true
	goOnUntil(t, s, func() bool { return s.Hole.Finished })
	seaAhead(s, slices.Concat(repeated(1, 2), repeated(7, 27), []float64{1})...)
	s.Voyage.Deadline = s.Clock + 12*simtest.Hours + s.LeaveTime() + s.HomeTime(s.At)
	goHome(t, s)
	if !s.TimeUp {
		t.Fatal("the sea did not hold the ship up: this shows nothing")
	}
	if s.Consumed[statistics.CementPlugs] != 1 || !simtest.Near(s.Spent[activity.CementPlug], 5*simtest.Hours) {
		t.Errorf("%d plugs in %.1f h, want one in 5", s.Consumed[statistics.CementPlugs], s.Spent[activity.CementPlug]/simtest.Hours)
	}
}

// A storm has the pipe recovered, and the sea then stays too high for the ship to take station again.
func TestAShipWhoseTimeIsUpDoesNotWaitToTakeStation(t *testing.T) {
	s := inPort(t, simtest.OneSite(simtest.PistonHole("A", 300)))
	s.Constrained = true
	goOnUntil(t, s, func() bool { return s.Hole.Depth > 50 })
	seaAhead(s, 11, 11, 7)
	s.sails()
	if !s.Home || s.Clock > s.Voyage.Deadline || !s.Items[0].Incomplete {
		t.Errorf("home %v after %.1f d of %.1f", s.Home, s.Clock/86400, s.Voyage.Deadline/86400)
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
		s.Voyage.Forecast.Skill = 1
		const work = 3 * simtest.Hours
		s.Voyage.Deadline = s.Clock + work + s.LeaveTime() + s.HomeTime(s.At) + test.spare*simtest.Hours
		if got := s.MustLeave(work); got != test.leaves {
			t.Errorf("%s: leaves %v", test.name, got)
		}
	}
}
