package choice

import (
	"context"
	"testing"

	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/sim"
	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// Where all is certain and calm, what the book adds up of visits and ways is what the ship takes, also with
// pipe hanging between sites, deeper or shallower, with the assembly of the site before or another, and
// with a tenth of other work.
func TestTheVisitBookReckonsWhatTheShipSails(t *testing.T) {
	both := []plan.Item{simtest.PistonHole("A", 20), simtest.RotaryHole("B", 60)}
	tests := []struct {
		name          string
		first, second unit.Length
		before, after []plan.Item
	}{
		{"deeper", 1500, 3000, both[:1], both[:1]},
		{"shallower", 3000, 1500, both[:1], both[:1]},
		{"another assembly", 3000, 1500, both, both},
		{"no hole there", 1500, 3000, both, []plan.Item{{Name: "task", Rank: 1, Task: &plan.Task{Steps: []plan.Step{{Takes: simtest.Just(20 * simtest.Hours)}}}}}},
		{"no hole before", 1500, 3000, []plan.Item{{Name: "task", Rank: 1, Task: &plan.Task{Steps: []plan.Step{{Takes: simtest.Just(20 * simtest.Hours)}}}}}, both},
	}
	for _, test := range tests {
		p := simtest.Expedition(simtest.Site("A", geo.Position{Longitude: 1}, test.first, test.before...), simtest.Site("B", geo.Position{Longitude: 1.2}, test.second, test.after...))
		p.Sites[1].Hanging = true
		p.Ship.Rates[rig.OtherWork] = simtest.Just(0.1)
		v := simtest.Compiled(t, p)
		book := filledBook(v, 2, 1)
		estimated, _ := book.estimateOrders(context.Background(), orderRulesOf(v), widestBeam, 1)
		for _, r := range estimated {
			s := sim.NewSailor(t.Context(), v.InOrder(r.order))
			s.Sail(1, 0)
			if diff := r.days - s.Whole[statistics.ColDays]; diff > 1 || diff < -1 {
				t.Errorf("%s, order %v: estimated %.2f h, sailed %.2f h", test.name, r.order, r.days/simtest.Hours, s.Whole[statistics.ColDays]/simtest.Hours)
			}
		}
	}
}
