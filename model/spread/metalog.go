package spread

import (
	"errors"
	"fmt"
	"math"
)

// Triple is what people give: the value that is undercut one time in ten, the median, and
// the one exceeded one time in ten.
type Triple struct {
	Low, Mid, High float64
}

// Metalog is Keelin's quantile-parameterised distribution through a Triple, which it honours
// exactly. It is bounded below, above, on both sides or not at all.
type Metalog struct {
	lower, upper float64 // bounds; infinite where there is none
	a1, a2, a3   float64
}

// alpha is the probability of the low value of a Triple.
const alpha = 0.1

// NewMetalog fits the distribution. Use infinities for missing bounds. It is an error where no
// distribution of this family passes through the three values, or where its tail would be so
// heavy that its variance is infinite.
func NewMetalog(t Triple, lower, upper float64) (Metalog, error) {
	if !(t.Low < t.Mid && t.Mid < t.High) {
		return Metalog{}, errors.New("low, mid and high must rise")
	}
	if t.Low <= lower || t.High >= upper {
		return Metalog{}, errors.New("low and high must lie inside the bounds")
	}
	m := Metalog{lower: lower, upper: upper}
	low, mid, high := m.inward(t.Low), m.inward(t.Mid), m.inward(t.High)
	logit := math.Log((1 - alpha) / alpha)
	r := (mid - low) / (high - low)
	m.a1 = mid                                                     // Keelin 2016, symmetric-percentile triplet form (from memory)
	m.a2 = (high - low) / (2 * logit)                              // same, from memory
	m.a3 = (high - low) * (1 - 2*r) / ((1 - 2*alpha) * logit)      // same, from memory
	if k := 0.5 * (1 - 1.66711*(0.5-alpha)); !(k < r && r < 1-k) { // feasibility, same, from memory; 1.667113 by the derivative
		return Metalog{}, m.lopsided(m.outward(low+k*(high-low)), m.outward(high-k*(high-low)))
	}
	if m.tail() >= 0.5 {
		return Metalog{}, fmt.Errorf("%s, so wide that the tail needs both a lowest and a highest value", m.width(t))
	}
	return m, nil
}

// lopsided says between which values mid must lie, rounded so that both stated are inside.
func (m Metalog) lopsided(from, to float64) error {
	for digits := 4; digits < 17; digits++ {
		if low, high := inside(from, 1, digits), inside(to, -1, digits); low < high {
			return fmt.Errorf("too lopsided: mid must lie between %.*g and %.*g", digits, low, digits, high)
		}
	}
	return fmt.Errorf("too lopsided: mid must lie between %g and %g", from, to)
}

// inside is a value to so many figures, rounded up for a sign of 1 and down for one of -1.
func inside(value, sign float64, digits int) float64 {
	step := math.Pow(10, math.Ceil(math.Log10(math.Abs(value)))-float64(digits))
	return sign * math.Ceil(sign*value/step) * step
}

// tail is how heavy the tail away from a single bound is: far out it is a power law whose exponent
// is one over this, so that the variance is infinite from 0.5 on. The other forms have no such tail.
func (m Metalog) tail() float64 {
	switch {
	case math.IsInf(m.lower, 0) == math.IsInf(m.upper, 0):
		return 0
	case math.IsInf(m.upper, 0):
		return m.a2 + m.a3/2 // slope of the three-term form in the logit, p to 1
	default:
		return m.a2 - m.a3/2 // same, p to 0
	}
}

// width says people how wide a Triple is, seen from the single bound.
func (m Metalog) width(t Triple) string {
	if m.lower == 0 {
		return fmt.Sprintf("high over low is %.2g", t.High/t.Low)
	}
	ratio := math.Exp(m.inward(t.High) - m.inward(t.Low))
	return fmt.Sprintf("counted from the bound, low and high differ %.2g times", ratio)
}

// Quantile returns the value at the probability p.
func (m Metalog) Quantile(p float64) float64 {
	logit := math.Log(p / (1 - p))
	return m.outward(m.a1 + m.a2*logit + m.a3*(p-0.5)*logit) // three-term metalog, same source, from memory
}

// inward maps a value to the unbounded line on which the three-term form lives.
func (m Metalog) inward(x float64) float64 {
	switch {
	case math.IsInf(m.lower, 0) && math.IsInf(m.upper, 0):
		return x
	case math.IsInf(m.upper, 0):
		return math.Log(x - m.lower)
	case math.IsInf(m.lower, 0):
		return -math.Log(m.upper - x)
	default:
		return math.Log((x - m.lower) / (m.upper - x))
	}
}

// outward is the inverse of inward.
func (m Metalog) outward(y float64) float64 {
	switch {
	case math.IsInf(m.lower, 0) && math.IsInf(m.upper, 0):
		return y
	case math.IsInf(m.upper, 0):
		return m.lower + math.Exp(y)
	case math.IsInf(m.lower, 0):
		return m.upper - math.Exp(-y)
	default:
		return m.lower + (m.upper-m.lower)/(1+math.Exp(-y))
	}
}
