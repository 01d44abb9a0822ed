package statistics

import (
	"math"

	"golang.org/x/exp/stats"
)

// Nearest is the replication whose days needed are nearest to a quantile of all of them, such as
// 0.9, or -1 when none was done.
func (r *Results) Nearest(p float64) int {
	all := r.Column(r.Unconstrained, ColDays)
	if len(all) == 0 {
		return -1
	}
	days := stats.Quantiles(all, p)[0]
	best, gap := -1, math.Inf(1)
	for n, done := range r.Done {
		if d := math.Abs(r.Unconstrained[n*r.Layout.Width+ColDays] - days); done && d < gap {
			best, gap = n, d
		}
	}
	return best
}
