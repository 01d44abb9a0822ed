package scenario

import (
	"math"
	"strings"
	"testing"

	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/scenario/lithology"
)

// withRate is the demonstration's plan with one rate stated otherwise.
func withRate(t *testing.T, setting string) *plan.Plan {
	t.Helper()
	return mustRead(t, "plan.yaml", DemonstrationText(), "rates."+setting)
}

func TestSpreadsAreHonouredExactly(t *testing.T) {
	const minute = 60
	cases := []struct {
		bench string
		want  map[float64]float64 // minutes by probability
	}{
		{"25 min", map[float64]float64{0.1: 25, 0.5: 25, 0.9: 25}},
		{"{value: 25 min}", map[float64]float64{0.1: 25, 0.9: 25}},
		{"{low: 20 min, mid: 25 min, high: 36 min}", map[float64]float64{0.1: 20, 0.5: 25, 0.9: 36}},
		{"{low: 1 min, mid: 10 min, high: 100 min, lowest: 0.5 min, highest: 200 min}", map[float64]float64{0.1: 1, 0.5: 10, 0.9: 100}},
		{"{shape: lognormal, median: 20 min, factor: 1.5}", map[float64]float64{0.1: 20 / 1.5, 0.5: 20, 0.9: 30}},
		{"{shape: uniform, lowest: 20 min, highest: 30 min}", map[float64]float64{0.1: 21, 0.5: 25, 0.9: 29}},
		// Triangle from 0 to 20 with its peak at 10: F(x) = x^2/200 below the peak.
		{"{shape: triangular, lowest: 0 min, mode: 10 min, highest: 20 min}", map[float64]float64{0.1: math.Sqrt(20), 0.5: 10, 0.9: 20 - math.Sqrt(20)}},
		// Weibull of shape 1 is exponential: x = -scale ln(1-p).
		{"{shape: weibull, scale: 20 min, shape_parameter: 1}", map[float64]float64{0.1: -20 * math.Log(0.9), 0.5: 20 * math.Ln2}},
		{"{shape: exponential, mean: 20 min}", map[float64]float64{0.5: 20 * math.Ln2, 0.9: 20 * math.Log(10)}},
		{"{quantiles: [{p: 0.1, value: 10 min}, {p: 50 %, value: 12 min}, {p: 0.9, value: 30 min}]}", map[float64]float64{0.05: 10, 0.1: 10, 0.5: 12, 0.9: 30, 0.95: 30}},
	}
	for _, c := range cases {
		q := withRate(t, "bench="+c.bench).Ship.Rates[rig.Bench]
		for p, want := range c.want {
			if got := q.Shape.Quantile(p) / minute; math.Abs(got-want) > 1e-9*want {
				t.Errorf("%s: %v at %v, want %v", c.bench, got, p, want)
			}
		}
		drawn := q.Compile()
		for _, p := range []float64{0.1, 0.5, 0.9} {
			if got, want := drawn.At(spread.Score(p)), q.Shape.Quantile(p); math.Abs(got-want) > 1e-6*want {
				t.Errorf("%s: drawn %v at %v, want %v", c.bench, got, p, want)
			}
		}
	}
}

func TestChancesStayBelowOneAndOthersAboveZero(t *testing.T) {
	p := withRate(t, "water_core={low: 50 %, mid: 80 %, high: 95 %}")
	if q := p.Ship.Rates[rig.WaterCore].Shape; !(q.Quantile(1-1e-9) < 1 && q.Quantile(1e-9) > 0) {
		t.Errorf("a chance reaches from %v to %v", q.Quantile(1e-9), q.Quantile(1-1e-9))
	}
	p = withRate(t, "connection={low: 2 min, mid: 4 min, high: 9 min}")
	if q := p.Ship.Rates[rig.Connection].Shape; !(q.Quantile(1e-9) > 0) {
		t.Errorf("a time reaches down to %v", q.Quantile(1e-9))
	}
}

func TestATypedRateReplacesTheShipsSpreadAndKeepsItsLevels(t *testing.T) {
	ship := builtIn().ship.Rates[rig.ExtendedDurationFactor]
	typed := withRate(t, "extended_duration_factor={low: 90 %, mid: 110 %, high: 140 %}").Ship.Rates[rig.ExtendedDurationFactor]
	if typed.Shares != ship.Shares || typed.Persistence != ship.Persistence || typed.Common != ship.Common {
		t.Errorf("levels %v, persistence %v, common %v are not the ship's", typed.Shares, typed.Persistence, typed.Common)
	}
	if got := typed.Shape.Quantile(0.9); math.Abs(got-1.4) > 1e-12 {
		t.Errorf("the spread was added to the ship's: %v", got)
	}
	if typed.Source != "--set: rates.extended_duration_factor" || typed.Text != "low 90 %, mid 110 %, high 140 %" {
		t.Errorf("source %q, text %q", typed.Source, typed.Text)
	}
}

func TestVariesSaysAtWhichLevelsTheSpreadLives(t *testing.T) {
	at := func(varies string) spread.Quantity {
		return withRate(t, "extended_duration_factor={low: 90 %, mid: 110 %, high: 140 %, "+varies+"}").Ship.Rates[rig.ExtendedDurationFactor]
	}
	if q := at("varies: hole"); q.Shares != spread.All(spread.Hole) || q.Persistence != 0 {
		t.Errorf("got %v, persistence %v", q.Shares, q.Persistence)
	}
	q := at("varies: {expedition: 0.3, hole: 0.4, run: 30 %}, persistence: 0.5, common: -0.2, source: a timed log")
	if want := (spread.Shares{0.3, 0, 0.4, 0.3}); q.Shares != want || q.Persistence != 0.5 || q.Common != -0.2 || q.Source != "a timed log" {
		t.Errorf("got %+v", q)
	}
}

func TestALayerKeepsWhatItDoesNotSayOtherwise(t *testing.T) {
	p := mustRead(t, "plan.yaml", DemonstrationText(), "sites[SB-01].layers[1].recovery.XCB=50 %")
	all, _ := lithology.BuiltIn()
	stock, _ := lithology.Named(all, "chalk")
	chalk := p.Sites[0].Layers[1].Lithology
	if got := chalk.Recovery[2].Median(); got != 0.5 {
		t.Errorf("XCB recovery %v, want 0.5", got)
	}
	if chalk.Recovery[2].Shares != stock.Recovery[2].Shares || chalk.Rate.Source != stock.Rate.Source {
		t.Error("the rest is not the lithology's")
	}
	limestone, _ := lithology.Named(all, "limestone")
	if rate := p.Sites[0].Layers[2].Lithology.Rate; rate.Persistence != limestone.Rate.Persistence || !strings.HasPrefix(rate.Source, "plan.yaml:") {
		t.Errorf("drilling rate has persistence %v, source %q", rate.Persistence, rate.Source)
	}
}
