package refit

import (
	"cmp"
	"math"
	"slices"

	"gonum.org/v1/gonum/stat"
)

// Gradient boosting of regression trees with squared loss (Friedman 2001, from memory): round figures for a few hundred
// rows, not tuned.
const (
	treeRounds = 200
	treeDepth  = 3
	treeLeaf   = 12 // rows of a leaf at least
	treeStep   = 0.06
)

// tree is a regression tree; a leaf has no branches.
type tree struct {
	value       float64
	feature     int
	at          float64 // up to here goes below
	below, over *tree
}

func (t *tree) predict(f []float64) float64 {
	for t.below != nil {
		if f[t.feature] <= t.at {
			t = t.below
		} else {
			t = t.over
		}
	}
	return t.value
}

// boosted adds trees, each of what those before it leave.
func boosted(rows [][]float64, y []float64) predictor {
	left, all := slices.Clone(y), make([]int, len(y))
	for i := range all {
		all[i] = i
	}
	base := stat.Mean(y, nil)
	for i := range left {
		left[i] -= base
	}
	var trees []*tree
	for range treeRounds {
		t := grown(rows, left, all, treeDepth)
		for i := range left {
			left[i] -= treeStep * t.predict(rows[i])
		}
		trees = append(trees, t)
	}
	return func(f []float64) float64 {
		sum := base
		for _, t := range trees {
			sum += treeStep * t.predict(f)
		}
		return sum
	}
}

// grown is the tree of some rows, divided where that lowers the sum of squares most.
func grown(rows [][]float64, y []float64, in []int, depth int) *tree {
	t := &tree{}
	sum := 0.0
	for _, i := range in {
		sum += y[i]
	}
	t.value = sum / float64(len(in))
	if depth == 0 {
		return t
	}
	best, cut := sum*sum/float64(len(in))+1e-12, -1
	var order []int
	for f := range rows[0] {
		sorted := slices.Clone(in)
		slices.SortStableFunc(sorted, func(a, b int) int { return cmp.Compare(rows[a][f], rows[b][f]) })
		below := 0.0
		for n := 1; n < len(sorted); n++ {
			below += y[sorted[n-1]]
			if n < treeLeaf || len(sorted)-n < treeLeaf || rows[sorted[n-1]][f] == rows[sorted[n]][f] {
				continue
			}
			if gain := below*below/float64(n) + (sum-below)*(sum-below)/float64(len(sorted)-n); gain > best && !math.IsNaN(gain) {
				best, cut, order = gain, n, sorted
				t.feature, t.at = f, (rows[sorted[n-1]][f]+rows[sorted[n]][f])/2
			}
		}
	}
	if cut < 0 {
		return t
	}
	t.below, t.over = grown(rows, y, order[:cut], depth-1), grown(rows, y, order[cut:], depth-1)
	return t
}
