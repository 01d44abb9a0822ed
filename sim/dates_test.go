package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/unit"
	"coredays/sim/ship"
	"coredays/sim/simtest"
)

func TestTheShipWaitsForTheFirstDateOfASite(t *testing.T) {
	p := simtest.TwoSites()
	free := sailed(t, p, false)
	p.Sites[1].NotBefore = p.Sails.Add(15 * 24 * 3600e9)
	s := sailed(t, p, false)
	// She waits from her arrival at the second site to 15 days after sailing, and the rest is as it was.
	want := 15*86400 - free.Sites[1].Arrived
	if got := s.Spent[activity.WaitForDate]; !simtest.Near(got, want) || !simtest.Near(s.Clock, free.Clock+want) {
		t.Errorf("waited %.2f h, by hand %.2f h; %.2f h longer in all", got/simtest.Hours, want/simtest.Hours, (s.Clock-free.Clock)/simtest.Hours)
	}
}

func TestNothingIsBegunAfterTheLastDateOfASite(t *testing.T) {
	p := simtest.TwoSites()
	p.Sites[1].NotAfter = p.Sails.Add(2 * 24 * 3600e9)
	bound := sailed(t, p, true)
	if bound.Sites[1].State != ship.Dropped || bound.Sites[1].Cores != 0 {
		t.Errorf("the second site is in state %d with %d cores, want it dropped", bound.Sites[1].State, bound.Sites[1].Cores)
	}
	if free := sailed(t, p, false); free.Sites[1].Cores == 0 {
		t.Error("the whole programme, without a deadline, must hold the second site too")
	}
}

func TestAShipDoesNotWaitForADateThatComesTooLate(t *testing.T) {
	p := simtest.TwoSites()
	p.SeaDays = 20 * unit.Day
	p.Sites[1].NotBefore = p.Sails.Add(19 * 24 * 3600e9)
	s := sailed(t, p, true)
	if s.Clock > 20*86400 || s.Sites[1].Cores != 0 {
		t.Errorf("home after %.1f d with %d cores from the second site", s.Clock/86400, s.Sites[1].Cores)
	}
}
