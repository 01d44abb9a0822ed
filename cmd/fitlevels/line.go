package main

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/stat"
)

// Fit is a line with the standard error of each coefficient, by bootstrap over legs, because
// the holes of one leg share crew and ship state.
type Fit struct {
	Terms  []string  `json:"terms"` // name and unit of each coefficient
	Value  []float64 `json:"value"`
	StdErr []float64 `json:"standard_error"`
	Holes  int       `json:"rows"`
}

// At is the fitted value for one row of regressors, the constant 1 among them.
func (f Fit) At(row []float64) float64 { return dot(f.Value, row) }

func dot(a, b []float64) float64 {
	sum := 0.0
	for i := range a {
		sum += a[i] * b[i]
	}
	return sum
}

// leastAbsolute finds the coefficients with the smallest sum of absolute deviations (the median
// line) by iteratively reweighted least squares: Schlossmacher 1973, from memory. NaN coefficients
// mean the regressors are collinear.
func leastAbsolute(rows [][]float64, y []float64) []float64 {
	weight := slices.Repeat([]float64{1}, len(y))
	floor := 1e-4 * spreadOf(y) // keeps the weight of a point on the line finite
	var b []float64
	for range 60 {
		next := weightedLeastSquares(rows, y, weight)
		if b != nil && farthest(b, next) < 1e-7*(1+norm(next)) {
			return next
		}
		b = next
		for i, row := range rows {
			weight[i] = 1 / math.Max(math.Abs(y[i]-dot(b, row)), floor)
		}
	}
	return b
}

// weightedLeastSquares solves the normal equations; their sums are plain loops, as they run
// millions of times in the bootstrap.
func weightedLeastSquares(rows [][]float64, y, weight []float64) []float64 {
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
func norm(a []float64) float64     { return math.Sqrt(dot(a, a)) }
func farthest(a, b []float64) (d float64) {
	for i := range a {
		d = math.Max(d, math.Abs(a[i]-b[i]))
	}
	return d
}

// fitMedianLine fits rows to y and finds the standard errors over legs.
func fitMedianLine(terms []string, legs []string, rows [][]float64, y []float64) Fit {
	fit := func(pick []int) []float64 {
		x, z := make([][]float64, len(pick)), make([]float64, len(pick))
		for i, p := range pick {
			x[i], z[i] = rows[p], y[p]
		}
		return leastAbsolute(x, z)
	}
	return Fit{Terms: terms, Value: leastAbsolute(rows, y), StdErr: legBootstrap(legs, fit), Holes: len(y)}
}
