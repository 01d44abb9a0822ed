package main

import (
	"cmp"
	"slices"

	"golang.org/x/exp/stats"
	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"
)

// normalScores replaces each value by the normal quantile of its rank (Blom 1958, (r-3/8)/(n+1/4),
// from memory); equal values share their mean rank.
func normalScores(x []float64) []float64 {
	order := make([]int, len(x))
	for i := range order {
		order[i] = i
	}
	slices.SortFunc(order, func(a, b int) int { return cmp.Compare(x[a], x[b]) })
	z := make([]float64, len(x))
	for start := 0; start < len(order); {
		end := start
		for end < len(order) && x[order[end]] == x[order[start]] {
			end++
		}
		rank := float64(start+1+end) / 2
		for _, o := range order[start:end] {
			z[o] = distuv.UnitNormal.Quantile((rank - 0.375) / (float64(len(x)) + 0.25))
		}
		start = end
	}
	return z
}

// marginalAt are the probabilities of the recovery table.
var marginalAt = []float64{0.01, 0.02, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95, 0.98, 0.99}

func quantileTable(x []float64) []float64 { return stats.Quantiles(x, marginalAt...) }

// weightedTable is quantileTable for values that do not weigh alike.
func weightedTable(x, weight []float64) []float64 {
	x, weight = slices.Clone(x), slices.Clone(weight)
	stat.SortWeighted(x, weight)
	return column(marginalAt, func(p float64) float64 { return stat.Quantile(p, stat.LinInterp, x, weight) })
}

// fromTable reads a value off a quantile table, straight lines between its points and the end
// values outside them.
func fromTable(table []float64, p float64) float64 {
	i := slices.IndexFunc(marginalAt, func(q float64) bool { return q >= p })
	switch {
	case i == 0:
		return table[0]
	case i < 0:
		return table[len(table)-1]
	}
	part := (p - marginalAt[i-1]) / (marginalAt[i] - marginalAt[i-1])
	return table[i-1] + part*(table[i]-table[i-1])
}
