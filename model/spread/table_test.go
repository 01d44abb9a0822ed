package spread

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"
)

func TestTableGoesThroughItsQuantilesAndIsConstantOutside(t *testing.T) {
	table := Table{P: []float64{0.1, 0.25, 0.9}, Value: []float64{3, 5, 11}}
	for p, want := range map[float64]float64{0.001: 3, 0.1: 3, 0.25: 5, 0.9: 11, 0.999: 11} {
		if got := table.Quantile(p); math.Abs(got-want) > 1e-12 {
			t.Errorf("quantile %g is %g, want %g", p, got, want)
		}
	}
}

// A straight line in the score is a normal distribution: through -1 and 1 at 0.1 and 0.9 its standard
// deviation is 1/1.28155.
func TestTableIsNormalBetweenTwoQuantiles(t *testing.T) {
	table := Table{P: []float64{0.1, 0.9}, Value: []float64{-1, 1}}
	for p := 0.11; p < 0.9; p += 0.01 {
		want := distuv.Normal{Sigma: 1 / 1.2815515655446004}.Quantile(p)
		if got := table.Quantile(p); math.Abs(got-want) > 1e-9 {
			t.Errorf("quantile %g is %g, want %g", p, got, want)
		}
	}
}

func TestTableOfEqualValuesIsThatValue(t *testing.T) {
	table := Table{P: []float64{0.2, 0.4, 0.9}, Value: []float64{2, 2, 3}}
	if got := table.Quantile(0.3); got != 2 {
		t.Errorf("got %g, want 2", got)
	}
}

func TestScoreAndProbabilityUndoEachOther(t *testing.T) {
	for z := -6.0; z <= 6; z += 0.25 {
		p := Probability(z)
		if want := distuv.UnitNormal.CDF(z); math.Abs(p-want) > 1e-14 {
			t.Errorf("probability of %g is %g, want %g", z, p, want)
		}
		rounding := 1e-15 / distuv.UnitNormal.Prob(z) // of p, carried over by the slope
		if got := Score(p); math.Abs(got-z) > rounding+1e-13 {
			t.Errorf("score of %g is %.12g, want %g", p, got, z)
		}
	}
}
