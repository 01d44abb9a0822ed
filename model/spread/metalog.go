package spread

import (
	"errors"
	"fmt"
	"math"
)

// Triple is what people give: the value that is undercut one time in ten, the even value, and
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
	if k := 0.5 * (1 - 1.66711*(0.5-alpha)); !(k < r && r < 1-k) { // feasibility, same source, from memory
		return Metalog{}, fmt.Errorf("too lopsided: mid must lie between %.4g and %.4g", m.outward(low+k*(high-low)), m.outward(high-k*(high-low)))
	}
	// With one bound the far tail is that of a power law with the exponent 1/(a2+a3/2).
	if tail := m.a2 + math.Abs(m.a3)/2; math.IsInf(lower, 0) != math.IsInf(upper, 0) && tail >= 0.5 {
		return Metalog{}, fmt.Errorf("high over low is %.2g, so wide that the tail needs both a lowest and a highest value", t.High/t.Low)
	}
	return m, nil
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
