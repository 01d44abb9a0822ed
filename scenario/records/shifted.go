package records

import (
	"sort"

	"gonum.org/v1/gonum/stat/distuv"

	"coredays/model/spread"
)

// shifted is a shape whose normal scores are all moved: low values come more often or less, and none comes that the shape has not.
type shifted struct {
	spread.Shape
	by float64
}

// Quantile is that of the moved scores.
func (s shifted) Quantile(p float64) float64 {
	return s.Shape.Quantile(distuv.UnitNormal.CDF(spread.Score(p) + s.by))
}

// farthestShift is as far as scores are moved.
const farthestShift = 3

// withMean moves a shape so that its mean is a share of what it was, or as near as that goes: where crews of some years cut half cores
// more often, the whole ones are as long as ever.
func withMean(shape spread.Shape, share float64) spread.Shape {
	if share == 1 {
		return shape
	}
	wanted := share * meanOf(shape)
	const steps = 1 << 12
	at := func(i int) float64 { return farthestShift * (2*float64(i)/steps - 1) }
	first := sort.Search(steps, func(i int) bool { return meanOf(shifted{shape, at(i)}) >= wanted })
	return shifted{shape, at(first)}
}

// meanOf is the mean of a shape, to about a thousandth.
func meanOf(shape spread.Shape) float64 {
	const n = 400
	sum := 0.0
	for i := range n {
		sum += shape.Quantile((float64(i) + 0.5) / n)
	}
	return sum / n
}
