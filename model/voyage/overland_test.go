package voyage

import (
	"testing"

	"coredays/model/geo"
	"coredays/model/unit"
)

// at is a position in whole degrees.
func at(latitude, longitude float64) geo.Position {
	return geo.Position{Latitude: latitude, Longitude: longitude}
}

// Off California at 38N a cell of 5 degrees holds a third of water; around 45N 100W there is none. Two
// degrees of a meridian of land are 120 nmi.
func TestOnlyLandFarFromPortsIsAPassageOverLand(t *testing.T) {
	for name, c := range map[string]struct {
		from, site, to geo.Position
		crossings      int
	}{
		"a site near a coast, in a cell with a third of water": {at(30, -130), at(38, -122.6), at(30, -130), 0},
		"across North America":                                 {at(40, -130), at(40, -65), at(40, -65), 1},
		"there and back across North America":                  {at(40, -130), at(40, -65), at(41, -130), 2},
		"over the open ocean":                                  {at(30, -130), at(38, -140), at(30, -130), 0},
		"a port in a land cell, 250 nmi from open water":       {at(44, -119.5), at(44, -130), at(30, -135), 0},
		"a port 500 nmi inland":                                {at(44, -113), at(44, -130), at(30, -135), 1},
		"a cell of land within 300 nmi of the port of return":  {at(30, -135), at(44, -130), at(44, -119.5), 0},
	} {
		p := transect(place("S", c.site))
		p.Order = []int{0}
		p.From.Position, p.To.Position = c.from, c.to
		if got := OverLand(p); len(got) != c.crossings {
			t.Errorf("%s: %d crossings, want %d: %+v", name, len(got), c.crossings, got)
		}
	}
}

// From 110W to 90W at 45N all is land, of which that within 300 nmi of the port is no news: the length told is
// that of the rest, to a look of 50 nmi.
func TestTheLengthOverLandIsThatOfTheTrack(t *testing.T) {
	p := transect(place("S", at(45, -90)))
	p.Order = []int{0}
	p.From.Position, p.To.Position = at(45, -110), at(45, -110)
	all := OverLand(p)
	if len(all) != 2 {
		t.Fatalf("%+v", all)
	}
	whole := float64(geo.Distance(p.From.Position, p.Sites[0].Position)) // 847 nmi along the great circle
	near(t, "length over land, m", float64(all[0].Length), whole-float64(300*unit.NauticalMile), float64(50*unit.NauticalMile))
}
