package main

import "gonum.org/v1/gonum/stat"

// lagPairs gathers the correlation of neighbours within holes.
type lagPairs struct {
	cross, square float64
	lengths       map[int]float64 // holes by number of values
}

func (l *lagPairs) add(x []float64) {
	if len(x) < leastCycles {
		return
	}
	if l.lengths == nil {
		l.lengths = map[int]float64{}
	}
	l.lengths[len(x)]++
	mean := stat.Mean(x, nil)
	for i := range x {
		l.square += (x[i] - mean) * (x[i] - mean)
		if i > 0 {
			l.cross += (x[i] - mean) * (x[i-1] - mean)
		}
	}
}

// raw is the sum of neighbours' products over the sum of squares, both about the hole's mean: it reads
// low, the more so in short holes.
func (l *lagPairs) raw() float64 { return l.cross / l.square }

// correlation is the lag-1 correlation of a stationary first-order process whose expected raw value,
// in holes of these lengths, is the one found. The expectation is exact: see expected.
func (l *lagPairs) correlation() float64 {
	low, high := -0.99, 0.99
	for range 30 {
		middle := (low + high) / 2
		cross, square := 0.0, 0.0
		for n, holes := range l.lengths {
			c, s := expected(middle, n)
			cross, square = cross+holes*c, square+holes*s
		}
		if cross/square < l.raw() {
			low = middle
		} else {
			high = middle
		}
	}
	return (low + high) / 2
}

// expected sums the covariances of n values of unit variance less their mean: of neighbours, and of
// each with itself. cov(x_i-m, x_j-m) = g_ij - r_i - r_j + s with g = rho^|i-j|, r its row means, s its mean.
func expected(rho float64, n int) (cross, square float64) {
	rows := make([]float64, n)
	s := 0.0
	for i := range rows {
		rows[i] = (geometric(rho, i+1) + geometric(rho, n-i) - 1) / float64(n)
		s += rows[i] / float64(n)
	}
	for i := range rows {
		square += 1 - 2*rows[i] + s
		if i > 0 {
			cross += rho - rows[i] - rows[i-1] + s
		}
	}
	return cross, square
}

// geometric is 1 + rho + ... + rho^(n-1).
func geometric(rho float64, n int) float64 {
	sum, term := 0.0, 1.0
	for range n {
		sum, term = sum+term, term*rho
	}
	return sum
}
