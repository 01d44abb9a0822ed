package heave

import (
	"math"
	"testing"

	"coredays/model/unit"
)

func responseOf(t *testing.T, factor, heading float64) *Response {
	t.Helper()
	r, err := NewResponse(box(), factor, heading)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func TestResponseIsTheHullsHeave(t *testing.T) {
	r := responseOf(t, PeriodFactor, Heading)
	for _, hs := range []unit.Length{1, 2.25, 4, 6.25, 9} {
		want := box().Heave(hs, unit.Duration(PeriodFactor*math.Sqrt(float64(hs))), Heading)
		near(t, "heave, m", float64(r.Heave(hs)), float64(want), 0.002)
	}
}

func TestHeightForUndoesHeave(t *testing.T) {
	r := responseOf(t, PeriodFactor, Heading)
	for _, hs := range []unit.Length{0.8, 2, 3.37, 5, 12, 19.99, 20, 25} {
		near(t, "height, m", float64(r.HeightFor(r.Heave(hs))), float64(hs), 1e-9)
	}
	near(t, "height for no heave, m", float64(r.HeightFor(0)), 0, 0)
	near(t, "heave of no sea, m", float64(r.Heave(-1)), 0, 0)
}

// Also shows that the raw heave of these hulls rises by itself, so the guard against falling
// changes nothing.
func TestHigherSeaHeavesMoreAtEveryHeading(t *testing.T) {
	for _, heading := range []float64{0, Heading, math.Pi / 4, math.Pi / 2} {
		last := 0.0
		for hs := 0.5; hs <= 20; hs += 0.5 {
			heave := float64(box().Heave(unit.Length(hs), unit.Duration(PeriodFactor*math.Sqrt(hs)), heading))
			if heave <= last {
				t.Errorf("heading %.2f, height %g m: heave %.3f m after %.3f m", heading, hs, heave, last)
			}
			last = heave
		}
	}
}

func TestSwellHeavesMoreThanWindSea(t *testing.T) {
	wind, middle, swell := responseOf(t, 5, Heading), responseOf(t, PeriodFactor, Heading), responseOf(t, 7, Heading)
	for _, hs := range []unit.Length{2, 3, 4, 6} {
		if !(wind.Heave(hs) < middle.Heave(hs) && middle.Heave(hs) < swell.Heave(hs)) {
			t.Errorf("%g m: %.2f, %.2f, %.2f m", float64(hs), float64(wind.Heave(hs)), float64(middle.Heave(hs)), float64(swell.Heave(hs)))
		}
	}
}

// sqrt(ln N / 2) with 60 cycles of 10 s in ten minutes is 1.43.
func TestLargestHeaveInTenMinutesOfANarrowSea(t *testing.T) {
	near(t, "factor", LargestInTenMinutes, math.Sqrt(math.Log(600.0/10)/2), 0.05)
	near(t, "largest, m", float64(LargestHeave(2)), 2.8, 1e-12)
	near(t, "there and back, m", float64(SignificantHeave(LargestHeave(3))), 3, 1e-12)
}
