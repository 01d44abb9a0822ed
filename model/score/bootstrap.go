package score

import (
	"math"
	"math/rand/v2"

	"golang.org/x/exp/stats"
)

// resamples is how often groups are drawn anew: the ends of a 95 % interval are known to about a
// tenth of its width.
const resamples = 1000

// Interval holds a statistic of the values 95 times in 100. Whole groups are drawn with
// replacement, since values of one group (sites of one leg) are not independent (percentile
// bootstrap by cluster; Davison and Hinkley 1997, section 3.8, from memory). The random numbers are
// the same at each call. Without two groups there is no interval: NaN.
func Interval(values []float64, groups []string, statistic func([]float64) float64) [2]float64 {
	members := grouped(values, groups)
	if len(members) < 2 {
		return [2]float64{math.NaN(), math.NaN()}
	}
	random := rand.New(rand.NewPCG(1, 2))
	drawn := make([]float64, resamples)
	var sample []float64
	for i := range drawn {
		sample = sample[:0]
		for range members {
			sample = append(sample, members[random.IntN(len(members))]...)
		}
		drawn[i] = statistic(sample)
	}
	q := stats.Quantiles(drawn, 0.025, 0.975)
	return [2]float64{q[0], q[1]}
}

// grouped gathers the values of each group, in the order in which groups come.
func grouped(values []float64, groups []string) (members [][]float64) {
	place := map[string]int{}
	for i, g := range groups {
		n, seen := place[g]
		if !seen {
			n = len(members)
			place[g] = n
			members = append(members, nil)
		}
		members[n] = append(members[n], values[i])
	}
	return members
}
