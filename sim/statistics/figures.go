package statistics

import (
	"math"

	"gonum.org/v1/gonum/stat"
)

// mean is the plain mean, 0 of nothing.
func mean(values []float64) float64 {
	if len(values) == 0 {
		return 0
	}
	return stat.Mean(values, nil)
}

// share is the share of values for which a condition holds.
func share(values []float64, holds func(float64) bool) float64 {
	if len(values) == 0 {
		return 0
	}
	n := 0
	for _, v := range values {
		if holds(v) {
			n++
		}
	}
	return float64(n) / float64(len(values))
}

// each combines two columns value by value.
func each(a, b []float64, f func(a, b float64) float64) []float64 {
	out := make([]float64, len(a))
	for i := range a {
		out[i] = f(a[i], b[i])
	}
	return out
}

// percent is a in percent of b, NaN where b is nothing.
func percent(a, b []float64) []float64 {
	return each(a, b, func(a, b float64) float64 {
		if !(b > 0) {
			return math.NaN()
		}
		return 100 * a / b
	})
}
