package main

import (
	"fmt"
	"math"
	"testing"
	"time"

	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"
)

func TestNormalScoresAreStandardNormalAndShareTies(t *testing.T) {
	random := seeded(6)
	x := make([]float64, 2000)
	for i := range x {
		x[i] = math.Max(0, random.Float64()-0.1)
	}
	z := normalScores(x)
	within(t, "mean", stat.Mean(z, nil), 0, 0.01)
	if sd := stat.StdDev(z, nil); sd < 0.9 || sd > 1 {
		t.Errorf("standard deviation %.3f, want just under 1: ties at zero flatten it", sd)
	}
	first := math.NaN()
	for i := range x {
		if x[i] == 0 && math.IsNaN(first) {
			first = z[i]
		}
		if x[i] == 0 && z[i] != first {
			t.Fatalf("equal values have scores %g and %g", first, z[i])
		}
	}
}

// inventCores draws recoveries from a uniform marginal of 0.2 to 1 with a known share of hole.
func inventCores(share float64) []Core {
	random := seeded(8)
	var cores []Core
	for h := range 250 {
		common := math.Sqrt(share) * random.NormFloat64()
		for n := range 12 {
			z := common + math.Sqrt(1-share)*random.NormFloat64()
			part := 0.2 + 0.8*distuv.UnitNormal.CDF(z)
			cores = append(cores, Core{Leg: fmt.Sprint(h / 10), Site: fmt.Sprint(h), Hole: fmt.Sprint(h), Tool: "X", Number: n, Cored: 9.5, Recovered: 9.5 * part})
		}
	}
	return cores
}

func TestRecoveryGeneratorIsRecoveredFromItsOwnCores(t *testing.T) {
	r := recoveryOf(inventCores(0.4), "X")
	// Correlation of the cores of 250 holes: standard error sqrt(2/250) x (share + (1-share)/12), Fisher, first order.
	stdErr := math.Sqrt(2.0/250) * (0.4 + 0.6/12)
	within(t, "share by moments", r.Shares[0]+r.Shares[1], 0.4, stdErr)
	for _, m := range r.Marginals {
		within(t, "calibrated share, "+m.Weight, m.HoleShare, 0.4, stdErr+0.02/3) // grid of 0.02
		within(t, "P50 of a core", m.Quantiles[9], 0.6, 0.8*0.5/math.Sqrt(250))
		within(t, "P90 of holes", m.Holewise.P90, r.Holewise.P90, 0.015)
		within(t, "P10 of holes", m.Holewise.P10, r.Holewise.P10, 0.015)
	}
}

func TestBlankRecoveryIsACoreThatBroughtNothing(t *testing.T) {
	if got := recovered(Core{Cored: 9.5, Recovered: math.NaN()}); got != 0 {
		t.Errorf("recovery %g, want 0", got)
	}
}

// Textbook case by hand: refusals at 10, 30, 40 m, stops at 20, 50 m.
// Survival: 4/5 after 10, 4/5 x 2/3 = 0.533 after 30, x 1/2 = 0.267 after 40.
func TestSurvivalCurveEqualsHandCalculation(t *testing.T) {
	stops := []Stop{{Depth: 10, Changed: true}, {Depth: 20}, {Depth: 30, Changed: true}, {Depth: 40, Changed: true}, {Depth: 50}}
	got := kaplanMeier(stops, 0.1, 0.4, 0.5, 0.9)
	if got[0] != 10 || got[1] != 30 || got[2] != 40 || !math.IsNaN(got[3]) {
		t.Errorf("quantiles %v, want 10, 30, 40 and none", got)
	}
}

