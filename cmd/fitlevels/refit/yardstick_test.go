package refit

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"coredays/model/score"
)

// A step and an interaction are what trees find and a line does not: of y = 1 for a > 0.5, else b, with noise of 0.1.
func TestTreesFindAStepThatALineDoesNot(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 4))
	var rows [][]float64
	var y, truth []float64
	for range 600 {
		a, b := random.Float64(), random.Float64()
		x := b
		if a > 0.5 {
			x = 1
		}
		rows, truth, y = append(rows, []float64{1, a, b}), append(truth, x), append(y, x+0.1*random.NormFloat64())
	}
	off := func(p predictor) (sum float64) {
		for i := 400; i < 600; i++ {
			d := p(rows[i]) - truth[i]
			sum += d * d
		}
		return math.Sqrt(sum / 200)
	}
	trees, line := off(boosted(rows[:400], y[:400])), off(yardsticks[0].train(rows[:400], y[:400]))
	if trees > 0.1 || line < 0.14 { // the line is off by the interaction, whose standard deviation is 0.144 by hand: (1-b)(a>1/2) less its plane
		t.Errorf("trees are off by %.3f, want less than the noise of 0.1; the line by %.3f", trees, line)
	}
}

// Against itself a forecast differs by nothing; a sharper one of the truth is lower at every site.
func TestPairsAreHeldSiteBySite(t *testing.T) {
	var a, b []score.Case
	for i := range 20 {
		leg := string(rune('a' + i/5))
		a = append(a, score.Case{Group: leg, Actual: 10, Forecast: score.NewForecast([]float64{9, 10, 11})})
		b = append(b, score.Case{Group: leg, Actual: 10, Forecast: score.NewForecast([]float64{19, 20, 21})})
	}
	if row := pairRow("same", a, a); row[1] != "+0.000" || row[5] != "0 %" {
		t.Errorf("%v", row)
	}
	// Fair CRPS of three at distance one: mean distance 2/3 less half the mean distance between two, 2/3: 0; of the other, 10 less 2/3.
	if row := pairRow("worse", a, b); row[1] != "-9.333" || row[2] != "-9.333 to -9.333" || row[5] != "100 %" {
		t.Errorf("%v", row)
	}
}

// No model of a yardstick, for a forecast or for its errors, has met the leg that it is held against: with one that
// remembers the legs it was trained on, none is ever found again.
func TestAYardstickNeverMeetsTheLegItIsHeldAgainst(t *testing.T) {
	j, err := OpenSites("../../../testdata/published/site_days.csv")
	if err != nil {
		t.Fatal(err)
	}
	again := 0
	j.yardstick(func(rows [][]float64, y []float64) predictor {
		met := map[string]bool{}
		for _, r := range rows {
			met[fmt.Sprint(r)] = true
		}
		return func(f []float64) float64 {
			if met[fmt.Sprint(f)] {
				again++
			}
			return 0
		}
	})
	if again > 0 {
		t.Errorf("%d sites were met again", again)
	}
}
