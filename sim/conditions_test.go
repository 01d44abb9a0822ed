package sim

import (
	"slices"
	"testing"

	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/sim/ship"
	"coredays/sim/simtest"
)

// conditional is a site whose hole A to 200 m is followed by B, wanted when the piston corer was
// refused above 120 m, and C, wanted when it got deeper.
func conditional() *plan.Plan {
	b, c := simtest.PistonHole("B", 30), simtest.PistonHole("C", 30)
	b.When = &plan.Condition{Hole: 0, Above: true, Depth: 120}
	c.When = &plan.Condition{Hole: 0, Above: false, Depth: 120}
	p := simtest.OneSite(simtest.PistonHole("A", 200), b, c)
	p.Sites[0].Items[0].Hole.IfLost = plan.GiveUp
	return p
}

// workedOn are the names of the items that were begun.
func workedOn(s *expedition) (names []string) {
	for i := range s.Voyage.Sites[0].Items {
		if item := &s.Voyage.Sites[0].Items[i]; s.Items[item.Number].Began > 0 {
			names = append(names, item.Name)
		}
	}
	return names
}

// At 1 kPa a metre the corer is refused between 120 and 130 m (see the refusal worked by hand), at 2
// kPa a metre at about half of that; a softer sea floor lets it reach its target.
func TestAHoleFollowsFromWhereThePistonWasRefused(t *testing.T) {
	for strength, want := range map[float64][]string{2000: {"A", "B"}, 1000: {"A", "C"}, 100: {"A", "C"}} {
		p := conditional()
		p.Sites[0].Layers[0].Lithology.Strength = simtest.Just(strength)
		if got := workedOn(sailed(t, p, false)); !slices.Equal(got, want) {
			t.Errorf("%g Pa/m: began %q, want %q", strength, got, want)
		}
	}
}

// Of a hole lost at some 50 m nobody knows where the corer would have been refused.
func TestNothingFollowsFromAHoleThatWasLostTooEarly(t *testing.T) {
	s := inPort(t, conditional())
	goOnUntil(t, s, func() bool { return s.Hole.Depth > 50 })
	s.Hole.Lost = true
	goHome(t, s)
	if got := workedOn(s); !slices.Equal(got, []string{"A"}) {
		t.Errorf("began %q", got)
	}
}

func TestWhatDependsOnADroppedHoleIsDroppedToo(t *testing.T) {
	s := sailedTo(t, conditional())
	s.Item, s.Items[0].State = nil, ship.Dropped
	goHome(t, s)
	for i := range s.Items {
		if s.Items[i].State != ship.Dropped {
			t.Errorf("item %d is in state %d", i, s.Items[i].State)
		}
	}
}

// At 2 kPa a metre B is called for and C is not, in every expedition. With days for all of it nothing is
// missing; with a day only A and B were never begun, and nobody knows of C.
func TestDoneNotCalledForAndDroppedAreThreeNumbers(t *testing.T) {
	type chances struct{ done, notCalled, dropped float64 }
	tests := []struct {
		days     unit.Duration
		holes    []chances
		complete float64
	}{
		{40 * unit.Day, []chances{{1, 0, 0}, {1, 0, 0}, {0, 1, 0}}, 1},
		{1 * unit.Day, []chances{{0, 0, 1}, {0, 0, 1}, {0, 0, 1}}, 0},
	}
	for _, test := range tests {
		p := conditional()
		p.Sites[0].Layers[0].Lithology.Strength = simtest.Just(2000)
		p.SeaDays = test.days
		r := replicated(t, p, 4, 1)
		s := r.Summary()
		for i, want := range test.holes {
			h := &s.Sites[0].Holes[i]
			if got := (chances{h.ChanceDone, h.ChanceNotCalled, h.ChanceDropped}); got != want {
				t.Errorf("%g days, hole %s: %v, by hand %v", test.days.Days(), h.Name, got, want)
			}
			if h.Conditional != (i > 0) {
				t.Errorf("hole %s is conditional: %v", h.Name, h.Conditional)
			}
		}
		if got := s.Sites[0].ChanceComplete; got != test.complete || s.Allotted.ChanceAll != test.complete || s.Allotted.ChancePrimary != test.complete {
			t.Errorf("%g days: complete %g, all %g, rank 1 %g; by hand %g", test.days.Days(), got, s.Allotted.ChanceAll, s.Allotted.ChancePrimary, test.complete)
		}
		columns := map[string]float64{}
		for _, c := range r.Columns().Columns {
			columns[c.Key] = c.Values[0]
		}
		if _, there := columns["within.S.A.not_called_for"]; there {
			t.Error("a hole that is wanted in any case has a column for not being called for")
		}
		if got := columns["within.S.C.not_called_for"]; got != test.holes[2].notCalled {
			t.Errorf("%g days: the column of C has %g, by hand %g", test.days.Days(), got, test.holes[2].notCalled)
		}
	}
}
