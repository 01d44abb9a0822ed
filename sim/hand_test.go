package sim

import (
	"testing"

	"coredays/model/geo"
	"coredays/sim/simtest"
)

func TestDaysOfOneHoleAreTheSumDoneByHand(t *testing.T) {
	at := geo.Position{Latitude: 0, Longitude: 1}
	s := sailed(t, simtest.Expedition(simtest.Site("S", at, 1500, simtest.PistonHole("A", 33))), false)

	leg := float64(geo.Distance(geo.Position{}, at)) / 5 // at 5 m/s
	way := func(depth float64) float64 { return (1500 + depth) / 250 * simtest.Minutes }
	core := func(depth float64) float64 { return 2*way(depth) + (4+3+10)*simtest.Minutes } // shot, pull, handling
	want := 2*simtest.Hours + leg +                                                        // pilotage, passage
		30*simtest.Minutes + 3*simtest.Hours + // positioning, BHA
		1470.0/30/20*simtest.Hours + // 49 stands to 30 m above the sea floor
		30*simtest.Minutes + // top drive
		core(0) + core(5) + core(14.5) + core(24) + // 5 m from 4.5 m above the sea floor, then 9.5, 9.5, 9
		3*6*simtest.Minutes + // joints at 10, 20, 30 m
		33.0/30/10*simtest.Hours + 30*simtest.Minutes + 30.0/30/20*simtest.Hours + // out of the hole, top drive, 30 m clear
		1470.0/30/20*simtest.Hours + 1*simtest.Hours + // out, lay down
		30*simtest.Minutes + leg + 2*simtest.Hours // secure, passage, pilotage
	if !simtest.Near(s.Clock, want) {
		t.Errorf("took %.3f h, by hand %.3f h; by kind %v", s.Clock/simtest.Hours, want/simtest.Hours, s.Spent)
	}
	if got := s.Sites[0].Cored; !simtest.Near(got, 33) {
		t.Errorf("cored %g m, want 33", got)
	}
}
