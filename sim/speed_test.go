package sim

import (
	"math"
	"testing"

	"coredays/model/rig"
	"coredays/model/sea"
	"coredays/model/voyage"
	"coredays/sim/simtest"
)

// A passage is estimated in waves that are exceeded three times in ten, at the speed that one ship in ten is
// slower than. A tenth of the speed is lost for each metre, so that the speed says the waves.
func TestThePassageIsReckonedInWavesExceededThreeTimesInTen(t *testing.T) {
	p := simtest.OneSite(simtest.PistonHole("A", 100))
	p.Ship.Rates[rig.SlowdownPerMetre] = simtest.Just(0.1)
	p.Ship.Rates[rig.SailingSpeed] = simtest.Wide(5, 1.1)
	v := simtest.Compiled(t, p)
	waves, err := sea.NewTable(seasonal())
	if err != nil {
		t.Fatal(err)
	}
	from, to := voyage.FromPort, voyage.SitePlace(0)
	v.Legs[from][to].Waves = waves
	const slowShip = 5 / 1.1
	height := (1 - speedTo(v, from, to)/slowShip) / 0.1
	if above := waves.Exceedance(v.Plan.Sails.YearDay(), height); math.Abs(above-0.3) > 0.01 {
		t.Errorf("waves of %.2f m are exceeded %.3f of the time, want 0.3", height, above)
	}
	if got := EstimateByCrew(v).Leg[from][to] * speedTo(v, from, to); !simtest.Near(got, v.Legs[from][to].Distance) {
		t.Errorf("%.0f m estimated of %.0f", got, v.Legs[from][to].Distance)
	}
}
