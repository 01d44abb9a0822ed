// Package regress fits lines by least squares and least absolute deviations.
package regress

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/stat"
)

// Dot is the sum of the products.
func Dot(a, b []float64) float64 {
	sum := 0.0
	for i := range a {
		sum += a[i] * b[i]
	}
	return sum
}

// LeastAbsolute finds the coefficients with the smallest sum of absolute deviations (the median
// line) by iteratively reweighted least squares: Schlossmacher 1973, from memory. NaN coefficients
// mean the regressors are collinear.
func LeastAbsolute(rows [][]float64, y []float64) []float64 {
	weight := slices.Repeat([]float64{1}, len(y))
	floor := 1e-4 * spreadOf(y) // keeps the weight of a point on the line finite
	var b []float64
	for range 60 {
		next := WeightedLeastSquares(rows, y, weight)
		if b != nil && farthest(b, next) < 1e-7*(1+norm(next)) {
			return next
		}
		b = next
		for i, row := range rows {
			weight[i] = 1 / math.Max(math.Abs(y[i]-Dot(b, row)), floor)
		}
	}
	return b
}

// WeightedLeastSquares solves the normal equations; their sums are plain loops, as they run
// millions of times in the bootstrap.
func WeightedLeastSquares(rows [][]float64, y, weight []float64) []float64 {
	n := len(rows[0])
	normal, right := make([]float64, n*n), make([]float64, n)
	for i, row := range rows {
		for j, u := range row {
			u *= weight[i]
			right[j] += u * y[i]
			for k, v := range row {
				normal[j*n+k] += u * v
			}
		}
	}
	var b mat.VecDense
	if err := b.SolveVec(mat.NewDense(n, n, normal), mat.NewVecDense(n, right)); err != nil {
		return slices.Repeat([]float64{math.NaN()}, n)
	}
	return slices.Clone(b.RawVector().Data)
}

func spreadOf(y []float64) float64 { return math.Max(stat.StdDev(y, nil), 1e-9) }

func norm(a []float64) float64 { return math.Sqrt(Dot(a, a)) }

func farthest(a, b []float64) (d float64) {
	for i := range a {
		d = math.Max(d, math.Abs(a[i]-b[i]))
	}
	return d
}
