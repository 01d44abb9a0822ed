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

// Where all goes as estimated, what the crew sees is its estimate without the tenth that it added: 1/1.1.
func TestWhatGoesAsReckonedTeachesNothingButTheContingency(t *testing.T) {
	for name, p := range map[string]*plan.Plan{
		"one hole":                        simtest.OneSite(simtest.PistonHole("A", 33)),
		"two sites":                       simtest.TwoSites(),
		"the last item is not called for": simtest.OneSite(simtest.PistonHole("A", 100), simtest.PistonHole("B", 50), onlyIfRefused("C", 0)),
	} {
		s := sailed(t, p, false)
		if got := s.ActualTime / s.PlannedTime; s.ActualTime == 0 || !simtest.Near(got, 1/1.1) {
			t.Errorf("%s: seen over estimated is %.3f, by hand %.3f", name, got, 1/1.1)
		}
	}
}

// onlyIfRefused is a hole that is wanted if the piston corer was refused above 20 m in another.
func onlyIfRefused(name string, other int) plan.Item {
	item := simtest.PistonHole(name, 30)
	item.When = &plan.Condition{Hole: other, Above: true, Depth: 20}
	return item
}

// A core from 1,533 m down, 9.5 m of it and one joint: the crew estimates with what it takes.
func TestTheCrewReckonsWithTheWholeCycleOfACore(t *testing.T) {
	const way, joint = 1533.0 / 250 * simtest.Minutes, 6 * simtest.Minutes
	const shot, pull, handling, oriented, stop = 4 * simtest.Minutes, 3 * simtest.Minutes, 10 * simtest.Minutes, 6 * simtest.Minutes, 10 * simtest.Minutes
	const cut = 9.5 / 30 * simtest.Hours
	for tool, want := range map[coring.Tool]float64{
		coring.APC:   2*way + shot + oriented + stop + pull + handling + joint,
		coring.HLAPC: 2*way + shot + stop + pull + handling + joint, // not oriented
		coring.XCB:   3*way + cut + handling + joint,
		coring.RCB:   3*way + cut + handling + joint,
	} {
		s := sailedTo(t, simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 1500, plan.Item{Name: "A", Rank: 1, Hole: &plan.Hole{Oriented: true, Temperature: []int{1},
			Stages: []plan.Stage{{With: tool, To: 100}}}})))
		s.Hole.Open, s.Hole.Depth, s.Bit, s.BHA = true, 33, 1533, s.Assembly()
		estimated := s.CycleTime(tool)
		if !simtest.Near(estimated, want) {
			t.Errorf("%v: the crew estimates %.2f min, by hand %.2f", tool, estimated/simtest.Minutes, want/simtest.Minutes)
		}
		s.core()
		if tool != coring.HLAPC && !simtest.Near(s.Clock, want) { // half a stroke adds no joint
			t.Errorf("%v: took %.2f min, by hand %.2f", tool, s.Clock/simtest.Minutes, want/simtest.Minutes)
		}
		if s.Spent[activity.Connection] > 0 == (tool == coring.HLAPC) {
			t.Errorf("%v: connected for %.1f min", tool, s.Spent[activity.Connection]/simtest.Minutes)
		}
	}
}

// The estimate of the first site's task: 20 h, half an hour each to take station and to get under way, and a
// tenth. Five days on trust and five days estimated of which ten were seen make it half as long again.
func TestWhatWasSeenWeighsAsMuchAsFiveDaysOfEstimates(t *testing.T) {
	s := sailedTo(t, aTask(plan.Task{Steps: []plan.Step{{Takes: simtest.Just(20 * simtest.Hours)}}}))
	item := &s.Here.Items[0]
	const estimate = 21 * 1.1 * simtest.Hours
	for _, test := range []struct{ estimated, seen, factor float64 }{{0, 0, 1}, {5, 10, 1.5}, {15, 10, 0.75}} {
		s.PlannedTime, s.ActualTime = test.estimated*simtest.Day, test.seen*simtest.Day
		if got := s.crewEstimate(item); !simtest.Near(got, estimate*test.factor) {
			t.Errorf("%g d estimated, %g d seen: estimates %.3f h, by hand %.3f h", test.estimated, test.seen, got/simtest.Hours, estimate*test.factor/simtest.Hours)
		}
	}
}

// The way home is kept with a tenth, the pilotage of 2 h and the 12 h that are held in hand; the reserve for
// what ranks higher adds the way to the later site and the work there.
func TestTheReserveIsTheSumDoneByHand(t *testing.T) {
	here, later := geo.Position{Longitude: 1}, geo.Position{Longitude: 3}
	second := simtest.PistonHole("A", 33)
	second.Rank = 2
	p := simtest.Expedition(simtest.Site("Here", here, 1500, second), simtest.Site("Later", later, 1500, plan.Item{Name: "task", Rank: 1, Task: &plan.Task{Steps: []plan.Step{{Takes: simtest.Just(20 * simtest.Hours)}}}}))
	p.Ship.Rates[rig.HomeReserve] = simtest.Just(12 * simtest.Hours)
	s := sailedTo(t, p)
	leg := func(a, b geo.Position) float64 { return float64(geo.Distance(a, b)) / 5 * 1.1 }
	port := geo.Position{}
	home := func(from geo.Position) float64 { return leg(from, port) + 2*simtest.Hours + 12*simtest.Hours }
	if got, want := s.HomeTime(s.At), home(here); !simtest.Near(got, want) {
		t.Errorf("home from here in %.2f h, by hand %.2f h", got/simtest.Hours, want/simtest.Hours)
	}
	if got, want := s.reserve(s.At, 2), leg(here, later)+21*1.1*simtest.Hours+home(later); !simtest.Near(got, want) {
		t.Errorf("kept for the task there: %.2f h, by hand %.2f h", got/simtest.Hours, want/simtest.Hours)
	}
	if got, want := s.reserve(s.At, 1), home(here); !simtest.Near(got, want) {
		t.Errorf("kept where nothing ranks higher: %.2f h, by hand %.2f h", got/simtest.Hours, want/simtest.Hours)
	}
	// A hole of three quarters of its estimate is worth beginning, to the second.
	least := s.crewEstimate(&s.Here.Items[0])*0.75 + s.reserve(s.At, 2)
	for _, spare := range []float64{-1, 1} {
		s.Voyage.Deadline = s.Clock + least + spare
		if got := s.fits(&s.Here.Items[0]); got != (spare > 0) {
			t.Errorf("%g s more than is needed: fits %v", spare, got)
		}
	}
}
