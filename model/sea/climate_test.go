package sea

import (
	"math"
	"strings"
	"testing"
)

func annual(c Climate) (mean float64) {
	for _, m := range c.Mean {
		mean += float64(m) / 12
	}
	return mean
}

func builtIn(t *testing.T, latitude, longitude float64) Climate {
	t.Helper()
	c, err := BuiltIn(latitude, longitude)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// warns reports whether a climate's cautions hold the word.
func warns(c Climate, word string) bool {
	return strings.Contains(strings.Join(c.Cautions, "; "), word)
}

// Annual means (of the twelve monthly means) of hourly heights at NOAA NDBC buoys 41044 (2014-2020),
// 46059 (2000-2008), 46085 (2014-2020) and 44007 (1996-2017); positions from memory.
func TestBuiltInClimateAgreesWithOpenOceanBuoys(t *testing.T) {
	for _, b := range []struct{ latitude, longitude, mean float64 }{{21.6, -58.6, 1.81}, {38.0, -129.9, 2.70}, {55.9, -142.5, 2.63}} {
		near(t, "annual mean, m", annual(builtIn(t, b.latitude, b.longitude)), b.mean, 0.2)
	}
}

func TestCoastalBuoyReadsTooHighAndIsWarnedOf(t *testing.T) {
	c := builtIn(t, 43.5, -70.1) // NDBC 44007, annual mean 0.95 m
	if over := annual(c) / 0.95; over < 1.5 || over > 2.5 {
		t.Errorf("reads %.2f times the buoy, about twice is what the caution says", over)
	}
	if !warns(c, "near shore") {
		t.Errorf("no caution near shore: %q", c.Cautions)
	}
}

func TestClimateAtACellCentreIsTheCells(t *testing.T) {
	c := builtIn(t, 37.5, -132.5)
	near(t, "January, m", float64(c.Mean[0]), 3.53, 1e-12)
	near(t, "July, m", float64(c.Mean[6]), 1.79, 1e-12)
	near(t, "variation", c.Variation[0], 0.346, 1e-12)
}

func TestClimateHalfwayBetweenCellsIsTheirMean(t *testing.T) {
	near(t, "January, m", float64(builtIn(t, 37.5, -135).Mean[0]), (3.78+3.53)/2, 1e-12)
}

func TestClimateIsTheSameOnBothSidesOfTheDateLine(t *testing.T) {
	west, east := builtIn(t, -40, 179.9999), builtIn(t, -40, -179.9999)
	near(t, "January, m", float64(west.Mean[0]), float64(east.Mean[0]), 1e-4)
	near(t, "counted on", float64(builtIn(t, -40, 190).Mean[0]), float64(builtIn(t, -40, -170).Mean[0]), 1e-12)
}

func TestMonthsUnderIceAreFilledWithACaution(t *testing.T) {
	c := builtIn(t, -67.5, -177.5) // January-April and December only
	for m := range 12 {
		near(t, "month, m", float64(c.Mean[m]), 2.96, 1e-9)
	}
	for _, word := range []string{"some months", "ice is not considered", "south of the equator"} {
		if !warns(c, word) {
			t.Errorf("no caution of %q: %q", word, c.Cautions)
		}
	}
	if err := c.Check(); err != nil {
		t.Error(err)
	}
}

func TestOpenOceanNorthHasOnlyTheGeneralCaution(t *testing.T) {
	if c := builtIn(t, 20, -140); len(c.Cautions) != 1 || !warns(c, "coarse") {
		t.Errorf("%q", c.Cautions)
	}
}

func TestNoClimateFarFromWaterOrOffTheGlobe(t *testing.T) {
	for _, p := range [][2]float64{{32, 87}, {-89, 0}, {91, 0}, {math.NaN(), 0}, {0, math.NaN()}, {0, math.Inf(1)}} {
		if c, err := BuiltIn(p[0], p[1]); err == nil {
			t.Errorf("%v: %v", p, c.Mean)
		}
	}
}

func TestWaterShareTellsSeaFromLand(t *testing.T) {
	for _, p := range []struct {
		latitude, longitude, share float64
		known                      bool
	}{
		{37.5, -137.5, 0.99, true}, // open Pacific
		{38, -122, 0.32, true},     // California's coast
		{39.9, -120.1, 0.32, true}, // the corners of the same cell
		{35.1, -124.9, 0.32, true},
		{45, -100, 0, true},       // North America
		{45, 260, 0, true},        // the same place
		{-67.5, -177.5, 0, false}, // ice for most of the year
		{-70, 60, 0, false},       // ice or land
		{89, 0, 0, false},
		{math.NaN(), 0, 0, false},
	} {
		share, known := WaterShare(p.latitude, p.longitude)
		if share != p.share || known != p.known {
			t.Errorf("%g, %g: %g %t", p.latitude, p.longitude, share, known)
		}
	}
}

func TestEveryCellOfTheTableMakesAClimate(t *testing.T) {
	a, err := openAtlas()
	if err != nil {
		t.Fatal(err)
	}
	cells := 0
	for row := range a {
		for col := range a[row] {
			if a[row][col].water == 0 {
				continue
			}
			cells++
			if _, err := NewTable(builtIn(t, firstRow+5*float64(row), firstCol+5*float64(col))); err != nil {
				t.Error(err)
			}
		}
	}
	if cells != 1536 {
		t.Errorf("%d cells, the table has 1,536", cells)
	}
}

func TestDamagedTableIsRefused(t *testing.T) {
	head := "lat,lon,m01,m02,m03,m04,m05,m06,m07,m08,m09,m10,m11,m12,cv,cell,ocean\n"
	for name, line := range map[string]string{
		"off the grid":   "1,2.5,1,1,1,1,1,1,1,1,1,1,1,1,0.5,open,1",
		"not a number":   "2.5,2.5,x,1,1,1,1,1,1,1,1,1,1,1,0.5,open,1",
		"no month":       "2.5,2.5,,,,,,,,,,,,,0.5,open,1",
		"beyond the map": "82.5,2.5,1,1,1,1,1,1,1,1,1,1,1,1,0.5,open,1",
	} {
		if _, err := readAtlas(head + line + "\n"); err == nil {
			t.Error(name, "accepted")
		}
	}
}
