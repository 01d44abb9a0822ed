package choice

import (
	"math"

	"gonum.org/v1/gonum/mathext"
	"gonum.org/v1/gonum/stat/distuv"

	"coredays/model/result"
)

// discordant counts the replications in which only one of two alternatives gets something done. A t
// interval of the difference in chance would have no width where there is none, so that a rare failure
// not met yet would count as impossible.
type discordant struct{ gained, lost, n int }

// discord counts in how many replications a has the figure and b has not, and the other way round.
func discord(a, b []outcome, figure int) discordant {
	d := discordant{n: min(len(a), len(b))}
	for i := range d.n {
		switch more := a[i][figure] - b[i][figure]; {
		case more > 0:
			d.gained++
		case more < 0:
			d.lost++
		}
	}
	return d
}

func (d discordant) mean() float64 { return float64(d.gained-d.lost) / float64(max(1, d.n)) }

// score is the interval of the difference in chance by Tango's score test (1998), "Equivalence test and
// confidence interval for the difference in proportions for the paired-sample design", Statistics in
// Medicine 17, 891-908; its formula read in the documentation of packages that cite it. Each bound is
// passed with about the given chance.
func (d discordant) score(beyond float64) result.Interval {
	z := distuv.UnitNormal.Quantile(1 - beyond)
	high := d.scoreBound(z)
	low := -discordant{d.lost, d.gained, d.n}.scoreBound(z)
	return result.Interval{Mean: d.mean(), Low: low, High: high}
}

// scoreBound is the largest difference that is no more than z standard errors above the counts.
func (d discordant) scoreBound(z float64) float64 {
	low, high := d.mean(), 1.0
	for range 60 { // halved to below 1e-15
		if middle := (low + high) / 2; d.errorsBelow(middle) > z {
			high = middle
		} else {
			low = middle
		}
	}
	return high
}

// errorsBelow is how many standard errors the counts are below a difference, the chance of a loss being the
// likeliest one with that difference.
func (d discordant) errorsBelow(difference float64) float64 {
	n, gained, lost := float64(d.n), float64(d.gained), float64(d.lost)
	a, b, c := 2*n, (2*n-gained+lost)*difference-gained-lost, -lost*difference*(1-difference)
	loss := (math.Sqrt(b*b-4*a*c) - b) / (2 * a)
	return (n*difference - gained + lost) / math.Sqrt(n*(2*loss+difference*(1-difference)))
}

// exactBounds gives bounds of chances, each of which is passed with at most a given chance, however few
// replications there are. They are kept by count, since pairs are many.
type exactBounds struct {
	n         int
	beyond    float64
	low, high map[int]float64
}

func newExactBounds(n int, beyond float64) *exactBounds {
	return &exactBounds{n, beyond, map[int]float64{}, map[int]float64{}}
}

// interval is that of the difference in chance: a gain and a loss each have the bounds of Clopper and Pearson
// (1934), Biometrika 26, 404-413, with half the chance to be wrong, so that by Bonferroni's inequality their
// difference has all of it.
func (e *exactBounds) interval(d discordant) result.Interval {
	return result.Interval{Mean: d.mean(), Low: e.least(d.gained) - e.most(d.lost), High: e.most(d.gained) - e.least(d.lost)}
}

// least is the lower bound of the chance of what came so often.
func (e *exactBounds) least(count int) float64 {
	return remembered(e.low, count, func() float64 {
		if count == 0 {
			return 0
		}
		return mathext.InvRegIncBeta(float64(count), float64(e.n-count+1), e.beyond/2)
	})
}

// most is the upper bound: what does not come is a chance too.
func (e *exactBounds) most(count int) float64 {
	return remembered(e.high, count, func() float64 { return 1 - e.least(e.n-count) })
}

// remembered works a value out once.
func remembered(known map[int]float64, at int, work func() float64) float64 {
	x, is := known[at]
	if !is {
		x = work()
		known[at] = x
	}
	return x
}
