package sim

import (
	"testing"

	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/sim/ship"
	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// Every string sticks and is lost at the first joint. Of two on board the first is lost in hole A, the second in the hole that takes
// its place: that is given up, and hole B is not begun. With three on board a third hole is spudded at A. Where nobody sets
// an end what was lost counts as brought: four holes each, as often as a crew begins again.
func TestThePlanStopsWhereNoStringIsLeft(t *testing.T) {
	for _, c := range []struct {
		on        voyage.OnBoard
		bound     bool
		lost      int
		a, b      int
		undoneAtB ship.Progress
	}{
		{voyage.OnBoard{Strings: 2, Pipe: 9000}, true, 2, 2, 0, ship.Dropped},
		{voyage.OnBoard{Strings: 3, Pipe: 9000}, true, 3, 3, 0, ship.Dropped},
		{voyage.OnBoard{Strings: 2, Pipe: 9000}, false, 8, 4, 4, ship.Done},
		{voyage.OnBoard{}, true, 8, 4, 4, ship.Done},
	} {
		first, second := threeXCBCores, threeXCBCores
		p := simtest.OneSite(plan.Item{Name: "A", Rank: 1, Hole: &first}, plan.Item{Name: "B", Rank: 1, Hole: &second})
		p.Ship.Rates[rig.StuckChance], p.Ship.Rates[rig.LostBHA] = simtest.Just(1e6), simtest.Just(1)
		s := inPort(t, p)
		s.Constrained, s.Voyage.OnBoard = c.bound, c.on
		goHome(t, s)
		if a, b := s.Items[0], s.Items[1]; a.Holes != c.a || !a.Incomplete || b.Holes != c.b || b.State != c.undoneAtB || s.Consumed[statistics.Assemblies] != c.lost {
			t.Errorf("%+v: %d assemblies lost; A %d holes, incomplete %v; B %d holes, state %v", c, s.Consumed[statistics.Assemblies], a.Holes, a.Incomplete, b.Holes, b.State)
		}
	}
}

// The ship that knows no deadline goes her own way from where no string is left for the other, and gives nothing up for it twice:
// as many holes as where she sails alone.
func TestTheShipWithoutADeadlineGoesOnWhereNoStringIsLeft(t *testing.T) {
	first, second := threeXCBCores, threeXCBCores
	p := simtest.OneSite(plan.Item{Name: "A", Rank: 1, Hole: &first}, plan.Item{Name: "B", Rank: 1, Hole: &second})
	p.Ship.Rates[rig.StuckChance], p.Ship.Rates[rig.LostBHA] = simtest.Just(1e6), simtest.Just(1)
	v := simtest.Compiled(t, p)
	v.OnBoard = voyage.OnBoard{Strings: 2, Pipe: 9000}
	s := newExpedition(v)
	s.Crew, s.unconstrained = EstimateByCrew(v), newExpedition(v)
	free := s.sailsTwice(1, 0)
	if !s.Forked || free.Items[0].Holes != 4 || free.Items[1].Holes != 4 || free.Items[0].Attempts != 4 {
		t.Errorf("forked %v: %d and %d holes, A lost %d times; alone she begins four each", s.Forked, free.Items[0].Holes, free.Items[1].Holes, free.Items[0].Attempts)
	}
}

// A string that is lost 300 m deep leaves its assembly of 100 m and half of the 200 m of pipe above it: with 1,800 m of pipe on board,
// a hole in 1,500 m of water to 299 m can be drilled with what is left and 100 m of assembly, one of 301 m can't.
func TestALostStringDrawsDownThePipe(t *testing.T) {
	s := inOpenHole(t, 300, 1)
	s.Constrained, s.Voyage.OnBoard = true, voyage.OnBoard{Strings: 3, Pipe: 1800, Assembly: 100}
	s.WritesOff()
	if s.Gone.Pipe != 100 || s.Consumed[statistics.PipeJoints] != 10 {
		t.Errorf("%g m of pipe lost, %d joints; by hand 100 m in ten joints", s.Gone.Pipe, s.Consumed[statistics.PipeJoints])
	}
	for to, want := range map[float64]bool{299: true, 301: false} {
		hole := *s.Item
		item := *hole.Item
		item.Hole = &plan.Hole{Stages: []plan.Stage{{To: unit.Depth(to)}}}
		hole.Item = &item
		if got := s.Equipped(s.Here, &hole); got != want {
			t.Errorf("to %g m: equipped %v", to, got)
		}
	}
}
