package places_test

import (
	"math"
	"testing"
	"time"

	"coredays/model/geo"
	"coredays/model/places"
	"coredays/model/unit"
)

func at(latitude, longitude float64) geo.Position {
	return geo.Position{Latitude: latitude, Longitude: longitude}
}

// Most typhoons of the western Pacific pass between July and November; the Philippine Sea has next to none in
// February (Annual Tropical Cyclone Reports of the Joint Typhoon Warning Center, from memory). The figure of
// about 6 days in a hundred is that which the table's makers checked at 19 N 129 E.
func TestTheTyphoonSeasonIsAugustToOctober(t *testing.T) {
	for _, month := range []time.Month{time.August, time.September, time.October} {
		if c := places.CyclonesNear(at(20, 130), month); c.Days < 0.05 || c.Days > 0.08 || c.Storms < 0.6 || c.Storms > 1.3 {
			t.Errorf("%v at 20 N 130 E: %.3f of the days, %.2f storms", month, c.Days, c.Storms)
		}
	}
	for _, month := range []time.Month{time.February, time.March} {
		if c := places.CyclonesNear(at(19, 129), month); c.Storms != 0 || c.Days != 0 || c.Near() != 0 {
			t.Errorf("%v at 19 N 129 E: %+v", month, c)
		}
	}
	if c := places.CyclonesNear(at(20, 130), time.February); c.Days > 0.001 { // at most one day in forty Februaries
		t.Errorf("February at 20 N 130 E: %+v", c)
	}
}

// None is on record in the South Atlantic but one of 2004, which the best tracks used leave out.
func TestTheSouthAtlanticHasNoCyclonesOnRecord(t *testing.T) {
	for latitude := -59.0; latitude < -1; latitude += 2 {
		for longitude := -40.0; longitude <= 10; longitude += 2 {
			for month := time.January; month <= time.December; month++ {
				if c := places.CyclonesNear(at(latitude, longitude), month); c.Storms != 0 {
					t.Fatalf("%g, %g in %v: %+v", latitude, longitude, month, c)
				}
			}
		}
	}
}

// Over the globe some 86 storms a year reach gale force; the table's makers counted 86.2 of them. Each comes
// near many cells, so the count of storms times the length of a stay is held against the length of their
// tracks: 86 storms of some 6 days at gale force (from memory), each within 300 km of its points.
func TestStormDaysOverTheGlobeAreThoseOfEightySixStorms(t *testing.T) {
	days := 0.0
	for cell := range places.CycloneGrid.Cells() {
		p := places.CycloneGrid.Centre(cell)
		// of a storm at one point, the share of the area around it that this cell has
		area := 2.5 * 111.2 * 2.5 * 111.2 * math.Cos(p.Latitude*math.Pi/180) / (math.Pi * 300 * 300)
		for month := time.January; month <= time.December; month++ {
			c := places.CyclonesNear(p, month)
			days += c.Storms * c.Near().Days() * area
		}
	}
	if each := days / 86.2; each < 3.5 || each > 7 {
		t.Errorf("%.0f days of gale force a year, %.1f for each of 86.2 storms", days, each)
	}
}

// The Weddell Sea is covered in September, the month of the greatest extent; the Drake Passage and the
// tropics never (any ice chart; extents as the source states).
func TestTheWeddellSeaIsClosedInSeptember(t *testing.T) {
	for _, c := range []struct {
		where geo.Position
		month time.Month
		want  places.Ice
	}{
		{at(-70, -40), time.September, places.IceAsARule}, {at(-66, -30), time.September, places.IceAsARule},
		{at(88, 0), time.March, places.IceAsARule}, {at(75, -170), time.February, places.IceAsARule},
		{at(-56, -65), time.February, places.NoIce}, {at(0, -30), time.September, places.NoIce}, {at(20, 130), time.January, places.NoIce},
	} {
		if got := places.IceAt(c.where, c.month); got != c.want {
			t.Errorf("%v in %v: %d, want %d", c.where, c.month, got, c.want)
		}
	}
	// 18.5 million km² in September (as the source has it from memory), within a twentieth.
	area := 0.0
	for cell := range places.IceGrid.Cells() {
		p := places.IceGrid.Centre(cell)
		if p.Latitude < 0 && places.IceAt(p, time.September) == places.IceAsARule {
			area += 4 * 111.195 * 111.195 * math.Cos(p.Latitude*math.Pi/180)
		}
	}
	if math.Abs(area/18.5e6-1) > 0.05 {
		t.Errorf("%.3g km² in the south in September", area)
	}
}

