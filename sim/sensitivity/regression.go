package sensitivity

import (
	"cmp"
	"math"
	"slices"

	"gonum.org/v1/gonum/floats"
	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/stat/distuv"

	"coredays/model/activity"
	"coredays/model/chance"
	"coredays/model/result"
	"coredays/model/spread"
	"coredays/sim/random"
	"coredays/sim/statistics"
)

// mostFitted is how many replications are regressed on: a share is then known to half a per cent or so.
const mostFitted = 2000

// fit is what the regressions of all quantities have in common.
type fit struct {
	seed     uint64
	numbers  []int         // of the replications
	causes   *mat.Dense    // their times by cause, less the mean
	days     *mat.VecDense // the sum of these
	variance float64       // sum of the squares of days
}

// fitTo takes the replications of results that are not extreme; nil where nothing varies.
func fitTo(r *statistics.Results) *fit {
	var numbers []int
	var rows []float64
	usual := r.Usual()
	for _, n := range usual[:min(mostFitted, len(usual))] {
		numbers = append(numbers, r.First+n)
		rows = append(rows, r.Unconstrained[n*r.Layout.Width+statistics.ColCause:][:activity.Causes]...)
	}
	if len(numbers) < 2 {
		return nil
	}
	return fitOf(r.Seed, numbers, rows, int(activity.Causes))
}

// fitOf takes the times of so many causes, row after row.
func fitOf(seed uint64, numbers []int, rows []float64, causes int) *fit {
	f := &fit{seed: seed, numbers: numbers, causes: mat.NewDense(len(numbers), causes, rows), days: mat.NewVecDense(len(numbers), nil)}
	center(f.causes)
	f.days.MulVec(f.causes, ones(causes))
	if f.variance = mat.Dot(f.days, f.days); f.variance == 0 {
		return nil
	}
	return f
}

func ones(n int) *mat.VecDense {
	v := mat.NewVecDense(n, nil)
	for i := range n {
		v.SetVec(i, 1)
	}
	return v
}

// center takes the mean from each column.
func center(m *mat.Dense) {
	rows, columns := m.Dims()
	for c := range columns {
		mean := mat.Sum(m.ColView(c)) / float64(rows)
		for r := range rows {
			m.Set(r, c, m.At(r, c)-mean)
		}
	}
}

// influence regresses the days on the scores of a quantity. The factor that quantities have in common stands
// beside them, so that each is given its own part of what that does.
func (f *fit) influence(s *random.Draws, scores []random.Score) result.Influence {
	x, own := f.regressors(s, scores)
	replications, all := x.Dims()
	free := replications - 1 - all
	var slope mat.VecDense
	if free < 1 || slope.SolveVec(x, f.days) != nil {
		return result.Influence{Share: math.NaN()}
	}
	var explained, part mat.VecDense
	explained.MulVec(x, &slope)
	for i := range all {
		slope.SetVec(i, slope.AtVec(i)*own[i])
	}
	part.MulVec(x, &slope)
	return f.split(&explained, &part, floats.Sum(own), free)
}

// regressors is a column for each power of each score, and how much of each is the quantity's own; the last is
// the common factor where the quantity has part in it but is not all of it.
func (f *fit) regressors(s *random.Draws, scores []random.Score) (x *mat.Dense, own []float64) {
	for i := range scores {
		own = append(own, slices.Repeat([]float64{scores[i].Share}, scores[i].Powers)...)
	}
	first := &scores[0].Of
	common := first.Weight[spread.Expedition] > 0 && first.Common != 0 && math.Abs(first.Common) < 1
	if common {
		own = append(own, 0)
	}
	x = mat.NewDense(len(f.numbers), len(own), nil)
	for row, n := range f.numbers {
		s.Stream = chance.Replication(f.seed, n)
		values, at := x.RawRowView(row), 0
		for i := range scores {
			at += copy(values[at:], random.PowersOf(s.Score(&scores[i]), scores[i].Powers))
		}
		if common {
			values[at] = s.Stream.For(random.CommonFactor).Normal(0)
		}
	}
	center(x)
	return x, own
}

// mayBeChance is the share of the quantities that do not matter which are given to matter. Our choice.
const mayBeChance = 0.01

// split says how what a quantity's part of the days has in common with the days lies in the causes. Of each
// covariance so much is taken as regressors that tell nothing would show too, the residual covariance times their
// number over the degrees of freedom: for the sum that is the adjusted coefficient of determination (Ezekiel
// 1930, from memory).
func (f *fit) split(explained, part *mat.VecDense, own float64, free int) result.Influence {
	if mat.Dot(part, f.days)/f.variance < (distuv.Beta{Alpha: own / 2, Beta: float64(free) / 2}).Quantile(1-mayBeChance) {
		return result.Influence{}
	}
	var i result.Influence
	_, causes := f.causes.Dims()
	for c := range causes {
		times := f.causes.ColView(c)
		residual := mat.Dot(f.days, times) - mat.Dot(explained, times)
		share := (mat.Dot(part, times) - own*residual/float64(free)) / f.variance
		i.Share += share
		i.Causes = append(i.Causes, result.Driver{Name: activity.Cause(c).String(), Share: share})
	}
	slices.SortStableFunc(i.Causes, func(a, b result.Driver) int { return cmp.Compare(b.Share, a.Share) })
	return i
}
