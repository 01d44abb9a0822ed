package basis

import (
	"cmp"
	"math"
	"slices"
)

// Weigh gives each entry the share that a simulation found for its quantity, by number of the
// quantity, and sorts what matters most to the front. What has no share keeps its order behind.
func Weigh(entries []Entry, shares []float64) {
	for i := range entries {
		if q := entries[i].Quantity; q >= 0 {
			entries[i].Share = shares[q]
		}
	}
	slices.SortStableFunc(entries, func(a, b Entry) int {
		return cmp.Compare(behind(b.Share), behind(a.Share))
	})
}

// behind puts what has no share after all that has.
func behind(share float64) float64 {
	if math.IsNaN(share) {
		return -1
	}
	return share
}

// Chance is the share below which 19 in 20 quantities that don't matter at all come out of so many
// replications: 3.84/N, the square of 1.96 standard errors of a correlation of nothing (textbook).
func Chance(replications int) float64 { return 3.84 / float64(max(replications, 1)) }
