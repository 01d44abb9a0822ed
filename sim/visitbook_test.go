package sim

import (
	"context"
	"testing"

	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/unit"
)

// Where all is certain and calm, what the book adds up of visits and ways is what the ship takes, also with
// pipe hanging between sites, deeper or shallower, with the assembly of the site before or another, and
// with a tenth of other work.
func TestTheVisitBookReckonsWhatTheShipSails(t *testing.T) {
	both := []plan.Item{pistonHole("A", 20), rotaryHole("B", 60)}
	tests := []struct {
		name          string
		first, second unit.Length
		before, after []plan.Item
	}{
		{"deeper", 1500, 3000, both[:1], both[:1]},
		{"shallower", 3000, 1500, both[:1], both[:1]},
		{"another assembly", 3000, 1500, both, both},
		{"no hole there", 1500, 3000, both, []plan.Item{{Name: "task", Rank: 1, Task: &plan.Task{Takes: just(20 * hours)}}}},
		{"no hole before", 1500, 3000, []plan.Item{{Name: "task", Rank: 1, Task: &plan.Task{Takes: just(20 * hours)}}}, both},
	}
	for _, test := range tests {
		p := expedition(site("A", geo.Position{Longitude: 1}, test.first, test.before...), site("B", geo.Position{Longitude: 1.2}, test.second, test.after...))
		p.Sites[1].Hanging = true
		p.Ship.Rates[rig.OtherWork] = just(0.1)
		v := compiled(t, p)
		book := newVisitBook(context.Background(), v, 1, 2, 1)
		reckoned, _ := book.reckonOrders(context.Background(), orderRulesOf(v), widestBeam, 1)
		for _, r := range reckoned {
			s := newSailor(t.Context(), v.InOrder(r.order))
			s.sail(1, 0)
			if diff := r.days - s.whole[colDays]; diff > 1 || diff < -1 {
				t.Errorf("%s, order %v: reckoned %.2f h, sailed %.2f h", test.name, r.order, r.days/hours, s.whole[colDays]/hours)
			}
		}
	}
}
