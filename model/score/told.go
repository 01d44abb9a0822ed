package score

import (
	"math"

	"golang.org/x/exp/stats"

	"coredays/model/spread"
)

// Told is a site of a leg, forecast after the sites before it were seen.
type Told struct {
	Program, Leg, Site string
	Place              int // among the sites of the leg, from 1
	Days               Quantiles
	Untold             float64 // CRPS of the same forecast before anything was seen, d
}

// AsItGoes is how forecasts did that had seen the sites before, against the same ones untold.
type AsItGoes struct {
	Legs         int
	CRPS, Untold float64    // d
	Change       float64    // of the CRPS by what was seen, as a share; below 0 it is better
	ChangeCI     [2]float64 // over legs
	Inside80     float64
	Inside80CI   [2]float64
	Sites        []Told
}

// JudgeTold scores sites that were told of those before them. There must be at least one.
func JudgeTold(sites []Told) *AsItGoes {
	a := &AsItGoes{Sites: sites}
	var told, untold, inside, number []float64
	var legs []string
	for i, s := range sites {
		told, untold, number = append(told, s.Days.CRPS), append(untold, s.Untold), append(number, float64(i))
		inside = append(inside, within(s.Days.Actual, s.Days.P10, s.Days.P90))
		legs = append(legs, s.Program+" "+s.Leg)
	}
	change := func(of []float64) float64 {
		var t, u float64
		for _, i := range of {
			t, u = t+told[int(i)], u+untold[int(i)]
		}
		return t/u - 1
	}
	a.Legs = len(grouped(number, legs))
	a.CRPS, a.Untold, a.Change, a.Inside80 = stats.Mean(told), stats.Mean(untold), change(number), stats.Mean(inside)
	a.ChangeCI, a.Inside80CI = Interval(number, legs, change), Interval(inside, legs, stats.Mean[float64])
	return a
}

// At is a forecast moved and narrowed: every value of it has a normal score by its rank, and these scores get another mean
// and standard deviation. It has as many values as before, at the middles of as many cells of equal probability.
func (f Forecast) At(mean, sd float64) Forecast {
	n := len(f)
	p := make([]float64, n)
	for i := range p {
		p[i] = spread.Probability(mean + sd*spread.Score((float64(i)+0.5)/float64(n)))
	}
	return Forecast(f.Quantiles(p...))
}

// Score is the normal score of a value by its rank in the forecast, no further out than a forecast of that size tells.
func (f Forecast) Score(actual float64) float64 {
	edge := 0.5 / float64(len(f))
	return spread.Score(math.Min(1-edge, math.Max(edge, f.Rank(actual))))
}
