package spread

import (
	"math"
	"testing"
)

// shapes is one of each kind.
func shapes(t testing.TB) map[string]Shape {
	ok := must(t)
	metalog := func(lower, upper float64) Shape {
		m, err := NewMetalog(Triple{2, 5, 9}, lower, upper)
		return ok(m, err)
	}
	return map[string]Shape{
		"fixed": Fixed(7), "table": Table{P: []float64{0.1, 0.5, 0.9}, Value: []float64{2, 5, 9}},
		"unbounded metalog": metalog(-inf, inf), "metalog bounded below": metalog(0, inf),
		"metalog bounded above": metalog(-inf, 11), "bounded metalog": metalog(0, 11),
		"lognormal": ok(NewLognormal(5, 2)), "uniform": ok(NewUniform(2, 9)), "triangular": ok(NewTriangular(2, 5, 9)),
		"weibull": ok(NewWeibull(5, 1.5)), "exponential": ok(NewExponential(5)),
	}
}

func TestCompiledQuantityKeepsLowMidAndHighToTheLastDigit(t *testing.T) {
	for name, shape := range shapes(t) {
		d := Quantity{Shape: shape, Shares: All(Run)}.Compile()
		for _, p := range []float64{0.1, 0.5, 0.9} {
			if got, want := d.At(Score(p)), shape.Quantile(p); got != want {
				t.Errorf("%s: value at %g is %v, want %v", name, p, got, want)
			}
		}
	}
}

func TestInterpolationIsWithinAThousandthForALognormal(t *testing.T) {
	shape := must(t)(NewLognormal(1, math.Exp(Score(0.9)))) // the logarithm has standard deviation 1
	d := Quantity{Shape: shape, Shares: All(Run)}.Compile()
	worst := 0.0
	for z := -4.0; z <= 4; z += 1.0 / 1024 {
		worst = max(worst, math.Abs(d.At(z)/math.Exp(z)-1))
	}
	// A chord lies above exp by at most h^2/8, with steps h = 1.28155/16: 0.0802.
	if want := 8.02e-4; worst > 1e-3 || math.Abs(worst-want) > 0.02e-4 {
		t.Errorf("off by %.3g at most, want %.3g", worst, want)
	}
}

func TestCompiledValuesRiseWithTheScore(t *testing.T) {
	for name, shape := range shapes(t) {
		d := Quantity{Shape: shape, Shares: All(Run)}.Compile()
		last := d.At(-9)
		for z := -9.0; z <= 9; z += 1.0 / 64 {
			if x := d.At(z); x < last {
				t.Fatalf("%s: %g at a score of %g after %g", name, x, z, last)
			} else {
				last = x
			}
		}
	}
}

// Beyond a score of 6.4, which one draw in six thousand million reaches, the value stays what it is there.
// So no draw is infinite, although the exponential and the unbounded forms have no highest value.
func TestFarTailsAreCutAndFinite(t *testing.T) {
	for name, shape := range shapes(t) {
		d := Quantity{Shape: shape, Shares: All(Run)}.Compile()
		for _, side := range []float64{-1, 1} {
			end := d.At(side * inf)
			if math.IsInf(end, 0) || math.IsNaN(end) || d.At(side*40) != end || d.At(side*6.41) != end {
				t.Errorf("%s ends in %g, has %g at 6.41 and %g at 40", name, end, d.At(side*6.41), d.At(side*40))
			}
			if want := shape.Quantile(Probability(side * reach / stepsPerScore)); end != want {
				t.Errorf("%s ends in %g, want %g", name, end, want)
			}
		}
	}
}

// Beyond five scores the table still follows: the exponential is -ln P(above) there, and the second
// derivative of that in the score is at most 1, so a chord is off by at most h^2/8 = 8.02e-4 of the mean.
func TestExponentialIsFollowedBeyondFiveScores(t *testing.T) {
	d := Quantity{Shape: must(t)(NewExponential(5)), Shares: All(Run)}.Compile()
	for z := 0.0; z < 6.4; z += 1.0 / 128 {
		want := -5 * math.Log(0.5*math.Erfc(z/math.Sqrt2))
		if got := d.At(z); math.Abs(got-want) > 5*8.1e-4 {
			t.Errorf("value at %g is %g, want %g", z, got, want)
		}
	}
}

func TestFixedQuantityIsItsValueAtAnyScore(t *testing.T) {
	q := Just(7)
	d := q.Compile()
	for _, z := range []float64{-inf, -1.234, 0, 0.777, inf} {
		if d.At(z) != 7 {
			t.Errorf("%g at a score of %g", d.At(z), z)
		}
	}
	if !d.Fixed || !q.IsFixed() || !q.Given() || q.Median() != 7 {
		t.Error("7 is not fixed at 7")
	}
	if (Quantity{}).Given() || (Quantity{Shape: Table{}}).IsFixed() {
		t.Error("nothing counts as stated, or a table as fixed")
	}
}

func TestWeightsAreTheRootsOfTheShares(t *testing.T) {
	d := Quantity{Shape: Fixed(1), Shares: Shares{0.25, 0.09, 0.16, 0.5}, Persistence: 0.6, Common: -0.3}.Compile()
	for l, want := range [Levels]float64{0.5, 0.3, 0.4, math.Sqrt(0.5)} {
		if math.Abs(d.Weight[l]-want) > 1e-15 {
			t.Errorf("weight at the level %v is %g, want %g", Level(l), d.Weight[l], want)
		}
	}
	if d.Persistence != 0.6 || d.Common != -0.3 {
		t.Error("persistence or common loading lost")
	}
}
