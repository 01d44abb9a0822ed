package rigchannel

import (
	"math"
	"slices"
)

// medianOver takes away spikes: the median of the samples within so many seconds on either side.
func medianOver(at, x []float64, half float64) []float64 {
	out := make([]float64, len(x))
	window := make([]float64, 0, 64)
	from, to := 0, 0
	for i := range x {
		for at[from] < at[i]-half {
			from++
		}
		for to < len(x) && at[to] <= at[i]+half {
			to++
		}
		window = append(window[:0], x[from:to]...)
		slices.Sort(window)
		out[i] = window[len(window)/2]
	}
	return out
}

// meanOver is the mean of the samples within so many seconds on either side: over a whole period of the swell, heave is
// gone.
func meanOver(at, x []float64, half float64) []float64 {
	out := make([]float64, len(x))
	sums := make([]float64, len(x)+1)
	for i := range x {
		sums[i+1] = sums[i] + x[i]
	}
	from, to := 0, 0
	for i := range x {
		for at[from] < at[i]-half {
			from++
		}
		for to < len(x) && at[to] <= at[i]+half {
			to++
		}
		out[i] = (sums[to] - sums[from]) / float64(to-from)
	}
	return out
}

// twoLevels are the lower and the upper of two heaps of values, by the split with the least variance within both (Otsu
// 1979, from memory); apart is the share of all variance that lies between them.
func twoLevels(x []float64) (lower, upper, apart float64) {
	sorted := slices.Clone(x)
	slices.Sort(sorted)
	n := len(sorted)
	total, squares := 0.0, 0.0
	for _, v := range sorted {
		total += v
	}
	mean := total / float64(n)
	for _, v := range sorted {
		squares += (v - mean) * (v - mean)
	}
	best, sum := -1.0, 0.0
	for i := 1; i < n; i++ {
		sum += sorted[i-1]
		a, b := sum/float64(i), (total-sum)/float64(n-i)
		if between := float64(i) * float64(n-i) / float64(n) * (a - b) * (a - b); between > best {
			best, lower, upper = between, a, b
		}
	}
	if squares == 0 {
		return mean, mean, 0
	}
	return lower, upper, math.Max(0, best) / squares
}
