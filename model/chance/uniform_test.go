package chance

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"
)

const many = 200_000

// ways are the directions in which draws follow one another; along each they must look independent.
var ways = map[string]func(n int) Source{
	"counts":       nil, // Source.Uniform(n) of one source
	"replications": func(n int) Source { return Replication(1, n) },
	"seeds":        func(n int) Source { return Replication(uint64(n), 0) },
	"keys":         func(n int) Source { return Replication(1, 0).For(Key(n)) },
	"replications of a key": func(n int) Source {
		return Replication(1, n).For(KeyOf("site", "A")).For(KeyOf("rate", "tripping"))
	},
}

// along draws in one of the ways.
func along(way func(n int) Source, draw func(s Source, n int) float64) []float64 {
	x := make([]float64, many)
	for n := range x {
		if way == nil {
			x[n] = draw(Replication(1, 0), n)
		} else {
			x[n] = draw(way(n), 0)
		}
	}
	return x
}

// Pearson's test with 256 cells: the statistic is chi-square with 255 degrees of freedom.
func TestDrawsFillEveryCellAlike(t *testing.T) {
	const cells = 256
	chi := distuv.ChiSquared{K: cells - 1}
	for name, way := range ways {
		var count [cells]float64
		for _, u := range along(way, Source.Uniform) {
			count[int(u*cells)]++
		}
		sum := 0.0
		for _, c := range count {
			sum += (c - many/cells) * (c - many/cells) / (many / cells)
		}
		if low, high := chi.Quantile(1e-4), chi.Quantile(1-1e-4); sum < low || sum > high {
			t.Errorf("%s: chi-square is %.0f, want %.0f to %.0f", name, sum, low, high)
		}
	}
}

// Mean 1/2, variance 1/12; the mean's standard error is sqrt(1/12n), that of the variance sqrt(1/180n).
func TestUniformDrawsHaveTheirMoments(t *testing.T) {
	for name, way := range ways {
		mean, variance := stat.MeanVariance(along(way, Source.Uniform), nil)
		near(t, name+": mean", mean, 0.5, 4*math.Sqrt(1.0/12/many))
		near(t, name+": variance", variance, 1.0/12, 4*math.Sqrt(1.0/180/many))
	}
}

// Standard errors of mean, variance, skewness and excess kurtosis of normal draws: sqrt of 1, 2, 6, 24 over n.
func TestNormalDrawsHaveTheirMoments(t *testing.T) {
	for name, way := range ways {
		z := along(way, Source.Normal)
		mean, variance := stat.MeanVariance(z, nil)
		near(t, name+": mean", mean, 0, 4*math.Sqrt(1.0/many))
		near(t, name+": variance", variance, 1, 4*math.Sqrt(2.0/many))
		near(t, name+": skewness", stat.Skew(z, nil), 0, 4*math.Sqrt(6.0/many))
		near(t, name+": kurtosis", stat.ExKurtosis(z, nil), 0, 4*math.Sqrt(24.0/many))
	}
}

func TestNeighboursAreUncorrelated(t *testing.T) {
	for name, way := range ways {
		u := along(way, Source.Uniform)
		for _, lag := range []int{1, 2, 7} {
			r := stat.Correlation(u[:many-lag], u[lag:], nil)
			near(t, name+": correlation", r, 0, 4/math.Sqrt(many))
		}
	}
}

// Two purposes of the same replication, and two numbers of the same purpose.
func TestPurposesOfAReplicationAreUncorrelated(t *testing.T) {
	a := along(ways["replications of a key"], Source.Normal)
	b := along(func(n int) Source {
		return Replication(1, n).For(KeyOf("site", "B")).For(KeyOf("rate", "tripping"))
	}, Source.Normal)
	c := along(ways["replications of a key"], func(s Source, n int) float64 { return s.Normal(n + 1) })
	near(t, "correlation of two sites", stat.Correlation(a, b, nil), 0, 4/math.Sqrt(many))
	near(t, "correlation of two runs", stat.Correlation(a, c, nil), 0, 4/math.Sqrt(many))
}

func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s is %g, want %g ± %g", what, got, want, tolerance)
	}
}
