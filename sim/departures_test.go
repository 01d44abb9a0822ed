package sim

import (
	"testing"
	"time"

	"coredays/model/chance"
	"coredays/model/voyage"
	"coredays/sim/ship"
	"coredays/sim/simtest"
)

func TestShipsThatSailAtOtherDatesMeetTheSameSeaOnTheSameDate(t *testing.T) {
	early := simtest.Uncertain()
	late := simtest.Uncertain()
	late.Sails = early.Sails.Add(17*24*time.Hour + 5*time.Hour)
	both := []*voyage.Voyage{simtest.Compiled(t, early).ByTheSeaFrom(early.Sails), simtest.Compiled(t, late).ByTheSeaFrom(early.Sails)}
	var seas [2]*expedition
	for i, a := range both {
		seas[i] = newExpedition(a)
		seas[i].begins(3, 7)
	}
	const apart = 17*24 + 5
	differ := 0
	for step := range 24 * 40 {
		a, b := seas[0].Sea.Now(step+apart), seas[1].Sea.Now(step)
		if a != b {
			t.Fatalf("step %d: %g m and %g m", step, a, b)
		}
		if seas[1].Sea.Now(step+1) != b {
			differ++
		}
	}
	if differ < 24*39 {
		t.Errorf("the sea changed only %d times: this shows little", differ)
	}
}

func TestASeaFromTheDayOfSailingIsThatOfASimulation(t *testing.T) {
	v := simtest.Compiled(t, simtest.Uncertain())
	var plain, from ship.Weather
	plain.Series, from.Series = newExpedition(v).Sea.Series, newExpedition(v).Sea.Series
	plain.Begin(v, chance.Replication(1, 2))
	from.Begin(v.ByTheSeaFrom(v.Plan.Sails), chance.Replication(1, 2))
	for step := range 100 {
		if a, b := plain.Score(step), from.Score(step); a != b {
			t.Fatalf("step %d: %g and %g", step, a, b)
		}
	}
}
