package score

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/floats"
	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"
)

// LegTime is the time that legs spend on their sites, d. An expedition has its days, whatever it is sent to drill, and what was drilled
// is what fitted into them: where the forecasts of its sites add up to far less, or far more, the sites took longer, or less long.
// A plan states its days; a record does not.
type LegTime struct {
	Mean, SD  float64 // d: normal
	Otherwise float64 // share of the legs that this does not hold for: any time, evenly up to LongestLeg
	// The sum of a leg's sites is off as Student's t with so many degrees of freedom says, in units of so many standard deviations of
	// its logarithm: rock surprises more than a normal distribution has it.
	Freedom, Scale float64
}

// LongestLeg is the longest time on site that is thought of, d.
const LongestLeg = 110

// shortestLeg is the shortest, d.
const shortestLeg = 0.3

// grid is how finely the time of a leg is looked at, in steps of its logarithm.
const grid = 400

// Given moves the sample of a leg's time, d, to what it is once the time of legs is known: forecast times likelihood (Bayes), quantile
// by quantile. A sample without spread stays.
func (l LegTime) Given(sample []float64) []float64 {
	given := slices.Clone(sample)
	chances := l.posterior(sample)
	if chances == nil {
		return given
	}
	floats.CumSum(chances, chances)
	order := make([]int, len(sample))
	floats.ArgsortStable(slices.Clone(sample), order)
	for rank, r := range order {
		given[r] = at(chances, (float64(rank)+0.5)/float64(len(sample)))
	}
	return given
}

// Chance is the chance density of a leg's time in its logarithm, of legs whose forecast is the sample; for the fit of l.
func (l LegTime) Chance(sample []float64, days float64) float64 {
	chances := l.posterior(sample)
	if chances == nil {
		return math.NaN()
	}
	step := math.Log(LongestLeg/shortestLeg) / grid
	i := int(math.Round(math.Log(days/shortestLeg) / step))
	return chances[max(0, min(grid, i))] / step
}

// posterior are the chances of the times of the grid, which sum to one.
func (l LegTime) posterior(sample []float64) []float64 {
	logs := make([]float64, len(sample))
	for i, x := range sample {
		logs[i] = math.Log(x)
	}
	mean, sd := stat.MeanStdDev(logs, nil)
	if !(sd > 0) || math.IsInf(mean, 0) {
		return nil
	}
	forecast := distuv.StudentsT{Mu: mean, Sigma: l.Scale * sd, Nu: l.Freedom}
	legs := distuv.Normal{Mu: l.Mean, Sigma: l.SD}
	chances := make([]float64, grid+1)
	for i := range chances {
		x := onGrid(float64(i))
		chances[i] = forecast.Prob(math.Log(x)) * ((1-l.Otherwise)*legs.Prob(x) + l.Otherwise/LongestLeg)
	}
	floats.Scale(1/floats.Sum(chances), chances)
	return chances
}

func onGrid(i float64) float64 {
	return shortestLeg * math.Exp(i/grid*math.Log(LongestLeg/shortestLeg))
}

// at is the quantile of cumulated chances.
func at(cumulated []float64, p float64) float64 {
	i, _ := slices.BinarySearch(cumulated, p)
	if i == 0 || i > grid {
		return onGrid(float64(min(i, grid)))
	}
	return onGrid(float64(i) - (cumulated[i]-p)/(cumulated[i]-cumulated[i-1]) + 0.5)
}

// Condition moves the samples of sites, replication by replication, so that those of each leg add up to its time given l. The logarithm of
// a site moves as far as it goes with that of the sum: by its regression on it (the update of an ensemble, Evensen 1994, from memory).
func (l LegTime) Condition(sites [][]float64, legs []string) [][]float64 {
	moved := make([][]float64, len(sites))
	of := map[string][]int{}
	for i, leg := range legs {
		of[leg] = append(of[leg], i)
	}
	for _, members := range of {
		sum := make([]float64, len(sites[members[0]]))
		for _, i := range members {
			floats.Add(sum, sites[i])
		}
		given := l.Given(sum)
		shift, logs, left := make([]float64, len(sum)), make([]float64, len(sum)), slices.Clone(given)
		for r := range sum {
			shift[r], logs[r] = math.Log(given[r]/sum[r]), math.Log(sum[r])
		}
		together := make([]float64, len(sum))
		for _, i := range members {
			moved[i] = movedWith(sites[i], logs, shift)
			floats.Add(together, moved[i])
		}
		floats.Div(left, together) // what linear regression leaves
		for _, i := range members {
			floats.Mul(moved[i], left)
		}
	}
	return moved
}

// movedWith moves a sample with the logarithm of a sum that it is part of.
func movedWith(sample, sum, shift []float64) []float64 {
	logs := make([]float64, len(sample))
	for r, x := range sample {
		logs[r] = math.Log(x)
	}
	moved := slices.Clone(sample)
	_, along := stat.LinearRegression(sum, logs, nil, false)
	if math.IsNaN(along) || math.IsInf(along, 0) {
		return moved // a sum or a site without spread
	}
	for r := range moved {
		moved[r] *= math.Exp(along * shift[r])
	}
	return moved
}