func TestRefusalSpreadsAreRecoveredUnderCensoring(t *testing.T) {
	random := seeded(9)
	var stops []Stop
	for s := range 300 {
		site := 0.5 * random.NormFloat64()
		for range 3 {
			refusal := math.Exp(5 + site + 0.3*random.NormFloat64())
			target := math.Exp(5.2 + 0.6*random.NormFloat64())
			stops = append(stops, Stop{Site: fmt.Sprint(s), Depth: math.Min(refusal, target), Changed: refusal < target})
		}
	}
	r := refusalOf(stops)
	// About 530 refusals of 300 sites: errors of a mean, sd/sqrt(2 n) of a standard deviation, half again for the censoring.
	within(t, "mean ln", r.MedianLog, 5, 1.5*math.Hypot(0.5, 0.3/math.Sqrt(1.8))/math.Sqrt(300))
	within(t, "sd of sites", r.SDSite, 0.5, 1.5*0.5/math.Sqrt(600))
	within(t, "sd of holes", r.SDHole, 0.3, 1.5*0.3/math.Sqrt(2*330))
	within(t, "median by survival", r.Survival.P50, math.Exp(5), math.Exp(5)*1.25*1.5*0.583/math.Sqrt(300))
	if r.Alone.P50 > 0.95*math.Exp(5) {
		t.Errorf("changes alone have a median of %.0f m: they should refuse too early", r.Alone.P50)
	}
}

func TestPistonStopsTellRefusalFromAHardLayerAndFromTheTarget(t *testing.T) {
	core := func(hole, tool string, top float64) Core { return Core{Hole: hole, Tool: tool, Top: top, Cored: 9.5} }
	stops := pistonStops([]Core{
		core("A", "H", 0), core("A", "H", 9.5), core("A", "P", 19), core("A", "X", 20), core("A", "X", 29.5),
		core("B", "H", 0), core("B", "X", 9.5), core("B", "H", 19),
		core("C", "X", 100)})
	if len(stops) != 2 || !stops[0].Changed || stops[0].Depth != 19 || stops[1].Changed || stops[1].Depth != 28.5 {
		t.Errorf("stops %+v, want a refusal at 19 m and a stop at 28.5 m", stops)
	}
}

func TestArrivalLineIsRecoveredAndDrilledHolesAreApart(t *testing.T) {
	random, start := seeded(10), time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)
	var holes []Hole
	var cores []Core
	for h := range 120 {
		water, name := 300+5000*random.Float64(), fmt.Sprint(h)
		arrive := time.Duration((3 + 1.8*water/1000 + random.NormFloat64()) * float64(time.Hour))
		holes = append(holes, Hole{Leg: fmt.Sprint(h / 6), Site: name, Name: name, Order: 1, Holes: 1, Water: water, Start: start, End: start.Add(100 * time.Hour)})
		cores = append(cores, Core{Hole: name, Tool: "H", Top: 0, Cored: 5, OnDeck: start.Add(max(arrive, time.Hour))})
	}
	cores[0].Top = 150 // drilled ahead
	list, leftOut := visits(holes, cores)
	m := movesOf(list)
	if leftOut != 0 || m[0].All.N != 120 || m[1].All.N != 119 {
		t.Fatalf("%d left out, %d and %d holes; want 0, 120, 119", leftOut, m[0].All.N, m[1].All.N)
	}
	within(t, "constant h", m[1].Line.Value[0], 3, m[1].Line.StdErr[0])
	within(t, "h per km", m[1].Line.Value[1], 1.8, m[1].Line.StdErr[1])
}

func TestFailedStartsAreCountedByHoleSiteAndPlace(t *testing.T) {
	hole := func(site string, order, holes int, depth float64) Hole {
		return Hole{Leg: "1", Site: site, Order: order, Holes: holes, Penetration: depth, Cores: 1}
	}
	f := failedOf([]Hole{hole("a", 1, 3, 5), hole("a", 2, 3, 8), hole("a", 3, 3, 200), hole("b", 1, 1, 300), hole("c", 1, 1, math.NaN())})
	if f.Holes != 4 || f.Share != 0.5 || f.SitesWith != 0.5 || f.PerSite[2] != 1 || f.ByOrder.First != 1 || f.ByOrder.Last != 0 || f.AndNext != 0.5 {
		t.Errorf("%+v: want 2 of 4 holes, 1 of 2 sites, one of two after a failed hole", f)
	}
}
