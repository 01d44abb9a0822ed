package learn

import (
	"math"

	"gonum.org/v1/gonum/mat"
)

// rounds of expectation propagation; it ends sooner where nothing moves any more.
const (
	rounds  = 200
	settled = 1e-10
)

// message is what one bound tells, as if a value of that precision had been observed.
type message struct {
	precision, shift float64 // shift is the precision times the value
}

// propagate conditions a Gaussian on bounds. The scores of bounded[i] stand at place first+i of it.
func propagate(mean *mat.VecDense, cov *mat.SymDense, first int, bounded []observed) {
	messages := make([]message, len(bounded))
	for range rounds {
		var moved float64
		for i := range bounded {
			at := first + i
			m, v := mean.AtVec(at), cov.At(at, at)
			if v <= 0 {
				continue
			}
			precision := 1/v - messages[i].precision // without what this bound itself says: Minka 2001 (from memory)
			shift := m/v - messages[i].shift
			if precision <= 0 {
				continue
			}
			tm, tv := beyond(shift/precision, math.Sqrt(1/precision), bounded[i].score, bounded[i].bound)
			next := message{1/tv - precision, tm/tv - shift}
			change := message{next.precision - messages[i].precision, next.shift - messages[i].shift}
			update(mean, cov, at, change)
			messages[i] = next
			moved = math.Max(moved, math.Abs(mean.AtVec(at)-m))
		}
		if moved < settled {
			return
		}
	}
}

// update adds a message to a Gaussian: an observation of one of its numbers (Sherman and Morrison 1950, from memory).
func update(mean *mat.VecDense, cov *mat.SymDense, at int, change message) {
	n := cov.SymmetricDim()
	column := mat.NewVecDense(n, nil)
	for i := range n {
		column.SetVec(i, cov.At(i, at))
	}
	by := 1 + change.precision*cov.At(at, at)
	mean.AddScaledVec(mean, (change.shift-change.precision*mean.AtVec(at))/by, column)
	cov.SymRankOne(cov, -change.precision/by, column)
}

// beyond is mean and variance of a normal number of which a bound is known (truncated normal, Johnson, Kotz and
// Balakrishnan 1994, ch. 13.10.1, from memory).
func beyond(mean, sd, bound float64, side Bound) (m, v float64) {
	sign := 1.0
	if side == AtMost {
		sign = -1
	}
	a := sign * (bound - mean) / sd
	hazard := hazardOf(a)
	m = mean + sign*sd*hazard
	v = sd * sd * (1 - hazard*(hazard-a))
	return m, math.Max(v, 1e-9*sd*sd)
}

// Above is mean and variance of a standard normal score of which it is known that it is above a bound.
func Above(bound float64) (mean, variance float64) { return beyond(0, 1, bound, AtLeast) }

// hazardOf is the normal density over the chance of a higher score.
func hazardOf(a float64) float64 {
	if a > 25 {
		return a + 1/a - 2/(a*a*a) // asymptotic series of Mills' ratio inverted; the first term left out is 10/a^5, 1e-6
	}
	return math.Sqrt(2/math.Pi) * math.Exp(-a*a/2) / math.Erfc(a/math.Sqrt2)
}
