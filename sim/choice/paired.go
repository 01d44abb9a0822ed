package choice

import (
	"math"

	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"

	"coredays/model/result"
)

// confidence of every interval by itself, and of all that is said about the best together.
const confidence = 0.95

// paired is the difference of two alternatives in one figure, replication by replication.
type paired struct {
	mean, sd float64
	n        int
}

// pair takes b from a.
func pair(a, b []outcome, figure int) paired {
	apart := make([]float64, min(len(a), len(b)))
	for n := range apart {
		apart[n] = a[n][figure] - b[n][figure]
	}
	mean, sd := stat.MeanStdDev(apart, nil)
	if len(apart) < 2 {
		sd = math.Inf(1)
	}
	return paired{mean, sd, len(apart)}
}

// error is the standard error of the mean.
func (p paired) error() float64 { return p.sd / math.Sqrt(float64(p.n)) }

// interval is the paired t interval with a quantile of Student's t.
func (p paired) interval(t float64) result.Interval {
	half := t * p.error()
	return result.Interval{Mean: p.mean, Low: p.mean - half, High: p.mean + half}
}

// upperT is the quantile of Student's t for n replications beyond which lies a chance on one side.
func upperT(n int, beyond float64) float64 {
	if n < 2 {
		return math.Inf(1)
	}
	return distuv.StudentsT{Mu: 0, Sigma: 1, Nu: float64(n - 1)}.Quantile(1 - beyond)
}

// tailOfOneInterval is the chance that each bound of one interval by itself is passed with.
const tailOfOneInterval = (1 - confidence) / 2

// oneInterval is the quantile of Student's t for one interval by itself.
func oneInterval(n int) float64 { return upperT(n, tailOfOneInterval) }

// mostReplicationsNeeded is where telling how many replications would do ends.
const mostReplicationsNeeded = 1_000_000

// replicationsNeeded is how many replications would put 0 outside of the interval if the mean and the
// deviation stay as they are; 0 where it is outside.
func (p paired) replicationsNeeded() (n int, orMore bool) {
	half := oneInterval(p.n) * p.error()
	if math.Abs(p.mean) > half || p.sd == 0 {
		return 0, false
	}
	need := math.Pow(distuv.UnitNormal.Quantile((1+confidence)/2)*p.sd/p.mean, 2)
	if !(need < mostReplicationsNeeded) {
		return mostReplicationsNeeded, true
	}
	return max(p.n+1, int(math.Ceil(need))), false
}

// difference says two alternatives apart.
func difference(a, b []outcome) result.Difference {
	d, t := pair(a, b, daysNeeded), oneInterval(min(len(a), len(b)))
	difference := result.Difference{
		Days:    d.interval(t),
		Chance:  discord(a, b, rankOneDone).score(tailOfOneInterval),
		Metres:  pair(a, b, metresWithin).interval(t),
		Pairing: pairing(a, b, daysNeeded),
	}
	difference.SettlesDays, difference.SettlesAbove = d.replicationsNeeded()
	for n := range d.n {
		switch less := a[n][daysNeeded] - b[n][daysNeeded]; {
		case less < 0:
			difference.AShorter++
		case less == 0:
			difference.Same++
		}
	}
	difference.AShorter /= float64(d.n)
	difference.Same /= float64(d.n)
	return difference
}

// pairing is how many times smaller the standard error of a difference is than it would be between
// runs that have no random numbers in common.
func pairing(a, b []outcome, figure int) float64 {
	var apart float64
	for _, one := range [][]outcome{a, b} {
		values := make([]float64, len(one))
		for n := range one {
			values[n] = one[n][figure]
		}
		apart += stat.Variance(values, nil)
	}
	sd := pair(a, b, figure).sd
	if !(sd > 0) || math.IsInf(sd, 1) {
		return math.NaN()
	}
	return math.Sqrt(apart) / sd
}
