package sim

import (
	"math"
	"testing"

	"coredays/model/rig"
	"coredays/model/sea"
	"coredays/model/voyage"
)

// A passage is reckoned in waves that are exceeded three times in ten, at the speed that one ship in ten is
// slower than. A tenth of the speed is lost for each metre, so that the speed tells the waves.
func TestThePassageIsReckonedInWavesExceededThreeTimesInTen(t *testing.T) {
	p := oneSite(pistonHole("A", 100))
	p.Ship.Rates[rig.SlowdownPerMetre] = just(0.1)
	p.Ship.Rates[rig.SailingSpeed] = wide(5, 1.1)
	v := compiled(t, p)
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
	if got := reckon(v).leg[from][to] * speedTo(v, from, to); !near(got, v.Legs[from][to].Distance) {
		t.Errorf("%.0f m reckoned of %.0f", got, v.Legs[from][to].Distance)
	}
}
