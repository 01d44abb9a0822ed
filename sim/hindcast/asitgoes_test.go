package hindcast_test

import (
	"math"
	"testing"
	"time"

	"coredays/model/coring"
	"coredays/model/record"
	"coredays/model/score"
	"coredays/model/spread"
	"coredays/sim/hindcast"
)

// normal is the standard normal distribution.
type normal struct{}

func (normal) Quantile(p float64) float64 { return spread.Score(p) }

// legOf are sites of a leg one after the other, with forecasts of 10 d and a standard deviation of 2, and what came true.
func legOf(tools []coring.Tool, actual []float64) (sites []record.Site, cases []score.Case) {
	var sample []float64
	for i := range 2000 {
		sample = append(sample, 10+2*spread.Score((float64(i)+0.5)/2000))
	}
	for i, days := range actual {
		h := record.Hole{Start: time.Date(2030, 1, 1+20*i, 0, 0, 0, 0, time.UTC), End: time.Date(2030, 1, 11+20*i, 0, 0, 0, 0, time.UTC)}
		h.Cores[tools[i]] = 5
		sites = append(sites, record.Site{Program: "P", Leg: "1", Name: string(rune('a' + i)), Holes: []record.Hole{h}})
		cases = append(cases, score.Case{Group: "P 1", Actual: days, Forecast: score.NewForecast(sample)})
	}
	return sites, cases
}

// Two sites that took a standard deviation longer, of scores that correlate r: the third has the mean 2r/(1+r) and the variance
// 1 - 2r²/(1+r) of a score (conditional normal with equal correlations, by hand). With other tools, of whose leg share c² is common, r
// between the kinds is c² times that: mean 2c²r/(1+r), variance 1 - 2(c²r)²/(1+r).
func TestTheThirdSiteIsToldOfTheTwoBefore(t *testing.T) {
	const r, c = 0.3, 0.8
	inLeg := spread.Quantity{Shape: normal{}, Shares: spread.Shares{r, 0, 0, 1 - r}, Common: c}
	for _, x := range []struct {
		third coring.Tool
		load  float64
	}{{coring.XCB, r}, {coring.RCB, c * c * r}} {
		sites, cases := legOf([]coring.Tool{coring.APC, coring.XCB, x.third}, []float64{12, 12, 11})
		told, err := hindcast.AsItGoes(sites, cases, inLeg)
		if err != nil || len(told) != 1 || told[0].Site != "c" || told[0].Place != 3 {
			t.Fatalf("%+v, %v", told, err)
		}
		mean, sd := 2*x.load/(1+r), math.Sqrt(1-2*x.load*x.load/(1+r))
		for _, q := range []struct{ got, at float64 }{{told[0].Days.P10, -1.28155}, {told[0].Days.P50, 0}, {told[0].Days.P90, 1.28155}} {
			if want := 10 + 2*(mean+sd*q.at); math.Abs(q.got-want) > 0.01 {
				t.Errorf("third site by %v: %.3f d, by hand %.3f", x.third, q.got, want)
			}
		}
		if u := cases[2].Forecast.CRPS(11); told[0].Untold != u {
			t.Errorf("untold %.4f d, want %.4f", told[0].Untold, u)
		}
	}
}

// A site that was still being drilled when the ship came to another one tells nothing of it.
func TestASiteNotYetLeftTellsNothing(t *testing.T) {
	sites, cases := legOf([]coring.Tool{coring.APC, coring.APC, coring.APC}, []float64{12, 14, 11})
	sites[1].Holes[0].End = sites[2].Holes[0].Start.Add(time.Hour)
	inLeg := spread.Quantity{Shape: normal{}, Shares: spread.Shares{0.3, 0, 0, 0.7}}
	told, err := hindcast.AsItGoes(sites, cases, inLeg)
	if err != nil || len(told) != 1 {
		t.Fatal(told, err)
	}
	if want := 10 + 2*0.3; math.Abs(told[0].Days.P50-want) > 0.01 { // of one site: r times its score
		t.Errorf("%.3f d, want %.3f of the one site that was left", told[0].Days.P50, want)
	}
}
