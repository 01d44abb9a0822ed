package statistics

import (
	"cmp"
	"math"
	"slices"

	"golang.org/x/exp/stats"
	"gonum.org/v1/gonum/stat"

	"coredays/model/activity"
	"coredays/model/result"
)

// extreme is the share of the expeditions left aside at either end where the spread of days needed is split:
// one in twenty thousand that waits for a year would have most of the variance. Our choice.
const extreme = 0.01

// Usual are the replications done that are not extreme in the days needed, by their place in the results.
func (r *Results) Usual() (list []int) {
	days := r.Column(r.Unconstrained, ColDays)
	if len(days) == 0 {
		return nil
	}
	slices.Sort(days)
	bounds := stats.Quantiles(days, extreme, 1-extreme)
	for n, done := range r.Done {
		if d := r.Unconstrained[n*r.Layout.Width+ColDays]; done && d >= bounds[0] && d <= bounds[1] {
			list = append(list, n)
		}
	}
	return list
}

// drivers is each cause's share of the variance of days needed: the covariance of its time with
// the total, over the variance of the total. These add up to 1, as the times add up to the total.
func (r *Results) drivers() []result.Driver {
	usual := r.Usual()
	of := func(column int) (values []float64) {
		for _, n := range usual {
			values = append(values, r.Unconstrained[n*r.Layout.Width+column])
		}
		return values
	}
	total := of(ColDays)
	if len(total) < 2 {
		return nil
	}
	variance := stat.Variance(total, nil)
	var drivers []result.Driver
	for c := range activity.Causes {
		if s := stat.Covariance(of(ColCause+int(c)), total, nil) / variance; s != 0 && !math.IsNaN(s) {
			drivers = append(drivers, result.Driver{Name: c.String(), Share: s})
		}
	}
	slices.SortStableFunc(drivers, func(a, b result.Driver) int { return cmp.Compare(b.Share, a.Share) })
	return drivers
}
