package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/geo"
	"coredays/model/plan"
)

// Where all goes as reckoned, what the crew sees is its estimate without the tenth that it added: 1/1.1.
func TestWhatGoesAsReckonedTeachesNothingButTheContingency(t *testing.T) {
	for name, p := range map[string]*plan.Plan{
		"one hole":                        oneSite(pistonHole("A", 33)),
		"two sites":                       twoSites(),
		"the last item is not called for": oneSite(pistonHole("A", 100), pistonHole("B", 50), onlyIfRefused("C", 0)),
	} {
		s := sailed(t, p, false)
		if got := s.seen / s.reckoned; s.seen == 0 || !near(got, 1/1.1) {
			t.Errorf("%s: seen over reckoned is %.3f, by hand %.3f", name, got, 1/1.1)
		}
	}
}

// onlyIfRefused is a hole that is wanted if the piston corer was refused above 20 m in another.
func onlyIfRefused(name string, other int) plan.Item {
	item := pistonHole(name, 30)
	item.When = &plan.Condition{Hole: other, Above: true, Depth: 20}
	return item
}

// A core from 1,533 m down, 9.5 m of it and one joint: the crew reckons with what it takes.
func TestTheCrewReckonsWithTheWholeCycleOfACore(t *testing.T) {
	const way, joint = 1533.0 / 250 * minutes, 6 * minutes
	const shot, pull, handling, oriented, stop = 4 * minutes, 3 * minutes, 10 * minutes, 6 * minutes, 10 * minutes
	const cut = 9.5 / 30 * hours
	for tool, want := range map[coring.Tool]float64{
		coring.APC:   2*way + shot + oriented + stop + pull + handling + joint,
		coring.HLAPC: 2*way + shot + stop + pull + handling + joint, // not oriented
		coring.XCB:   3*way + cut + handling + joint,
		coring.RCB:   3*way + cut + handling + joint,
	} {
		s := sailedTo(t, expedition(site("S", geo.Position{Longitude: 1}, 1500, plan.Item{Name: "A", Rank: 1, Hole: &plan.Hole{Oriented: true, Temperature: []int{1},
			Stages: []plan.Stage{{With: tool, To: 100}}}})))
		s.hole.open, s.hole.depth, s.bit, s.bha = true, 33, 1533, s.assembly()
		reckoned := s.cycleTime(tool)
		if !near(reckoned, want) {
			t.Errorf("%v: the crew reckons with %.2f min, by hand %.2f", tool, reckoned/minutes, want/minutes)
		}
		s.core()
		if tool != coring.HLAPC && !near(s.clock, want) { // half a stroke adds no joint
			t.Errorf("%v: took %.2f min, by hand %.2f", tool, s.clock/minutes, want/minutes)
		}
		if s.spent[activity.Connection] > 0 == (tool == coring.HLAPC) {
			t.Errorf("%v: connected for %.1f min", tool, s.spent[activity.Connection]/minutes)
		}
	}
}
