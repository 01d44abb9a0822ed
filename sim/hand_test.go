package sim

import (
	"testing"

	"coredays/model/geo"
)

func TestDaysOfOneHoleAreTheSumDoneByHand(t *testing.T) {
	at := geo.Position{Latitude: 0, Longitude: 1}
	s := sailed(t, expedition(site("S", at, 1500, pistonHole("A", 33))), false)

	leg := float64(geo.Distance(geo.Position{}, at)) / 5 // at 5 m/s
	way := func(depth float64) float64 { return (1500 + depth) / 250 * minutes }
	core := func(depth float64) float64 { return 2*way(depth) + (4+3+10)*minutes } // shot, pull, handling
	want := 2*hours + leg +                                                        // pilotage, passage
		30*minutes + 3*hours + // positioning, BHA
		1470.0/30/20*hours + // 49 stands to 30 m above the sea floor
		30*minutes + // top drive
		core(0) + core(5) + core(14.5) + core(24) + // 5 m from 4.5 m above the sea floor, then 9.5, 9.5, 9
		3*6*minutes + // joints at 10, 20, 30 m
		33.0/30/10*hours + 30*minutes + 30.0/30/20*hours + // out of the hole, top drive, 30 m clear
		1470.0/30/20*hours + 1*hours + // out, lay down
		30*minutes + leg + 2*hours // secure, passage, pilotage
	if !near(s.clock, want) {
		t.Errorf("took %.3f h, by hand %.3f h; by kind %v", s.clock/hours, want/hours, s.spent)
	}
	if got := s.sites[0].cored; !near(got, 33) {
		t.Errorf("cored %g m, want 33", got)
	}
}
