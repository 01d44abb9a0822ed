package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/unit"
	"coredays/sim/simtest"
)

func TestTheShipWaitsForTheFirstDateOfASite(t *testing.T) {
	p := simtest.TwoSites()
	free := sailed(t, p, false)
	p.Sites[1].NotBefore = p.Sails.Add(15 * 24 * 3600e9)
	s := sailed(t, p, false)
	// She waits from her arrival at the second site to 15 days after sailing, and the rest is as it was.
	want := 15*86400 - free.sites[1].arrived
	if got := s.spent[activity.WaitForDate]; !simtest.Near(got, want) || !simtest.Near(s.clock, free.clock+want) {
		t.Errorf("waited %.2f h, by hand %.2f h; %.2f h longer in all", got/simtest.Hours, want/simtest.Hours, (s.clock-free.clock)/simtest.Hours)
	}
}

func TestNothingIsBegunAfterTheLastDateOfASite(t *testing.T) {
	p := simtest.TwoSites()
	p.Sites[1].NotAfter = p.Sails.Add(2 * 24 * 3600e9)
	bound := sailed(t, p, true)
	if bound.sites[1].state != dropped || bound.sites[1].cores != 0 {
		t.Errorf("the second site is in state %d with %d cores, want it dropped", bound.sites[1].state, bound.sites[1].cores)
	}
	if free := sailed(t, p, false); free.sites[1].cores == 0 {
		t.Error("the whole programme, without a deadline, must hold the second site too")
	}
}

func TestAShipDoesNotWaitForADateThatComesTooLate(t *testing.T) {
	p := simtest.TwoSites()
	p.SeaDays = 20 * unit.Day
	p.Sites[1].NotBefore = p.Sails.Add(19 * 24 * 3600e9)
	s := sailed(t, p, true)
	if s.clock > 20*86400 || s.sites[1].cores != 0 {
		t.Errorf("home after %.1f d with %d cores from the second site", s.clock/86400, s.sites[1].cores)
	}
}
