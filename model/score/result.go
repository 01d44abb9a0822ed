package score

import (
	"math"

	"golang.org/x/exp/stats"
)

// Results that planners promise, of a site or of a leg.
type Results int

// The results.
const (
	Days Results = iota
	Recovered
	Cores
	AllResults
)

var resultNames = [AllResults]string{"days", "metres recovered", "cores"}

func (r Results) String() string { return resultNames[r] }

// Quantiles is what came true of a result and what was forecast. All are NaN where the record is blank.
type Quantiles struct{ Actual, P10, P50, P90, CRPS float64 }

// Sampled is the forecasts of a result as samples, replication by replication, with what came true; Actual is
// NaN where the record is blank.
type Sampled struct {
	Actual float64
	Sample []float64
}

// Quantiles of a sampled result.
func (s Sampled) Quantiles() Quantiles {
	if math.IsNaN(s.Actual) {
		nan := math.NaN()
		return Quantiles{nan, nan, nan, nan, nan}
	}
	f := NewForecast(s.Sample)
	q := f.Quantiles(0.1, 0.5, 0.9)
	return Quantiles{s.Actual, q[0], q[1], q[2], f.CRPS(s.Actual)}
}

// Coverage is how well a result was forecast, in the unit of the result; intervals by bootstrap over legs.
type Coverage struct {
	Of                     Results
	Cases, Legs            int
	CRPS, Inside50         float64
	Inside80               float64
	CRPSCI                 [2]float64
	Inside50CI, Inside80CI [2]float64
}

// Cover scores a result of cases; those whose record is blank are passed over. Without a case all is NaN.
func Cover(of Results, cases []Sampled, groups []string) Coverage {
	var crps, in50, in80 []float64
	var legs []string
	for i, c := range cases {
		if math.IsNaN(c.Actual) {
			continue
		}
		f := NewForecast(c.Sample)
		q := f.Quantiles(0.1, 0.25, 0.75, 0.9)
		crps = append(crps, f.CRPS(c.Actual))
		in50 = append(in50, within(c.Actual, q[1], q[2]))
		in80 = append(in80, within(c.Actual, q[0], q[3]))
		legs = append(legs, groups[i])
	}
	c := Coverage{Of: of, Cases: len(crps), Legs: len(grouped(crps, legs)), CRPS: math.NaN(), Inside50: math.NaN(), Inside80: math.NaN()}
	if len(crps) > 0 {
		c.CRPS, c.Inside50, c.Inside80 = stats.Mean(crps), stats.Mean(in50), stats.Mean(in80)
	}
	c.CRPSCI = Interval(crps, legs, stats.Mean[float64])
	c.Inside50CI = Interval(in50, legs, stats.Mean[float64])
	c.Inside80CI = Interval(in80, legs, stats.Mean[float64])
	return c
}
