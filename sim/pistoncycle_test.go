package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/geo"
	"coredays/sim/simtest"
)

// All that a corer does counts to its own cause, from the barrel bench to the barrel on deck.
func TestPistonCoringCountsNothingToOtherCorers(t *testing.T) {
	s := sailed(t, simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 1500, simtest.PistonHole("A", 100))), false)
	cycle := 0.0
	for k, spent := range s.Spent {
		switch of := activity.Kind(k).Of(); of.Cause {
		case activity.OfRotating:
			if spent > 0 {
				t.Errorf("%s takes %.0f s", of.Name, spent)
			}
		case activity.OfPiston:
			cycle += spent
		}
	}
	// By hand: eleven cores, 5 m and then 9.5 m each, down and up at 250 m a minute, and 4, 3 and 10 min.
	want := 0.0
	for i := range 11 {
		from := 0.0
		if i > 0 {
			from = 5 + 9.5*float64(i-1)
		}
		want += 2*(1500+from)/250*simtest.Minutes + 17*simtest.Minutes
	}
	if !simtest.Near(cycle, want) {
		t.Errorf("piston coring takes %.1f min, by hand %.1f", cycle/simtest.Minutes, want/simtest.Minutes)
	}
}
