package sim

import (
	option "flag"
	"fmt"
	"slices"
	"testing"

	"coredays/model/voyage"
	"coredays/sim/ship"
	"coredays/sim/simtest"
)

var long = option.Bool("long", false, "sail 3,000 random plans rather than 80")

// randomPlans calls a test with the voyages of random plans.
func randomPlans(t *testing.T, test func(*testing.T, *voyage.Voyage)) {
	plans := 80
	if *long {
		plans = 3000
	}
	for n := range plans {
		t.Run(fmt.Sprint("plan ", n), func(t *testing.T) {
			v, err := voyage.Compile(diceOf(n).plan())
			if err != nil {
				t.Fatal(err)
			}
			test(t, v)
		})
	}
}

// Each replication is sailed by a worker's two ships, which have sailed before, and once more, watched,
// by a new ship with and one without a deadline. Both pairs end alike: a replication depends on
// nothing but its number, and a fork is as good as a voyage from the start.
func TestWhateverThePlanTheBooksBalance(t *testing.T) {
	randomPlans(t, func(t *testing.T, v *voyage.Voyage) {
		const seed, replications = 5, 3
		worker, crew := NewSailor(t.Context(), v), EstimateByCrew(v)
		for n := range replications {
			worker.Sail(seed, n)
			for _, bound := range []bool{true, false} {
				written := worker.Whole
				if bound {
					written = worker.Within
				}
				w := watch{t: t, expedition: newExpedition(v), slow: map[voyage.Place]bool{}, name: fmt.Sprintf("replication %d, bound %v", n, bound)}
				w.Crew = crew
				w.begins(seed, n)
				w.Constrained = bound
				w.sails()
				w.balances()
				w.agrees(written, worker.Layout)
			}
		}
	})
}

// Without chance and waves the crew's estimates are right but for their contingency, so a ship that
// gets anywhere is back in time.
func TestAnExpeditionWithoutSurprisesIsNeverLate(t *testing.T) {
	randomPlans(t, func(t *testing.T, v *voyage.Voyage) {
		s := newExpedition(v)
		s.Crew = EstimateByCrew(v)
		s.beginsEvenly()
		s.Constrained = true
		s.sails()
		if late := s.Clock - s.Voyage.Deadline; late > 0 && reachedAny(s) {
			t.Errorf("%.2f h late", late/simtest.Hours)
		}
	})
}

// reachedAny reports whether a ship got to any site.
func reachedAny(s *expedition) bool {
	return slices.ContainsFunc(s.Sites, func(log ship.SiteRecord) bool { return log.State == ship.Done })
}
