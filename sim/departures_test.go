package sim

import (
	"testing"
	"time"

	"coredays/model/chance"
	"coredays/model/voyage"
	"coredays/sim/simtest"
)

func TestShipsThatSailAtOtherDatesMeetTheSameSeaOnTheSameDate(t *testing.T) {
	early := simtest.Uncertain()
	late := simtest.Uncertain()
	late.Sails = early.Sails.Add(17*24*time.Hour + 5*time.Hour)
	both := []*voyage.Voyage{simtest.Compiled(t, early).ByTheSeaFrom(early.Sails), simtest.Compiled(t, late).ByTheSeaFrom(early.Sails)}
	var seas [2]*ship
	for i, a := range both {
		seas[i] = newShip(a)
		seas[i].begins(3, 7)
	}
	const apart = 17*24 + 5
	differ := 0
	for step := range 24 * 40 {
		a, b := seas[0].sea.now(step+apart), seas[1].sea.now(step)
		if a != b {
			t.Fatalf("step %d: %g m and %g m", step, a, b)
		}
		if seas[1].sea.now(step+1) != b {
			differ++
		}
	}
	if differ < 24*39 {
		t.Errorf("the sea changed only %d times: this shows little", differ)
	}
}

func TestASeaFromTheDayOfSailingIsThatOfASimulation(t *testing.T) {
	v := simtest.Compiled(t, simtest.Uncertain())
	var plain, from weather
	plain.series, from.series = newShip(v).sea.series, newShip(v).sea.series
	plain.begin(v, chance.Replication(1, 2))
	from.begin(v.ByTheSeaFrom(v.Plan.Sails), chance.Replication(1, 2))
	for step := range 100 {
		if a, b := plain.score(step), from.score(step); a != b {
			t.Fatalf("step %d: %g and %g", step, a, b)
		}
	}
}
