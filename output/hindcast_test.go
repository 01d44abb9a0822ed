package output_test

import (
	"encoding/json"
	"io"
	"math"
	"strings"
	"testing"

	"coredays/model/record"
	"coredays/model/score"
	jsonout "coredays/output/json"
	"coredays/output/text/scores"
)

// anyHindcast is an invented score with a figure in every place.
func anyHindcast() *score.Hindcast {
	return &score.Hindcast{
		File: "holes.csv", Level: "programme", Seed: 1, Replications: 1000,
		Card: score.Card{Cases: 120, Groups: 24, CRPS: 1.504, CRPSCI: [2]float64{1.1, 1.9}, Alone: 3, CRPSLog: 0.2218, Skill: 0.4987,
			AbsPercent: 21.4, Ratio: 1.021, RatioCI: [2]float64{0.96, 1.07}, Inside50: 0.51, Inside50CI: [2]float64{0.43, 0.59}, Inside80: 0.79,
			Inside80CI: [2]float64{0.71, 0.86}, RankHistogram: []int{12, 12, 12, 12, 12, 12, 12, 12, 12, 12}},
		WithoutLegTime: score.Card{Cases: 120, Groups: 24, CRPS: 1.731, CRPSCI: [2]float64{1.3, 2.2}, Inside50: 0.49, Inside80: 0.77, Inside80CI: [2]float64{0.69, 0.84}},
		Classes: []score.Class{{By: "deepest tool", Class: "APC", Cases: 70, Ratio: 0.98, CRPS: 0.4, Inside80: 0.8},
			{By: "deepest tool", Class: "RCB", Cases: 50, Ratio: 1.04, CRPS: 3, Inside80: 0.77}},
		Sites: []score.Site{{Program: "X", Leg: "1", Site: "S1", Actual: 2.5, Mean: 2.6, P10: 1.9, P50: 2.4, P90: 3.4, CRPS: 0.2, Water: 3200, Depth: 150, Tool: "APC", Year: 2030,
			Recovered: score.Quantiles{Actual: 140, P10: 120, P50: 145, P90: 160, CRPS: 4}, Cores: score.Quantiles{Actual: 16, P10: 15, P50: 16, P90: 18, CRPS: 0.5}}},
		Legs: []score.Leg{{Program: "X", Leg: "1", Sites: 3, Results: [score.AllResults]score.Quantiles{
			{Actual: 9, P10: 7, P50: 9.5, P90: 12, CRPS: 0.6}, {Actual: math.NaN(), P10: math.NaN(), P50: math.NaN(), P90: math.NaN(), CRPS: math.NaN()},
			{Actual: 60, P10: 55, P50: 62, P90: 70, CRPS: 2}}}},
		OfSites: []score.Coverage{{Of: score.Days, Cases: 120, Legs: 24, CRPS: 1.504, CRPSCI: [2]float64{1.1, 1.9}, Inside50: 0.51,
			Inside50CI: [2]float64{0.43, 0.59}, Inside80: 0.79, Inside80CI: [2]float64{0.71, 0.86}}},
		OfLegs: []score.Coverage{{Of: score.Recovered, Cases: 23, Legs: 23, CRPS: 150, CRPSCI: [2]float64{110, 190}, Inside50: 0.48,
			Inside50CI: [2]float64{0.3, 0.66}, Inside80: 0.78, Inside80CI: [2]float64{0.6, 0.92}}},
		Cycles:   []score.Cycle{{Tool: "APC", DepthClass: "3 to 4 km", Holes: 12, Record: 60, Simulated: 58.5}},
		Recovery: []score.Recovery{{Tool: "APC", Holes: 12, Record: [3]float64{87, 101, 105}, Simulated: [3]float64{85, 99.6, 105}}},
		LeftOut:  []record.LeftOut{{Row: 5, Why: "no position"}, {Row: 9, Why: "no position"}, {Row: 12, Why: "no depth"}},
	}
}

func TestTheScoreOfAHindcastIsPrinted(t *testing.T) {
	matchGolden(t, "hindcast.txt", printed(t, func(w io.Writer) error { return scores.Print(w, anyHindcast()) }))
}

func TestTheJSONOfAHindcastKeepsItsPromise(t *testing.T) {
	matchGolden(t, "hindcast.json", printed(t, func(w io.Writer) error { return jsonout.Hindcast(w, anyHindcast()) }))
}

// One leg alone has no interval and no other legs to compare with: null, never NaN.
func TestAHindcastOfOneLegHasNullWhereThereIsNoFigure(t *testing.T) {
	h := anyHindcast()
	h.Card.Alone, h.Card.Skill = math.NaN(), math.NaN()
	h.Card.RatioCI = [2]float64{math.NaN(), math.NaN()}
	h.Cycles, h.Recovery, h.LeftOut = nil, nil, nil
	text := printed(t, func(w io.Writer) error { return jsonout.Hindcast(w, h) })
	var read map[string]any
	if err := json.Unmarshal([]byte(text), &read); err != nil {
		t.Fatal(err)
	}
	if read["crps_skill"] != nil || strings.Contains(text, "NaN") {
		t.Errorf("skill %v", read["crps_skill"])
	}
	if list, is := read["cycles"].([]any); !is || len(list) != 0 {
		t.Errorf("cycles %v, want an empty list", read["cycles"])
	}
}
