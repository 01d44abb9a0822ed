package sim

import (
	"math"
	"slices"
	"testing"
	"time"

	"gonum.org/v1/gonum/stat"

	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/sea"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/sim/ship"
	"coredays/sim/simtest"
)

// seasonal is a sea whose height changes much from month to month.
func seasonal() (c sea.Climate) {
	for m := range c.Mean {
		c.Mean[m], c.Variation[m] = unit.Length(3+1.5*math.Cos(2*math.Pi*float64(m)/12)), 0.4
	}
	return c
}

// toldAt is what the crew is given at an issue, in scores, and what comes true, by lead.
func toldAt(s *expedition, issue int) (told, truth [ship.ForecastTimes]float64) {
	s.Clock = float64(issue * ship.IssueEvery)
	f := s.IssuedForecast()
	for i := range told {
		step := (issue*ship.IssueEvery + i*ship.ForecastEvery) / int(ship.SeaStep)
		told[i] = s.Sea.Waves.Score(s.Sea.Series[0].Day(step+s.Sea.Ahead), f.Height[i])
		truth[i] = s.Sea.Score(step)
	}
	return told, truth
}

// A channel with a skill of 0.6 at 48 h has 0.6^((lead/48 h)^2): 0.88 a day ahead, 0.32 three days ahead. The
// crew takes from it the best estimate: it correlates so with what comes, its variance is the square of
// that, and on average what comes is what was given. What it is off by is the same for all leads of an issue, and
// has nothing to do with that of the next.
func TestTheCrewIsToldTheBestEstimateOfTheChannel(t *testing.T) {
	const n = 5000
	p := simtest.OneSite(simtest.PistonHole("A", 100))
	p.Sites[0].Climate = seasonal()
	p.Ship.Rates[rig.ForecastHorizon], p.Ship.Rates[rig.ForecastSkill] = simtest.Just(48*simtest.Hours), simtest.Just(0.6)
	s := sailedTo(t, p)
	leads := map[int]float64{1: math.Pow(0.6, 1.0/256), 8: math.Pow(0.6, 0.25), 16: 0.6, 24: math.Pow(0.6, 2.25)} // of 3 h
	told, truth := map[int][]float64{}, map[int][]float64{}
	var errors [3][]float64 // two days ahead, three days ahead, two days ahead of the next issue
	for i := range n {
		s.begins(6, i)
		s.At = voyage.SitePlace(0)
		s.reachSite()
		says, is := toldAt(s, 3)
		for lead := range leads {
			told[lead], truth[lead] = append(told[lead], says[lead]), append(truth[lead], is[lead])
		}
		off := func(lead int) float64 {
			r := leads[lead]
			return (says[lead]/r - r*is[lead]) / math.Sqrt(1-r*r)
		}
		errors[0], errors[1] = append(errors[0], off(16)), append(errors[1], off(24))
		says, is = toldAt(s, 4)
		errors[2] = append(errors[2], off(16))
	}
	for lead, r := range leads {
		correlation, variance := stat.Correlation(told[lead], truth[lead], nil), stat.Variance(told[lead], nil)
		_, slope := stat.LinearRegression(told[lead], truth[lead], nil, false)
		if math.Abs(correlation-r) > 4*(1-r*r)/math.Sqrt(n) || math.Abs(variance-r*r) > 4*r*r*math.Sqrt(2.0/n) || math.Abs(slope-1) > 4*math.Sqrt(1/(r*r)-1)/math.Sqrt(n) {
			t.Errorf("%d h ahead: correlation %.3f, variance %.3f, slope %.3f; want %.3f, %.3f, 1", 3*lead, correlation, variance, slope, r, r*r)
		}
	}
	for i, e := range errors[0] {
		if math.Abs(e-errors[1][i]) > 1e-3 {
			t.Fatalf("off by %.4f two days ahead, by %.4f three days ahead: not smooth", e, errors[1][i])
		}
	}
	if got := stat.Correlation(errors[0], errors[2], nil); math.Abs(got) > 4/math.Sqrt(n) {
		t.Errorf("the errors of two issues correlate by %.3f", got)
	}
	if v := stat.Variance(errors[0], nil); math.Abs(v-1) > 4*math.Sqrt(2.0/n) {
		t.Errorf("errors have a variance of %.3f, want 1", v)
	}
}

