package spread

import (
	"math"
	"testing"
)

// threeTerms is the three-term form through three values on the unbounded line, with the terms from
// solving its three equations; written apart from the code, and without asking whether it rises.
func threeTerms(low, mid, high float64) func(p float64) float64 {
	l := math.Log(9) // logit of 0.9
	a2 := (high - low) / (2 * l)
	a3 := (high + low - 2*mid) / (2 * 0.4 * l)
	return func(p float64) float64 {
		logit := math.Log(p / (1 - p))
		return mid + a2*logit + a3*(p-0.5)*logit
	}
}

// rises reports whether a quantile function rises everywhere, by differences on a dense grid of the logit
// from -12 to 12; where a three-term form falls, it does so near a probability of 0.083 or 0.917, logit 2.4.
func rises(quantile func(p float64) float64) bool {
	const steps = 4800
	last := math.Inf(-1)
	for i := range steps + 1 {
		x := quantile(1 / (1 + math.Exp(12-24*float64(i)/steps)))
		if !(x > last) {
			return false
		}
		last = x
	}
	return true
}

// edge is where, going up from a place at which a property does not hold, it begins to.
func edge(from, to float64, holds func(float64) bool) float64 {
	for range 40 {
		if middle := (from + to) / 2; holds(middle) {
			to = middle
		} else {
			from = middle
		}
	}
	return to
}

func accepted(t Triple, lower, upper float64) bool {
	_, err := NewMetalog(t, lower, upper)
	return err == nil
}

func TestMetalogIsRefusedExactlyWhereItsQuantilesWouldFall(t *testing.T) {
	for place := 0.002; place < 1; place += 0.002 {
		ok := rises(threeTerms(0, place, 1))
		if got := accepted(Triple{0, place, 1}, -inf, inf); got != ok {
			t.Errorf("mid at %.3f of the way: accepted %v, rises %v", place, got, ok)
		}
	}
}

func TestEdgeOfRefusalIsThatOfTheDerivativeToSixDigits(t *testing.T) {
	below := edge(0.1, 0.2, func(place float64) bool { return accepted(Triple{0, place, 1}, -inf, inf) })
	above := 1 - edge(0.1, 0.2, func(place float64) bool { return accepted(Triple{0, 1 - place, 1}, -inf, inf) })
	want := edge(0.1, 0.2, func(place float64) bool { return rises(threeTerms(0, place, 1)) })
	if math.Abs(below-want) > 1e-6 || math.Abs(above-(1-want)) > 1e-6 {
		t.Errorf("accepted from %.8f to %.8f, rises from %.8f", below, above, want)
	}
}

// The derivative is positive where a2 > |a3| max((1/2-p) - p(1-p) logit p), so the limit of |a3|/a2 is
// one over that maximum. The code has 1.66711.
func TestFeasibilityConstantIsTheInverseOfAMaximum(t *testing.T) {
	most := 0.0
	for p := 1e-6; p < 0.5; p += 1e-6 {
		most = max(most, 0.5-p-p*(1-p)*math.Log(p/(1-p)))
	}
	if got := 1 / most; got < 1.66711 || got > 1.66712 {
		t.Errorf("the constant is %.8f", got)
	}
}

// Far out on the side without a bound a value grows as the logit times the slope of the three-term form;
// the variance is infinite from a slope of 1/2 on.
func TestSingleBoundIsRefusedExactlyWhereTheVarianceIsInfinite(t *testing.T) {
	const far = 1e-12
	for place := 0.17; place <= 0.83; place += 0.02 {
		for width := 0.1; width < 8; width *= 1.1 {
			q := threeTerms(0, place*width, width)
			up := (q(1-far) - q(1-100*far)) / math.Log(100)
			down := (q(100*far) - q(far)) / math.Log(100)
			e := func(x float64) float64 { return math.Exp(x) }
			check := func(side string, slope float64, t3 Triple, lower, upper float64) {
				if math.Abs(slope-0.5) < 1e-3 {
					return // too near to call: 1-far itself is rounded to four digits
				}
				if got := accepted(t3, lower, upper); got != (slope < 0.5) {
					t.Errorf("bounded %s, width %.3g, mid at %.2f: accepted %v, slope %.3f", side, width, place, got, slope)
				}
			}
			check("below", up, Triple{e(0), e(place * width), e(width)}, 0, inf)
			check("above", down, Triple{-e(0), -e(-place * width), -e(-width)}, -inf, 0)
		}
	}
}

// In logarithms mid must be between k and 1-k of the way, k = (1-1.66711*0.4)/2 = 0.166578:
// 10 * 6^0.166578 = 13.478 and 60 / 6^0.166578 = 44.516.
func TestLopsidedTripleIsToldWhereMidMustLie(t *testing.T) {
	_, err := NewMetalog(Triple{10, 11, 60}, 0, inf)
	want := "too lopsided: mid must lie between 13.48 and 44.51"
	if err == nil || err.Error() != want {
		t.Errorf("got %v, want %s", err, want)
	}
	// Those stated are inside.
	for mid, ok := range map[float64]bool{13.47: false, 13.48: true, 44.51: true, 44.52: false} {
		if _, err := NewMetalog(Triple{math.Log(10), math.Log(mid), math.Log(60)}, -inf, inf); (err == nil) != ok {
			t.Errorf("mid of %g on the line of logarithms: %v", mid, err)
		}
	}
}

func TestTooHeavyATailIsToldHowWideItIs(t *testing.T) {
	for _, c := range []struct {
		t            Triple
		lower, upper float64
		want         string
	}{
		{Triple{1, 10, 100}, 0, inf, "high over low is 1e+02"},
		{Triple{6, 15, 105}, 5, inf, "counted from the bound, low and high differ 1e+02 times"},
		{Triple{-100, -10, -2}, -inf, 0, "counted from the bound, low and high differ 50 times"},
	} {
		want := c.want + ", so wide that the tail needs both a lowest and a highest value"
		if _, err := NewMetalog(c.t, c.lower, c.upper); err == nil || err.Error() != want {
			t.Errorf("%v: %v, want %s", c.t, err, want)
		}
	}
	if !accepted(Triple{1, 10, 100}, 0, 1000) {
		t.Error("a highest value does not help")
	}
}

// Half way in logarithms the tail is (ln high - ln low) / (2 ln 9), so the limit of 1/2 is at a ratio of 9.
func TestRatioOfNineIsTheWidestWithoutAHighestValue(t *testing.T) {
	if !accepted(Triple{1, math.Sqrt(8.99), 8.99}, 0, inf) || accepted(Triple{1, math.Sqrt(9.01), 9.01}, 0, inf) {
		t.Error("the widest ratio is not 9")
	}
}
