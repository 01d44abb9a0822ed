package statistics

import (
	"math"
	"slices"
	"sort"

	"golang.org/x/exp/stats"
	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"

	"coredays/model/result"
)

// Summarise describes values; NaN are left out.
func Summarise(values []float64) result.Spread { return takingOver(slices.Clone(values)) }

// takingOver is Summarise of values that nobody needs any more: they are sorted where they are.
func takingOver(values []float64) result.Spread {
	values = slices.DeleteFunc(values, math.IsNaN)
	if len(values) == 0 {
		return result.Spread{}
	}
	slices.Sort(values)
	mean, sd := stat.MeanStdDev(values, nil)
	if len(values) == 1 {
		sd = 0
	}
	q := stats.Quantiles(values, 0.1, 0.5, 0.9)
	return result.Spread{N: len(values), Mean: mean, SD: sd, P10: q[0], P50: q[1], P90: q[2],
		P10CI: interval(values, 0.1), P50CI: interval(values, 0.5), P90CI: interval(values, 0.9)}
}

// interval holds the quantile p of the population 95 times in 100: order statistics whose ranks are
// quantiles of the binomial distribution (distribution-free interval; David and Nagaraja, Order
// Statistics, section 7.1, from memory). With too few values it is their whole range and holds less.
func interval(sorted []float64, p float64) [2]float64 {
	n := len(sorted)
	count := distuv.Binomial{N: float64(n), P: p}
	low := sort.Search(n, func(k int) bool { return count.CDF(float64(k)) > 0.025 })
	high := sort.Search(n, func(k int) bool { return count.CDF(float64(k)) >= 0.975 })
	return [2]float64{sorted[max(0, low-1)], sorted[min(n-1, high)]}
}