// Issued at noon and midnight: each time what is now, and what comes from then on. Between, nothing is news.
func TestTheForecastIsReadAnewTwiceADay(t *testing.T) {
	p := simtest.OneSite(simtest.PistonHole("A", 100))
	p.Sites[0].Climate = seasonal()
	p.Ship.Rates[rig.ForecastSkill] = simtest.Just(0.2)
	s := sailedTo(t, p)
	tellsNow := func(clock float64) bool {
		s.Clock = clock
		return math.Abs(s.IssuedForecast().Height[0]/s.Sea.Now(int(clock/ship.SeaStep))-1) < 1e-9
	}
	first := s.IssuedForecast().Height
	for _, h := range []float64{1, 6, 11.9} {
		if s.Clock = h * simtest.Hours; s.IssuedForecast().Height != first {
			t.Errorf("told anew %.1f h after the issue", h)
		}
	}
	for _, h := range []float64{12, 24, 36} {
		if before := s.Forecast.Height; !tellsNow(h*simtest.Hours) || s.Forecast.Height == before {
			t.Errorf("at hour %g the crew is not told what is now", h)
		}
	}
}

// The stated times are 3 h apart. What the crew makes of them, of a sea given hour by hour.
func TestWhatTheCrewMakesOfAForecastIsCountedByHand(t *testing.T) {
	tests := []struct {
		name              string
		heights           []float64
		clock             float64 // h
		wait, above, most float64 // h until 5 m at most, h above 5 m, m within 12 h
	}{
		{"7 m until hour 60", append(repeated(7, 60), 1), 0, 60, 19 * 3, 7},                           // stated at 3, 6, ... 57 h: 19 times
		{"the same from hour 10 on", append(repeated(7, 60), 1), 10, 50, 16 * 3, 7},                   // at 12, 15, ... 57 h
		{"7 m for ever", []float64{7}, 0, 72, 28 * 3, 7},                                              // stated for 84 h
		{"7 m for two hours only", append(repeated(7, 2), 1), 1, 2, 0, 7},                             // the next stated is hour 3; it is 7 m now
		{"a storm in 12 h", slices.Concat(repeated(1, 12), repeated(8, 9), []float64{1}), 0, 3, 9, 8}, // at 12, 15, 18 h
		{"a storm in 18 h", slices.Concat(repeated(1, 16), repeated(8, 9), []float64{1}), 0, 3, 9, 1}, // stated at 18, 21, 24 h
	}
	for _, test := range tests {
		s := stormy(t, test.heights...)
		s.Clock = test.clock * simtest.Hours
		s.MeetSea()
		if got := s.ForecastWait(5); !simtest.Near(got, test.wait*simtest.Hours) {
			t.Errorf("%s: a wait of %.1f h, by hand %g", test.name, got/simtest.Hours, test.wait)
		}
		if got := s.ForecastAbove(5); !simtest.Near(got, test.above*simtest.Hours) {
			t.Errorf("%s: %.1f h above 5 m, by hand %g", test.name, got/simtest.Hours, test.above)
		}
		if got := s.ForecastMaximum(12 * simtest.Hours); got != test.most {
			t.Errorf("%s: %g m at most in 12 h, by hand %g", test.name, got, test.most)
		}
	}
}

// Ships that sail two and a half days apart and lie at one site on one date are given the same of it: the season and
// the error of the channel are those of the date.
func TestShipsAtOnePlaceAndDateAreToldTheSame(t *testing.T) {
	early := simtest.OneSite(simtest.PistonHole("A", 100))
	early.Sites[0].Climate = seasonal()
	late := *early
	late.Sails = early.Sails.Add(60 * time.Hour)
	ships := map[string]*expedition{}
	for name, p := range map[string]*plan.Plan{"early": early, "late": &late} {
		s := newExpedition(simtest.Compiled(t, p).ByTheSeaFrom(early.Sails))
		s.begins(3, 7)
		s.At = voyage.SitePlace(0)
		s.reachSite()
		ships[name] = s
	}
	for issue := range 40 {
		ships["early"].Clock, ships["late"].Clock = float64(issue+5)*ship.IssueEvery, float64(issue)*ship.IssueEvery
		a, b := ships["early"].IssuedForecast().Height, ships["late"].IssuedForecast().Height
		for i := range a {
			if math.Abs(a[i]/b[i]-1) > 1e-9 {
				t.Fatalf("issue %d, %d h ahead: %g m and %g m", issue, 3*i, a[i], b[i])
			}
		}
	}
}
