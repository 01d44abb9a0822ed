// Package spread describes quantities that are not one number: their shape, given by quantiles,
// and the level of the expedition at which the spread lives.
//
// Everything is drawn by quantile: a draw is the value at a standard normal score, so that two
// alternatives that share a score share their random streams even where their numbers differ.
package spread

import "math"

// Shape is a distribution given by its quantile function. Values are in the SI base unit of
// the quantity that it describes.
type Shape interface {
	// Quantile returns the value below which the share p of all draws falls, 0 < p < 1.
	Quantile(p float64) float64
}

// Fixed is a single value without spread.
type Fixed float64

// Quantile returns the value, whatever p.
func (f Fixed) Quantile(float64) float64 { return float64(f) }

// Table is a distribution given by some of its quantiles: straight lines between them in the
// normal score, constant outside. It describes records better than any named shape.
type Table struct {
	P, Value []float64 // both rising
}

// Quantile interpolates in the normal score of p.
func (t Table) Quantile(p float64) float64 {
	last := len(t.P) - 1
	if p <= t.P[0] {
		return t.Value[0]
	}
	for i := 1; i <= last; i++ {
		if p <= t.P[i] {
			a, b := Score(t.P[i-1]), Score(t.P[i])
			return t.Value[i-1] + (t.Value[i]-t.Value[i-1])*(Score(p)-a)/(b-a)
		}
	}
	return t.Value[last]
}

// Score is the standard normal score of a probability.
func Score(p float64) float64 { return math.Sqrt2 * math.Erfinv(2*p-1) }

// Probability is the standard normal probability of a score.
func Probability(score float64) float64 { return 0.5 * math.Erfc(-score/math.Sqrt2) }
