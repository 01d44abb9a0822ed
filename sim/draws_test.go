package sim

import (
	"slices"
	"testing"

	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/voyage"
	"coredays/sim/simtest"
)

// A hole goes on with its own random stream after another was worked on between.
func TestAHoleHasTheSameLuckWhateverIsDoneBetween(t *testing.T) {
	p := simtest.OneSite(simtest.PistonHole("A", 100), simtest.PistonHole("B", 100))
	p.Ship.Rates[rig.Connection] = simtest.Wide(360, 1.5) // each joint for itself
	p.Ship.Rates[rig.PistonDurationFactor] = spread.Quantity{Shape: simtest.Wide(1, 1.4).Shape, Shares: spread.All(spread.Run), Persistence: 0.7}
	p.Ship.Rates[rig.PistonTrouble] = simtest.Just(0.5)
	stream := func(holes ...int) (values [2][]float64) {
		s := sailedTo(t, p)
		for _, n := range holes {
			s.Place.Hole = s.Here.Items[n].Key
			var happened float64
			if s.Happens(rig.PistonTrouble) {
				happened = 1
			}
			values[n] = append(values[n], s.Draw(voyage.Quantity(rig.Connection)), s.Rate(rig.PistonDurationFactor), happened)
		}
		return values
	}
	one, other := stream(0, 0, 0, 0, 1, 1, 1, 1), stream(0, 1, 1, 0, 0, 1, 0, 1)
	for n := range one {
		if !slices.Equal(one[n], other[n]) {
			t.Errorf("hole %d: %v one after the other, %v by turns", n, one[n], other[n])
		}
	}
	if slices.Equal(one[0], one[1]) || one[0][0] == one[0][3] {
		t.Errorf("holes or runs share their random streams: %v", one)
	}
}
