package score

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"golang.org/x/exp/stats"
)

// perfect are cases whose facts come from their own forecasts: lognormal, of a known spread.
func perfect(n int, spread float64) []Case {
	random := rand.New(rand.NewPCG(3, 4))
	cases := make([]Case, n)
	for i := range cases {
		scale := math.Exp(random.NormFloat64())
		sample := make([]float64, 400)
		for j, z := range normal(len(sample)) {
			sample[j] = scale * math.Exp(spread*z)
		}
		cases[i] = Case{Group: fmt.Sprint(i % 40), Actual: scale * math.Exp(spread*random.NormFloat64()), Forecast: NewForecast(sample)}
	}
	return cases
}

func TestForecastsThatAreRightAreFoundRight(t *testing.T) {
	const n = 4000
	c := Judge(perfect(n, 0.4))
	three := func(p float64) float64 { return 3 * math.Sqrt(p*(1-p)/n) } // standard errors of a share
	near(t, "inside 50 %", c.Inside50, 0.5, three(0.5))
	near(t, "inside 80 %", c.Inside80, 0.8, three(0.8))
	near(t, "median ratio", c.Ratio, 1, 3*0.4*math.Sqrt(math.Pi/2/n)) // standard error of the median of a normal
	near(t, "CRPS of the logarithm", c.CRPSLog, 0.4/math.Sqrt(math.Pi), 3*0.4*0.7/math.Sqrt(n))
	for bin, cases := range c.RankHistogram {
		near(t, fmt.Sprint("rank ", bin), float64(cases)/n, 0.1, three(0.1))
	}
	if c.Skill < 0.5 {
		t.Errorf("skill %.2f of a forecast that knows the scale", c.Skill)
	}
}

func TestForecastsTooNarrowAreFoundSo(t *testing.T) {
	cases := perfect(2000, 0.4)
	for i := range cases { // halve the spread about the median
		f := cases[i].Forecast.Log()
		mid := f.Quantiles(0.5)[0]
		for j := range f {
			f[j] = math.Exp(mid + (f[j]-mid)/2)
		}
		cases[i].Forecast = f
	}
	// A normal fact lies within ±1.2816/2 standard deviations 47.8 times in 100.
	near(t, "inside 80 %", Judge(cases).Inside80, 0.478, 0.034)
}

// Whole groups are drawn: with all values of a group alike, the interval of the mean is as wide as that
// of the group means alone.
func TestTheIntervalIsThatOfGroups(t *testing.T) {
	random := rand.New(rand.NewPCG(5, 6))
	var values, means []float64
	var groups []string
	for g := range 100 {
		x := random.NormFloat64()
		means = append(means, x)
		for range 20 {
			values, groups = append(values, x), append(groups, fmt.Sprint(g))
		}
	}
	ci := Interval(values, groups, stats.Mean[float64])
	_, sd := stats.MeanAndStdDev(means)
	near(t, "width", ci[1]-ci[0], 2*1.96*sd/10, 0.15*2*1.96*sd/10)
}

func TestOneGroupHasNoInterval(t *testing.T) {
	if ci := Interval([]float64{1, 2}, []string{"a", "a"}, stats.Mean[float64]); !math.IsNaN(ci[0]) {
		t.Errorf("an interval of one group: %v", ci)
	}
}

func TestTheForecastThatKnowsNothingIsWhatOtherGroupsHad(t *testing.T) {
	// Group a had 1, 3 and 7, group b 2: for 1, 3 and 7 the forecast is 2, for 2 it is {1, 3, 7}.
	got := sampleAlone([]float64{1, 3, 7, 2}, []string{"a", "a", "a", "b"})
	near(t, "CRPS", got, (1+1+5+1/3.0)/4, 1e-12) // {1, 3, 7} against 2: mean distance 7/3, less half of (2+4+6)/3
}

func TestClassesComeInOrderOfTheirNumbers(t *testing.T) {
	cases := perfect(4, 0.1)
	names := []string{"800 and more", "0 to 150", "1000 to 2000", "0 to 150"}
	var got []string
	for _, c := range Classes("depth", cases, func(i int) string { return names[i] }) {
		got = append(got, c.Class)
	}
	if want := "[0 to 150 800 and more 1000 to 2000]"; fmt.Sprint(got) != want {
		t.Errorf("%v, want %s", got, want)
	}
}
