package sea

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/stat"

	"coredays/model/unit"
)

func TestToldAndTrueScoreCorrelateAsStated(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 8))
	f := FiveDays()
	const n = 200_000
	for _, lead := range []unit.Duration{0, unit.Day, 3 * unit.Day, 5 * unit.Day, 10 * unit.Day} {
		truth, told := make([]float64, n), make([]float64, n)
		for i := range truth {
			truth[i] = r.NormFloat64()
			told[i] = f.Issued(truth[i], r.NormFloat64(), lead)
		}
		near(t, "correlation", stat.Correlation(truth, told, nil), f.Correlation(lead), 0.01) // standard error at most 0.0022
		near(t, "variance", stat.Variance(told, nil), 1, 0.015)                               // standard error 0.0032
	}
}

func TestPerfectForecastTellsTheTruth(t *testing.T) {
	f := Forecast{Horizon: unit.Day, Skill: 1}
	for _, lead := range []unit.Duration{0, unit.Hour, 100 * unit.Day} {
		near(t, "told", f.Issued(1.7, -3, lead), 1.7, 0)
	}
}

func TestForecastWithoutSkillTellsTheClimateOnly(t *testing.T) {
	f := Forecast{Horizon: unit.Day}
	near(t, "told of tomorrow", f.Issued(1.7, -0.4, unit.Day), -0.4, 0)
	near(t, "told of now", f.Issued(1.7, -0.4, 0), 1.7, 0)
}

func TestForecastFadesFromTruthThroughItsSkillToNothing(t *testing.T) {
	f := FiveDays()
	near(t, "at no lead", f.Correlation(0), 1, 0)
	near(t, "an hour ahead", f.Correlation(unit.Hour), 1, 1e-4)
	near(t, "at the horizon", f.Correlation(5*unit.Day), 0.8, 1e-12)
	near(t, "four horizons ahead", f.Correlation(20*unit.Day), math.Pow(0.8, 16), 1e-12) // 0.028
	last := 1.0
	for lead := unit.Day; lead < 30*unit.Day; lead += unit.Day {
		r := f.Correlation(lead)
		if !(r < last && r > 0) {
			t.Errorf("correlation %g at %g d after %g", r, lead.Days(), last)
		}
		last = r
	}
}

func TestImpossibleForecastIsRefused(t *testing.T) {
	for _, bad := range []Forecast{{}, {Horizon: -1, Skill: 0.5}, {Horizon: 1, Skill: 1.1}, {Horizon: 1, Skill: -0.1}, {Horizon: 1, Skill: math.NaN()}} {
		if bad.Check() == nil {
			t.Errorf("%v accepted", bad)
		}
	}
	if err := FiveDays().Check(); err != nil {
		t.Error(err)
	}
}
