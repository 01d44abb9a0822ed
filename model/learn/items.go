package learn

import (
	"math"

	"coredays/model/spread"
)

// item is something with a Gaussian score: a factor or a value observed. What two items have in common is the sum
// of the products of their weights on the same sources, and their runs where those hang together.
type item struct {
	of      int
	above   int // the first evidence with which it has the levels above the run in common
	at      Place
	weight  [spread.Levels]float64
	common  float64 // loading of the expedition's score on the common factor
	shared  float64 // weight on the common factor itself, for the factor that stands for it
	persist float64
	run     int
	alone   bool    // its run hangs together with no other, as of a mean of runs
	own     float64 // variance that it shares with nothing: the run's, divided by how many, and the reading's
}

// covariance of two items, their own variance left out.
func covariance(a, b *item) (sum float64) {
	if a.above == b.above {
		sum = a.weight[spread.Expedition] * b.weight[spread.Expedition]
	} else {
		sum = a.weight[spread.Expedition] * a.common * b.weight[spread.Expedition] * b.common
	}
	sum += a.weight[spread.Expedition]*a.common*b.shared + b.weight[spread.Expedition]*b.common*a.shared + a.shared*b.shared
	if a.above != b.above || a.at.Site != b.at.Site {
		return sum
	}
	sum += a.weight[spread.Site] * b.weight[spread.Site]
	if a.at.Hole != b.at.Hole {
		return sum
	}
	sum += a.weight[spread.Hole] * b.weight[spread.Hole]
	if a.alone || b.alone || a.of != b.of {
		return sum
	}
	apart := math.Abs(float64(a.run - b.run))
	return sum + a.weight[spread.Run]*b.weight[spread.Run]*math.Pow(a.persist, apart) // correlation of a first-order autoregression
}

// factorItem is the item of a factor: one level alone, with a weight of 1.
func factorItem(f Factor, above, run int, q *spread.Drawn) item {
	if f.Of == Common {
		return item{of: Common, above: Common, shared: 1}
	}
	x := item{of: f.Of, above: above, at: f.At, common: q.Common, persist: q.Persistence, run: run}
	x.weight[f.Level] = 1
	return x
}
