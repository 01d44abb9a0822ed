// Package score judges forecasts given as samples against what happened. All functions are pure:
// what they are given decides what they return.
package score

import (
	"math"
	"slices"

	"golang.org/x/exp/stats"
)

// Forecast is a sample of a prediction, in rising order.
type Forecast []float64

// NewForecast sorts a sample.
func NewForecast(sample []float64) Forecast {
	f := Forecast(slices.Clone(sample))
	slices.Sort(f)
	return f
}

// CRPS is the continuous ranked probability score of a value that came true, in the unit of the
// value: the mean distance of sample and value less half the mean distance within the sample. The
// fair estimator: its mean does not depend on the size of the sample (Ferro 2014, QJRMS 140, 1917,
// from memory). A sample of one has the plain distance.
func (f Forecast) CRPS(actual float64) float64 {
	n := float64(len(f))
	var apart, within float64
	for i, x := range f {
		apart += math.Abs(x - actual)
		within += (2*float64(i) - n + 1) * x // sum of all distances of pairs, by order
	}
	if n < 2 {
		return apart
	}
	return apart/n - within/(n*(n-1))
}

// Log is the forecast of the logarithm.
func (f Forecast) Log() Forecast {
	log := make(Forecast, len(f))
	for i, x := range f {
		log[i] = math.Log(x)
	}
	return log
}

// Quantiles of the sample (Hyndman and Fan's R-7).
func (f Forecast) Quantiles(p ...float64) []float64 { return stats.Quantiles([]float64(f), p...) }

// Mean of the sample.
func (f Forecast) Mean() float64 { return stats.Mean([]float64(f)) }

// Rank is the share of the sample below a value; ties count half.
func (f Forecast) Rank(actual float64) float64 {
	below, _ := slices.BinarySearch(f, actual)
	upTo := below
	for upTo < len(f) && f[upTo] == actual {
		upTo++
	}
	return float64(below+upTo) / 2 / float64(len(f))
}
