package places_test

import (
	"testing"
	"time"

	"coredays/model/geo"
	"coredays/model/places"
	"coredays/model/unit"
)

func TestCellsGoRoundTheGlobeAndEndAtThePoles(t *testing.T) {
	g := places.ReliefGrid
	for _, same := range [][2]geo.Position{
		{at(10, 180), at(10, -180)}, {at(10, 190), at(10, -170)}, {at(10, 179.9), at(10, -180.1)},
		{at(90, 7), at(89.9, 7)}, {at(-90, 7), at(-89.9, 7)},
	} {
		if a, b := g.Of(same[0]), g.Of(same[1]); a != b {
			t.Errorf("%v is in cell %d, %v in %d", same[0], a, same[1], b)
		}
	}
	for _, g := range []places.Grid{places.ReliefGrid, places.CurrentGrid, places.CycloneGrid, places.IceGrid} {
		for cell := range g.Cells() {
			if back := g.Of(g.Centre(cell)); back != cell {
				t.Fatalf("cells of %g degrees: %d comes back as %d", g.Degrees, cell, back)
			}
		}
	}
}

// By hand: 40 years with one storm each August, each within reach for two looks of 3 h, touch 1 + 1/8 days; the
// Philippine Sea has 40 storms and 75 days in the forty Augusts at 18.75 N 128.75 E (1.0 and 0.06048 of the
// table), so 1 + (n-1)/8 = 75/40, n = 8, which is 24 h. A storm that crosses 471 km of chord (π/4 × 600 km) in
// that time makes 20 km/h, as such storms do.
func TestAStormStaysAsLongAsItsDaysTell(t *testing.T) {
	c := places.CyclonesNear(at(19, 129), time.August)
	if c.Storms != 1 || c.Days != 75.0/(40*31) {
		t.Fatalf("%+v", c)
	}
	if near := c.Near(); near != 24*unit.Hour {
		t.Errorf("it stays for %.2f h, want 24 h", near.Hours())
	}
}

func BenchmarkLookups(b *testing.B) {
	p := at(20, 130)
	b.Run("relief", func(b *testing.B) {
		for b.Loop() {
			places.ReliefAt(p)
		}
	})
	b.Run("current", func(b *testing.B) {
		for b.Loop() {
			places.CurrentAt(p, time.August)
		}
	})
	b.Run("cyclones", func(b *testing.B) {
		for b.Loop() {
			places.CyclonesNear(p, time.August)
		}
	})
	b.Run("ice", func(b *testing.B) {
		for b.Loop() {
			places.IceAt(p, time.August)
		}
	})
}