// Gulf Stream, Agulhas and Kuroshio run at 1 m/s and more (the figures that the table's makers checked
// against the source: 1.11, 1.01, 1.00, Florida Strait 1.20, Somali coast in July 1.29).
func TestGreatCurrentsRunAboveAMetreASecond(t *testing.T) {
	for name, box := range map[string]struct {
		south, north, west, east float64
		month                    time.Month
		want                     unit.Speed
	}{
		"Florida Strait": {24, 28, -81, -78, 0, 1.20},
		"Gulf Stream":    {34, 39, -76, -66, 0, 1.11},
		"Kuroshio":       {28, 36, 126, 145, 0, 1.00},
		"Agulhas":        {-37, -28, 22, 34, 0, 1.01},
		"Somali coast":   {4, 11, 48, 54, time.July, 1.29},
	} {
		var most unit.Speed
		for latitude := box.south + 0.5; latitude < box.north; latitude++ {
			for longitude := box.west + 0.5; longitude < box.east; longitude++ {
				for month := time.January; month <= time.December; month++ {
					c, known := places.CurrentAt(at(latitude, longitude), month)
					if known && c.Mean > c.Most {
						t.Errorf("%g, %g in %v: the mean of the cell is above its greatest", latitude, longitude, month)
					}
					if known && (box.month == 0 || month == box.month) {
						most = max(most, c.Most)
					}
				}
			}
		}
		if most < 1 || most < box.want-0.005 || most > 2 {
			t.Errorf("%s: %.2f m/s, at least %.2f is known", name, most, box.want)
		}
	}
	if c, known := places.CurrentAt(at(36.5, -71.5), time.June); !known || !(c.Towards > 20 && c.Towards < 110) {
		t.Errorf("the Gulf Stream east of Hatteras goes towards %.0f°", c.Towards)
	}
	if _, known := places.CurrentAt(at(45, 90), time.June); known {
		t.Error("central Asia has a current")
	}
}

// drilled are five sites with their depth of water (hole summaries, doi:10.5281/zenodo.10498831).
var drilled = []struct {
	name  string
	where geo.Position
	depth unit.Length
}{
	{"504B", at(1.22685, -83.7303), 3460},
	{"1256A", at(6.7364833, -91.9342833), 3634.5},
	{"690A", at(-65.1604833, 1.2049333), 2914},
	{"U1385A", at(37.57149, -10.12618), 2577.74},
	{"997A", at(31.8431333, -75.4686333), 2770.1},
}

func TestDrilledSitesLieInTheWidenedRangeOfTheirCell(t *testing.T) {
	caught := 0
	for _, s := range drilled {
		least, most := places.ReliefAt(s.where).Depths()
		if s.depth < least || s.depth > most {
			t.Errorf("%s: %.0f m, range %.0f to %.0f m", s.name, float64(s.depth), float64(least), float64(most))
		}
		if typed := s.depth / 10; typed < least {
			caught++
		}
	}
	if caught < 4 {
		t.Errorf("a depth typed ten times too small is caught at %d of 5 sites", caught)
	}
	// 3,420 m typed as 342 m.
	caught = 0
	for _, s := range drilled {
		if least, most := places.ReliefAt(s.where).Depths(); most >= 3000 && 342 < least {
			caught++
		}
	}
	if caught < 4 {
		t.Errorf("342 m is caught at %d of 5 sites", caught)
	}
}

func TestLandIsToldFromSea(t *testing.T) {
	for name, c := range map[string]struct {
		where geo.Position
		dry   bool
	}{
		"central Asia": {at(45, 90), true}, "Congo": {at(0, 23), true}, "Antarctica": {at(-85, 90), true}, "Pole": {at(-90, 0), true},
		"Pacific": {at(0, -140), false}, "North Pole": {at(90, 0), false}, "date line": {at(-30, 180), false},
	} {
		if r := places.ReliefAt(c.where); r.Dry() != c.dry {
			t.Errorf("%s: %+v", name, r)
		}
	}
}
