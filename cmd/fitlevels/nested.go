package main

import (
	"math"

	"gonum.org/v1/gonum/mat"
)

// nestedVariances splits the variance of y over nested levels, coarsest first, the last being
// the single value. Each label names the group of a value and is unique over the whole table.
//
// Method of moments for unbalanced data: Henderson's method 1, from memory (Searle, Casella &
// McCulloch 1992, ch. 5). Equate T_l = sum over groups of (group sum)^2/n with its expectation,
// N·mu^2 + sum over levels m of k_lm·var_m, k_lm = sum over groups g of l, h of m, of n_gh^2/n_g.
// A negative estimate is set to zero, as is usual.
func nestedVariances(y []float64, labels ...[]string) []float64 {
	levels := append([][]string{make([]string, len(y))}, labels...) // level 0: one group of all
	levels = append(levels, nil)                                    // last: every value its own group
	last := len(levels) - 1
	t, k := mat.NewVecDense(last+1, nil), mat.NewDense(last+1, last, nil)
	for l := range levels {
		groups := groupRows(levels[l], len(y))
		for _, rows := range groups {
			t.SetVec(l, t.AtVec(l)+sumSquared(y, rows)/float64(len(rows)))
		}
		for m := 1; m <= last; m++ {
			k.Set(l, m-1, overlap(groups, levels[m]))
		}
	}
	return solveMoments(t, k)
}

// solveMoments takes differences of neighbouring levels, which removes the unknown mean.
func solveMoments(t *mat.VecDense, k *mat.Dense) []float64 {
	levels, n := k.Dims()
	left, right := mat.NewDense(n, n, nil), mat.NewVecDense(n, nil)
	for l := 1; l < levels; l++ {
		right.SetVec(l-1, t.AtVec(l)-t.AtVec(l-1))
		for m := range n {
			left.Set(l-1, m, k.At(l, m)-k.At(l-1, m))
		}
	}
	var v mat.VecDense
	variances := make([]float64, n)
	err := v.SolveVec(left, right)
	for i := range variances {
		variances[i] = math.NaN() // no group of a level has two members: nothing to split
		if err == nil {
			variances[i] = math.Max(v.AtVec(i), 0)
		}
	}
	return variances
}

// groupRows lists the rows of each group in order of first appearance; nil labels: one row a group.
func groupRows(labels []string, n int) [][]int {
	place := map[string]int{}
	var groups [][]int
	for i := range n {
		if labels == nil {
			groups = append(groups, []int{i})
			continue
		}
		p, ok := place[labels[i]]
		if !ok {
			p = len(groups)
			place[labels[i]] = p
			groups = append(groups, nil)
		}
		groups[p] = append(groups[p], i)
	}
	return groups
}

func sumSquared(y []float64, rows []int) float64 {
	sum := 0.0
	for _, r := range rows {
		sum += y[r]
	}
	return sum * sum
}

// overlap is k_lm for groups of l against the labels of m; nil labels: single values.
func overlap(groups [][]int, labels []string) float64 {
	k := 0.0
	for _, rows := range groups {
		if labels == nil {
			k++
			continue
		}
		count := map[string]float64{}
		for _, r := range rows {
			count[labels[r]]++
		}
		for _, n := range count {
			k += n * n / float64(len(rows))
		}
	}
	return k
}

// shares turns variances into parts of their sum.
func shares(variances []float64) []float64 {
	total := 0.0
	for _, v := range variances {
		total += v
	}
	return column(variances, func(v float64) float64 { return v / total })
}
