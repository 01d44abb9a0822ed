package main

import (
	"math"
	"strings"
	"testing"

	"coredays/model/activity"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/voyage"
)

// aSecond is what two seconds are of 22 stands/h over 4 h: diaries are kept to the second, and the way out has two
// lines, or three with a breakdown.
const aSecond = 0.005

// tripsOut are the stands an hour from the sea floor in 2,520 m to the rig floor, and how much other work the
// diaries show, of 60 expeditions with the built-in ship.
func tripsOut(t *testing.T, v *voyage.Voyage) (rates []float64, other float64) {
	t.Helper()
	for _, d := range diaries(v, 60) {
		rates = append(rates, 2520/28.5/span(d, activity.PullPipe))
		other += span(d, activity.OtherWork)
	}
	return rates, other / 60
}

// deepHole is a piston hole in 2,520 m of water.
func deepHole(t *testing.T) *voyage.Voyage {
	return oneHole(t, 2520, "nannofossil ooze", "{name: A, core: [{with: APC, to: 30 mbsf}]}")
}

// What a driller gives as one number is what every trip does: the other work of a site has a name of its own.
func TestATypedTrippingRateIsWhatEveryTripDoes(t *testing.T) {
	p := *deepHole(t).Plan
	p.Ship.Rates[rig.Tripping] = spread.Just(22.0 / 3600)
	v, err := voyage.Compile(&p)
	if err != nil {
		t.Fatal(err)
	}
	rates, other := tripsOut(t, v)
	for n, r := range rates {
		if math.Abs(r-22) > aSecond {
			t.Errorf("replication %d pulled %.7f stands/h, want 22", n, r)
		}
	}
	if other < 0.1 {
		t.Errorf("the diaries have %.2f h of other work on site on average, and the ship has some", other)
	}
}

// 25 stands/h without the BHA are the best of the ship [common practice]: no trip is faster, nor are all alike.
func TestNoTripIsFasterThanTheShipsBest(t *testing.T) {
	rates, _ := tripsOut(t, deepHole(t))
	slowest, fastest := math.Inf(1), 0.0
	for n, r := range rates {
		if r > 25+aSecond {
			t.Errorf("replication %d pulled %.2f stands/h", n, r)
		}
		slowest, fastest = min(slowest, r), max(fastest, r)
	}
	if slowest > 21 || fastest < 23 {
		t.Errorf("all trips went at %.1f to %.1f stands/h", slowest, fastest)
	}
}

func TestADiaryTellsTheOtherWork(t *testing.T) {
	d := diaries(deepHole(t), 1)[0]
	var seen []string
	for _, e := range d.Entries {
		if e.Kind == activity.OtherWork {
			seen = append(seen, e.Kind.String())
		}
	}
	if len(seen) < 3 { // with the assembly, with the trip in, with the trip out
		t.Errorf("other work is told %d times: %s", len(seen), strings.Join(seen, ", "))
	}
}
