package basis

import (
	"cmp"
	"math"
	"slices"

	"coredays/model/result"
)

// Weigh gives each entry the influence that a simulation found for its quantity, by number of the
// quantity, and sorts what matters most to the front. What does not matter keeps its order behind.
func Weigh(entries []Entry, influences []result.Influence) {
	for i := range entries {
		if q := entries[i].Quantity; q >= 0 {
			entries[i].Influence = influences[q]
		}
	}
	slices.SortStableFunc(entries, func(a, b Entry) int {
		return cmp.Compare(behind(b.Share), behind(a.Share))
	})
}

// behind puts what has no share after all that has.
func behind(share float64) float64 {
	if math.IsNaN(share) {
		return math.Inf(-1)
	}
	return share
}

// Together is the sum of the shares of all entries: what the spreads of single numbers tell of the days needed.
func Together(entries []Entry) (sum float64) {
	for _, e := range entries {
		if !math.IsNaN(e.Share) {
			sum += e.Share
		}
	}
	return sum
}
