package spread

import "math"

// Quantity is a number with its spread, the levels at which the spread lives, and its source.
type Quantity struct {
	Shape  Shape
	Shares Shares
	// Persistence is the correlation of one run with the run before it at the same place: 0 for
	// independent runs.
	Persistence float64
	// Common is the loading of the expedition's share on a factor that all quantities share, so
	// that a slow crew is slow at more than one thing. Two quantities correlate between
	// expeditions by the product of their loadings.
	Common float64
	// Source is where the value came from: a publication, a file and line, or "from memory".
	Source string
	// Text is the value as written, with its unit.
	Text string
}

// Just is a quantity without spread.
func Just(value float64) Quantity { return Quantity{Shape: Fixed(value), Shares: All(Run)} }

// Median is the median.
func (q Quantity) Median() float64 { return q.Shape.Quantile(0.5) }

// IsFixed reports whether the quantity has no spread.
func (q Quantity) IsFixed() bool {
	_, ok := q.Shape.(Fixed)
	return ok
}

// Given reports whether anything was stated at all.
func (q Quantity) Given() bool { return q.Shape != nil }

// Drawn is a quantity made ready for drawing millions of times. What most of a simulation asks for is the
// median of a quantity that has no spread, so that stands beside the weights; the table of a quantity that is
// drawn is apart, for all of a ship's tables together do not fit into a processor's nearest memory.
type Drawn struct {
	Weight      [Levels]float64 // of the score at each level; their squares add up to 1
	Common      float64
	Persistence float64
	Median      float64
	Fixed       bool
	value       *[nodes]float64
}

// The values are tabulated over the normal score. The step is chosen so that the scores of 0.1,
// 0.5 and 0.9 are nodes: low, mid and high are honoured to the last digit.
const (
	perLow = 16 // steps between the scores of 0.5 and 0.9
	reach  = 80 // steps to each side: scores up to 6.4
	nodes  = 2*reach + 1
)

var stepsPerScore = perLow / Score(1-alpha)

// Compile tabulates the quantity. The error of the interpolation is below a thousandth of the
// value for a lognormal spread with a standard deviation of one in the logarithm.
func (q Quantity) Compile() Drawn {
	d := Drawn{Common: q.Common, Persistence: q.Persistence, Fixed: q.IsFixed(), Median: q.Median(), value: new([nodes]float64)}
	for l, share := range q.Shares {
		d.Weight[l] = math.Sqrt(share)
	}
	for i := range d.value {
		d.value[i] = q.Shape.Quantile(Probability(float64(i-reach) / stepsPerScore))
	}
	d.value[reach-perLow] = q.Shape.Quantile(alpha)
	d.value[reach] = d.Median
	d.value[reach+perLow] = q.Shape.Quantile(1 - alpha)
	return d
}

// At is the value at a normal score.
func (d *Drawn) At(score float64) float64 {
	x := score*stepsPerScore + reach
	if x <= 0 {
		return d.value[0]
	}
	if x >= nodes-1 {
		return d.value[nodes-1]
	}
	i := int(x)
	return d.value[i] + (x-float64(i))*(d.value[i+1]-d.value[i])
}
