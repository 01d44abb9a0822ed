package sim

import (
	"testing"

	"coredays/model/geo"
	"coredays/model/rig"
	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// One hole in 1,500 m of water, piston cores to 33 m: of 5 m from 4.5 m above the sea floor, then 9.5, 9.5 and 9 m. Its sum is done in
// TestDaysOfOneHoleAreTheSumDoneByHand; here each part of the rig is made slower, and the days grow by what it is used for.
func TestEachPartOfTheRigCountsByAHandSum(t *testing.T) {
	const h, m = simtest.Hours, simtest.Minutes
	leg := float64(geo.Distance(geo.Position{}, geo.Position{Longitude: 1}))
	days := func(of rig.Rate, value float64) float64 {
		p := simtest.OneSite(simtest.PistonHole("A", 33))
		if value > 0 {
			p.Ship.Rates[of] = simtest.Just(value)
		}
		return sailed(t, p, false).Clock
	}
	usual := days(0, 0)
	for _, c := range []struct {
		what string
		of   rig.Rate
		to   float64
		more float64
	}{
		{"pipe handling: 49 stands in, one to clear the sea floor and 49 out, at 10 an hour in place of 20", rig.Tripping, 10 / h, 99 * h / 20},
		{"pipe handling in the hole: 33 m are 1.1 stands, at 5 an hour in place of 10", rig.TrippingInHole, 5 / h, 1.1 * h / 10},
		{"racker: 4 min a stand in place of 3, on all but the 1.1 stands in the hole, which take 6", rig.Racker, 4 * m, 99 * m},
		{"top drive: in and out, half an hour longer each", rig.TopDrive, 60 * m, 2 * 30 * m},
		{"assembly: made up an hour more slowly", rig.PistonMakeUp, 4 * h, 1 * h},
		{"assembly: laid down an hour more slowly", rig.LayDown, 2 * h, 1 * h},
		{"connections: three joints, 6 min longer each", rig.Connection, 12 * m, 3 * 6 * m},
		{"piston corer: pressured up and sheared four times, 4 min longer each", rig.Shot, 8 * m, 4 * 4 * m},
		{"piston corer: pulled four times, 5 min longer each", rig.CorePull, 8 * m, 4 * 5 * m},
		{"wireline: down and up to 1500, 1505, 1514.5 and 1524 m at 125 m/min in place of 250", rig.PistonWire, 125 / m, 2 * (1500 + 1505 + 1514.5 + 1524) / 250 * m},
		{"liner and reload on the rig floor: 5 min longer for each of four cores", rig.PistonHandling, 15 * m, 4 * 5 * m},
		{"transit: two legs at 4 m/s in place of 5", rig.SailingSpeed, 4, 2 * leg * (1/4.0 - 1/5.0)},
		{"ports: an hour more of pilotage, out and in", rig.Pilotage, 3 * h, 2 * h},
	} {
		if got := days(c.of, c.to) - usual; !simtest.Near(got, c.more) {
			t.Errorf("%s: %+.4f h, by hand %+.4f h", c.what, got/h, c.more/h)
		}
	}
}

// A stroke of 9.5 m is a set of two shear pins: 5, 9.5, 9.5 and 9 m. Where half of it is cut, 33 m are six cores of 4.75 m and one of
// 4.5 m.
func TestAShorterStrokeTakesMoreCoresAndPins(t *testing.T) {
	for stroke, cores := range map[float64]int{9.5: 4, 4.75: 7} {
		p := simtest.OneSite(simtest.PistonHole("A", 33))
		p.Ship.Rates[rig.PistonAdvance] = simtest.Just(stroke)
		s := sailed(t, p, false)
		if got := s.Sites[0].Cores; got != cores || s.Consumed[statistics.ShearPins] != 2*cores {
			t.Errorf("strokes of %g m: %d cores, %d pins; by hand %d cores", stroke, got, s.Consumed[statistics.ShearPins], cores)
		}
	}
}
