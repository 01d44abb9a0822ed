package refit

import (
	"fmt"
	"math"
	"testing"

	"coredays/model/rig"
	"coredays/model/score"
	"coredays/scenario/records"
)

// fingerprint is all that the knobs can move, as numbers of nine digits.
func fingerprint(u records.Unrecorded) (text string) {
	numbers := []float64{u.Ship.Rates[rig.OtherWork].Shape.Quantile(0.9), u.Ship.Rates[rig.OtherWork].Median(), u.Ship.Rates[rig.FirstSiteWork].Median(), u.WithWater, u.WithDepth, u.Ship.Rates[rig.PistonAlone].Median(), u.InWater.Rate}
	for _, r := range append([]rig.Rate{rig.TrippingInHole}, assemblies...) {
		numbers = append(numbers, u.Ship.Rates[r].Median(), u.Ship.Rates[r].Shape.Quantile(0.9))
	}
	for _, w := range u.Work {
		numbers = append(numbers, w.Chance, w.Median, w.Factor)
	}
	for _, g := range u.Ground {
		numbers = append(numbers, g.Rate.Shape.Quantile(0.5), g.Rate.Shape.Quantile(0.9), g.Ahead.Shape.Quantile(0.5), g.Ahead.Shape.Quantile(0.9))
	}
	for _, e := range u.Eras {
		numbers = append(numbers, e.Piston, e.Rotated)
	}
	for _, x := range numbers {
		text += fmt.Sprintf("%.9g ", x)
	}
	return text
}

func TestEveryKnobMovesSomethingAndOnlyWhenTurned(t *testing.T) {
	start := fingerprint(round())
	if got := fingerprint(turned(make([]float64, len(knobs)))); got != start {
		t.Errorf("nothing turned, and yet %s is %s", start, got)
	}
	seen := map[string]string{}
	for i, k := range knobs {
		x := make([]float64, len(knobs))
		x[i] = 0.2
		moved := fingerprint(turned(x))
		if moved == start {
			t.Errorf("%s moves nothing", k.name)
		}
		if other := seen[moved]; other != "" {
			t.Errorf("%s moves the same as %s", k.name, other)
		}
		seen[moved] = k.name
	}
	if fingerprint(round()) != start {
		t.Error("turning knobs has changed what is built in")
	}
}

func TestTheRoundFiguresKnowNothingOfTheFit(t *testing.T) {
	u := round()
	if got := u.Ship.Rates[rig.OtherWork].Shape.Quantile(0.9); math.Abs(got-0.48) > 1e-9 {
		t.Errorf("the 9-in-10 value of other work is %g, want that of the round figures, 0.08 x 6", got)
	}
	if got := u.Work[records.RotaryHole]; got != (records.Sometimes{Chance: 0.4, Median: 20 * 3600, Factor: 3.5}) {
		t.Errorf("work on rotary holes %+v", got)
	}
}

func TestLegsAreNeverTornByAFold(t *testing.T) {
	j := judged{Legs: []string{"a", "b", "a", "c", "d", "e", "f", "b"}}
	of := j.fold()
	if len(of) != 6 || of["a"] != 0 || of["b"] != 1 || of["f"] != 0 {
		t.Errorf("folds %v", of)
	}
}

// Forecasts 0, 1, … 9 of facts in their midst: in no tail, so that two tenths and two quarters are missing, for each
// class alike; of facts below all: in the low ones.
func TestTailsThatHoldTooLittleOrTooMuchCost(t *testing.T) {
	f := score.Forecast{0, 1, 2, 3, 4, 5, 6, 7, 8, 9}
	cases := []score.Case{{Actual: 4.5, Forecast: f}, {Actual: 4.5, Forecast: f}, {Actual: -1, Forecast: f}}
	class := func(i int) string { return []string{"a", "a", "b"}[i] }
	midst := 2*0.08*0.08 + 2*0.245*0.245
	below := 0.92*0.92 + 0.755*0.755 + 0.245*0.245 + 0.08*0.08
	want := (2*(f.CRPS(4.5)+calibration*midst) + f.CRPS(-1) + calibration*below) / 3
	if got := lossOf(cases, class); math.Abs(got-want) > 1e-12 {
		t.Errorf("loss %g, want %g", got, want)
	}
}

// The days on record of 98 sites, forecast by the round figures and by figures that hardly vary: the latter
// must be found too narrow.
func TestTheExtractTellsANarrowForecast(t *testing.T) {
	j, err := OpenSites("../../../testdata/published/site_days.csv")
	if err != nil || len(j.Sites) < 60 {
		t.Fatalf("%d sites, %v", len(j.Sites), err)
	}
	narrow := round()
	for r, q := range narrow.Ship.Rates {
		narrow.Ship.Rates[r].Shape = wider(q.Shape, -3)
	}
	var loss [2]float64
	for i, u := range []records.Unrecorded{round(), narrow} {
		cases, err := j.cases(u, records.Programme, trialReplications)
		if err != nil {
			t.Fatal(err)
		}
		loss[i] = lossOf(cases, func(int) string { return "all" })
	}
	if loss[1] <= loss[0] {
		t.Errorf("loss of a narrow forecast %.3f, of the round figures %.3f", loss[1], loss[0])
	}
}

// What is left as it was because a knob does not concern it would be the same if it were sailed again.
func TestAKnobConcernsTheSitesThatItMoves(t *testing.T) {
	j, err := OpenSites("../../../testdata/published/site_days.csv")
	if err != nil {
		t.Fatal(err)
	}
	j = j.only(func(i int) bool { return i%6 == 0 })
	start, err := j.try(make([]float64, len(knobs)), nil, 0)
	if err != nil {
		t.Fatal(err)
	}
	for i, k := range knobs {
		x := make([]float64, len(knobs))
		x[i] = 0.3
		partly, err := j.try(x, start, i)
		if err != nil {
			t.Fatal(err)
		}
		whole, err := j.try(x, nil, i)
		if err != nil {
			t.Fatal(err)
		}
		if partly.loss != whole.loss {
			t.Errorf("%s: loss %.6f with some sites left as they were, %.6f with all anew", k.name, partly.loss, whole.loss)
		}
	}
}
