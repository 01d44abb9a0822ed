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

// Around 45N 100W all is land; the Cascades and the coast are between 44N 119.5W and the sea 220 nmi west of it.
// San Francisco's bay lies within a cell of the coast.
func TestOnlyLandFarFromPortsIsAPassageOverLand(t *testing.T) {
	for name, c := range map[string]struct {
		from, site, to geo.Position
		crossings      int
	}{
		"a site in a cell of the coast":        {at(30, -130), at(38, -122.6), at(30, -130), 0},
		"across North America":                 {at(40, -130), at(40, -65), at(40, -65), 1},
		"there and back across North America":  {at(40, -130), at(40, -65), at(41, -130), 2},
		"over the open ocean":                  {at(30, -130), at(38, -140), at(30, -130), 0},
		"a port 220 nmi inland":                {at(44, -119.5), at(44, -130), at(30, -135), 1},
		"a port of return 220 nmi inland":      {at(30, -135), at(44, -130), at(44, -119.5), 1},
		"a port up a river, 60 nmi":            {at(53.5, 10), at(55, 5), at(53.5, 10), 0},
		"a port up a river, 90 nmi":            {at(30, -90), at(27, -88), at(30, -90), 0},
		"straight from Africa's west to east":  {at(-33.9, 18.3), at(-30, 36), at(-33.9, 18.3), 2},
		"across the date line":                 {at(-18, 178.5), at(-20, -175), at(-30, 179), 0},
		"over an island of two cells, Iceland": {at(60, -19), at(69, -19), at(69, -19), 1},
	} {
		p := transect(place("S", c.site))
		p.Order = []int{0}
		p.From.Position, p.To.Position = c.from, c.to
		if got := OverLand(p); len(got) != c.crossings {
			t.Errorf("%s: %d crossings, want %d: %+v", name, len(got), c.crossings, got)
		}
	}
}

// From 110W to 90W at 45N all is land, of which that within 100 nmi of the port and 30 nmi of the site is no
// news: the length stated is that of the rest, to a look of 10 nmi at either end.
func TestTheLengthOverLandIsThatOfTheTrack(t *testing.T) {
	p := transect(place("S", at(45, -90)))
	p.Order = []int{0}
	p.From.Position, p.To.Position = at(45, -110), at(45, -110)
	all := OverLand(p)
	if len(all) != 2 {
		t.Fatalf("%+v", all)
	}
	whole := float64(geo.Distance(p.From.Position, p.Sites[0].Position)) // 847 nmi along the great circle
	near(t, "length over land, m", float64(all[0].Length), whole-float64(130*unit.NauticalMile), float64(20*unit.NauticalMile))
}

// Round the Cape of Good Hope by a waypoint south of it: along the great circle land is crossed, by the waypoint none.
func TestAWaypointTakesThePassageRoundTheCape(t *testing.T) {
	p := transect(place("S", at(-30, 36)))
	p.Order = []int{0}
	p.From.Position, p.To.Position = at(-30, 12), at(-40, 50)
	if all := OverLand(p); len(all) != 1 || all[0].Length < 500*unit.NauticalMile {
		t.Errorf("straight: %+v", all)
	}
	p.Sites[0].Via = []geo.Position{at(-36.5, 19), at(-37, 24)}
	if all := OverLand(p); len(all) != 0 {
		t.Errorf("round the Cape: %+v", all)
	}
}

// Fiji to Tonga is 400 nmi across the date line, not 20,000 the other way round, over all of Africa.
func TestATransectAcrossTheDateLineStaysInThePacific(t *testing.T) {
	p := transect(place("A", at(-17, 179.6)), place("B", at(-17.5, -179.7)), place("C", at(-18, 179.8)))
	p.Order = []int{0, 1, 2}
	p.From.Position, p.To.Position = at(-19, 178.6), at(-21.5, -175.5)
	if all := OverLand(p); len(all) != 0 {
		t.Errorf("%+v", all)
	}
	v := compiled(t, p)
	near(t, "A to B, m", v.Leg(SitePlace(0), SitePlace(1)).Distance, 92_000, 3_000) // 0.7° of longitude at 17.25 S, 74 km, and 0.5° of latitude, 55.6 km: 92.9 km
}
