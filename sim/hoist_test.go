package sim

import (
	"math"
	"testing"

	"coredays/model/activity"
	"coredays/model/rig"
	"coredays/sim/simtest"
)

// A string of 1,470 m, 30 kg/m and 87 % of it in water, with 50 t of travelling gear weighs from 50 to 88.3 t. Stands of 30 m at 20 an
// hour take 180 s. A racker that needs 4 min makes it 240 s. A hoist that lifts 320 t at 0.05 m/s lifts 69.2 t, the mean, at 0.231 m/s:
// 129.7 s beside 2 min of the racker. One of 0.04 m/s takes 117.2 to 207.0 s: more than 180 s below 1,027 m only, 184.1 s on average.
// Running in asks the brake, not the power.
func TestAStandTakesNoLessThanRackerAndHoist(t *testing.T) {
	for _, c := range []struct{ racker, hoist, brake, pull, run float64 }{
		{0, 100, 100, 180, 180}, {240, 1e6, 1e6, 240, 240}, {120, 0.05, 1e6, 249.7, 180}, {0, 0.04, 1e6, 184.06, 180}, {0, 1e6, 0.04, 180, 184.06},
	} {
		s := inOpenHole(t, 0, 1)
		s.Voyage.Quantities[rig.Racker], s.Voyage.Quantities[rig.HoistingSpeed], s.Voyage.Quantities[rig.LoweringSpeed] = simtest.Just(c.racker).Compile(), simtest.Just(c.hoist).Compile(), simtest.Just(c.brake).Compile()
		pull, run := s.StandTime(20/simtest.Hours, 1470, 0), s.StandTime(20/simtest.Hours, 0, 1470)
		if math.Abs(pull-c.pull) > 0.1 || math.Abs(run-c.run) > 0.1 {
			t.Errorf("%+v: %.2f s pulled, %.2f s run", c, pull, run)
		}
	}
}

// Basalt needs 20 klbf on the bit (common practice): with 10 klbf it is cut at half its rate, 60 m from 100 m down at 15 m/h. With 30 it
// is cut at its rate. Mud needs none of it.
func TestFewCollarsCutRockSlowly(t *testing.T) {
	const klbf = 4448.22
	for _, c := range []struct {
		rock   string
		weight float64
		want   float64
	}{{"basalt", 10 * klbf, 4}, {"basalt", 30 * klbf, 2}, {"mud", 10 * klbf, 2}, {"limestone", 10 * klbf, 3}, {"basalt", 0, 2}} {
		hole := simtest.RotaryHole("A", 160)
		hole.Hole.DrillAheadTo = 100
		p := simtest.OneSite(hole)
		p.Sites[0].Layers[0].Lithology.Name = c.rock
		s := inPort(t, p)
		s.Voyage.OnBoard.Weight = c.weight
		goHome(t, s)
		if got := s.Spent[activity.CutCore] / simtest.Hours; math.Abs(got-c.want) > 1e-3 {
			t.Errorf("%+v: cut for %.3f h", c, got)
		}
	}
}
