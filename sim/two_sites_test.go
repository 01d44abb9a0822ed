package sim

import (
	"testing"

	"coredays/model/geo"
	"coredays/model/unit"
	"coredays/sim/ship"
	"coredays/sim/simtest"
)

func TestDaysOfTwoSitesAreTheSumDoneByHand(t *testing.T) {
	s := sailed(t, simtest.TwoSites(), false)
	north, south := geo.Position{Longitude: 1}, geo.Position{Latitude: -1, Longitude: 1}
	sail := func(a, b geo.Position) float64 { return float64(geo.Distance(a, b)) / 5 }
	way := func(floor, depth float64) float64 { return (floor + depth) / 250 * simtest.Minutes }
	pipe := func(m float64) float64 { return m / 30 / 20 * simtest.Hours }
	inHole := func(m float64) float64 { return m / 30 / 10 * simtest.Hours }
	const shoot, handle, joint, topDrive = (4 + 3) * simtest.Minutes, 10 * simtest.Minutes, 6 * simtest.Minutes, 30 * simtest.Minutes
	piston := func(depth float64) float64 { return 2*way(1500, depth) + shoot + handle }
	rotated := func(floor, depth, length float64) float64 {
		return 3*way(floor, depth) + length/30*simtest.Hours + handle
	}

	out := 2*simtest.Hours + sail(geo.Position{}, north)
	arrive := 30*simtest.Minutes + 3*simtest.Hours + pipe(1470)
	holeA := topDrive + piston(0) + piston(5) + 2*6*simtest.Minutes + 10*simtest.Minutes + // 0-5, 5-14.5 m, oriented twice, one temperature stop
		rotated(1500, 14.5, 9.5) + rotated(1500, 24, 9) + // extended barrel to 24 and 33 m
		3*joint + // at 10, 20, 30 m
		inHole(33) + topDrive + pipe(30)
	holeB := 60*simtest.Minutes + topDrive + piston(0) + piston(3) + // 2 m higher: 0-3 m, then to 12 m
		joint + inHole(12) + topDrive + pipe(30)
	task := 20 * simtest.Hours
	leave := pipe(1470) + 1*simtest.Hours + 30*simtest.Minutes
	between := sail(north, south)
	arriveDeep := 30*simtest.Minutes + 3*simtest.Hours + pipe(2970) + topDrive
	ahead := 200.0/40*simtest.Hours + 20*joint + (3000.0+200)/250*simtest.Minutes + 20*simtest.Minutes                     // drilled, joints, centre bit
	rotary := rotated(3000, 200, 9.5) + rotated(3000, 209.5, 9.5) + rotated(3000, 219, 9.5) + 2*joint + 15*simtest.Minutes // sweep after the third
	logging := inHole(148.5) + inHole(148.5) + 2*simtest.Hours + 30*simtest.Minutes +                                      // wiper trip from 228.5 to 80 m, conditioning, bit release
		inHole(148.5) + 2*simtest.Hours + // up to 80 m, rig up
		(2*3080+148.5)/1 + 148.5/300*simtest.Hours + // down the pipe and the hole, up logging, up the pipe
		1*simtest.Hours
	leaveDeep := 1*simtest.Hours + inHole(80) + topDrive + pipe(30) + pipe(2970) + 1*simtest.Hours + 30*simtest.Minutes
	home := sail(south, geo.Position{}) + 2*simtest.Hours

	want := out + arrive + holeA + holeB + task + leave + between + arriveDeep + ahead + rotary + logging + leaveDeep + home
	if !simtest.Near(s.Clock, want) {
		t.Errorf("took %.3f h, by hand %.3f h, difference %.2f min", s.Clock/simtest.Hours, want/simtest.Hours, (s.Clock-want)/simtest.Minutes)
	}
	if got := s.Items[0].Took; !simtest.Near(got, arrive+holeA) {
		t.Errorf("hole A with the arrival took %.3f h, by hand %.3f h", got/simtest.Hours, (arrive+holeA)/simtest.Hours)
	}
	if got := s.Items[3].Took; !simtest.Near(got, arriveDeep+ahead+rotary+logging+leaveDeep) {
		t.Errorf("the rotary hole with arriving and leaving took %.3f h", got/simtest.Hours)
	}
	if got, want := s.Sites[0].Left-s.Sites[0].Arrived, arrive+holeA+holeB+task+leave; !simtest.Near(got, want) {
		t.Errorf("the first site took %.3f h, by hand %.3f h", got/simtest.Hours, want/simtest.Hours)
	}
	if got := s.Covered(0); !simtest.Near(got, 1) {
		t.Errorf("%.3f of the first section is covered, want all", got)
	}
	if got, want := s.Covered(1), 28.5/228.5; got < want-0.01 || got > want+0.01 {
		t.Errorf("%.3f of the second section is covered, want %.3f", got, want)
	}
}

// The same with the ship bound by her rules: she has time, so nothing changes.
func TestABoundShipWithTimeDoesTheSame(t *testing.T) {
	free, bound := sailed(t, simtest.TwoSites(), false), sailed(t, simtest.TwoSites(), true)
	if free.Clock != bound.Clock || bound.Forked {
		t.Errorf("free %.3f h, bound %.3f h, forked %v", free.Clock/simtest.Hours, bound.Clock/simtest.Hours, bound.Forked)
	}
}

func TestAPistonCorerIsRefusedWhereTheForcesSay(t *testing.T) {
	p := simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 1500, simtest.PistonHole("A", 300)))
	p.Sites[0].Layers[0].Lithology.Strength = simtest.Just(1000) // 1 kPa for each metre
	s := sailed(t, p, false)
	// By hand: the stroke is whole while 0.5 tau pi d 9.5 + 9 tau pi d2/4 <= 150 kN, d = 0.09525 m, so
	// up to tau = 150000/(1.4213+0.0641) = 100.98 kPa at the middle of the stroke, 101 m: with
	// strokes from 5 m by 9.5 m, the core from 100 m is whole at 95 % (mid 104.75 m gives 9.11 m,
	// 96 %) and those from 109.1 and 117.4 m are partial.
	if got := s.Items[0].Refused; got < 120 || got > 130 {
		t.Errorf("refused at %.1f m, by hand between 120 and 130 m", got)
	}
	if s.Hole.Partials != 2 && s.Items[0].Depth != s.Items[0].Refused {
		t.Errorf("went on to %.1f m", s.Items[0].Depth)
	}
}

func TestHeadroomEndsTheExpeditionInTime(t *testing.T) {
	p := simtest.TwoSites()
	p.SeaDays = 3 * unit.Day
	s := sailed(t, p, true)
	if s.Clock > 3*86400 || !s.Home {
		t.Errorf("reached port after %.2f d of 3, home %v", s.Clock/86400, s.Home)
	}
	if s.Items[3].State != ship.Ahead && s.Sites[1].State != ship.Dropped {
		t.Error("the second site was not dropped")
	}
}
