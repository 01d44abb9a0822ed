package basis_test

import (
	"context"
	"math"
	"strings"
	"testing"

	"coredays/model/basis"
	"coredays/model/rig"
	"coredays/model/voyage"
	"coredays/scenario"
	"coredays/sim"
	"coredays/sim/sensitivity"
)

const plain = `version: 1
title: Plain
sails: 2027-02-01T08:00Z
sea_days: 30 d
trouble: off
ports: {from: {name: Port Aldous, position: 0N 150W}, to: {name: Port Merrin, position: 0N 140W}}
ship: riserless drillship
rates:
  piston_duration_factor: {low: 50 %, mid: 100 %, high: 180 %, varies: expedition}
  sailing_speed: 11 kn
string: {collars: 8}
sites:
  - name: SB-01
    position: 0N 145W
    water_depth: 3420 m
    approved_to: 300 mbsf
    layers: [{bottom: 300 mbsf, lithology: nannofossil ooze, side_shear: 0.1 kPa/m}]
    holes: [{name: A, core: [{with: APC, to: 300 mbsf}]}, {name: B, core: [{with: APC, to: 300 mbsf}]}]
`

func plainVoyage(t *testing.T) *voyage.Voyage {
	t.Helper()
	p, err := scenario.Read("plain.yaml", []byte(plain))
	if err != nil {
		t.Fatal(err)
	}
	v, err := voyage.Compile(p)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

func TestEveryNumberHasAFigureAndASource(t *testing.T) {
	p, err := scenario.Demonstration()
	if err != nil {
		t.Fatal(err)
	}
	v, err := voyage.Compile(p)
	if err != nil {
		t.Fatal(err)
	}
	entries := basis.Of(v)
	if len(entries) < int(rig.Rates)+100 {
		t.Errorf("%d numbers only", len(entries))
	}
	for _, e := range entries {
		if math.IsNaN(e.Mid) || !(e.Low <= e.Mid && e.Mid <= e.High) || e.Source == "" || e.Name == "" || e.Group == "" {
			t.Errorf("%+v", e)
		}
	}
}

func TestWhatTheScenarioStatesIsToldWithItsLine(t *testing.T) {
	for name, want := range map[string]struct {
		from   basis.From
		source string
		mid    float64
	}{
		"sea days":                    {basis.Stated, "plain.yaml:4", 30},
		"piston_duration_factor":      {basis.Stated, "plain.yaml:9", 100},
		"sailing_speed":               {basis.Stated, "plain.yaml:10", 11},
		"collars of an assembly":      {basis.Stated, "plain.yaml:11", 8},
		"water depth below sea level": {basis.Stated, "plain.yaml:15", 3420},
		"side shear for each metre down, nannofossil ooze to 300 mbsf": {basis.Stated, "plain.yaml:17", 0.1},
	} {
		e := named(t, basis.Of(plainVoyage(t)), name)
		if e.From != want.from || e.Source != want.source || math.Abs(e.Mid-want.mid) > 1e-9*want.mid {
			t.Errorf("%s: %v from %q, %g; want %+v", name, e.From, e.Source, e.Mid, want)
		}
	}
}

func TestDefaultsAreToldAsSuch(t *testing.T) {
	entries := basis.Of(plainVoyage(t))
	if e := named(t, entries, "barrels"); e.From != basis.OfShip || !e.Memory {
		t.Errorf("%+v", e)
	}
	if e := named(t, entries, "drilling rate, nannofossil ooze to 300 mbsf"); e.From != basis.BuiltIn || !e.Spread() {
		t.Errorf("%+v", e)
	}
	if e := named(t, entries, "derrick"); e.Unit != "klbf" || math.Abs(e.Mid-1300) > 1e-6 {
		t.Errorf("%+v", e)
	}
}

// 60,000 ft lb are 81.3 kN m, 30,980 are 42.0; the source of the first is partly from memory.
func TestGearAndConnectionsAreToldOneByOne(t *testing.T) {
	entries := basis.Of(plainVoyage(t))
	for name, want := range map[string]basis.Entry{
		"position keeping":                            {Mid: 6, Unit: "m", From: basis.OfShip, Memory: true},
		"compensator: rated load":                     {Mid: 800, Unit: "klbf", From: basis.OfShip},
		"compensator: stroke":                         {Mid: 6.1, Unit: "m", From: basis.OfShip, Memory: true},
		"make-up torque of the tongs":                 {Mid: 81.349, Unit: "kN m", From: basis.OfShip, Memory: true},
		"rotating torque":                             {Mid: 40.675, Unit: "kN m", From: basis.OfShip, Memory: true},
		"make-up torque of 5-1/2 FH, 7 x 4.125 in":    {Mid: 42.003, Unit: "kN m", From: basis.BuiltIn, Memory: true},
		"make-up torque of 6-5/8 FH, 8.25 x 4.125 in": {Mid: 76.604, Unit: "kN m", From: basis.BuiltIn, Memory: true},
	} {
		e := named(t, entries, name)
		if math.Abs(e.Mid/want.Mid-1) > 1e-4 || e.Unit != want.Unit || e.From != want.From || e.Memory != want.Memory {
			t.Errorf("%+v, want %+v", e, want)
		}
	}
}

func named(t *testing.T, entries []basis.Entry, name string) basis.Entry {
	t.Helper()
	for _, e := range entries {
		if e.Name == name {
			return e
		}
	}
	t.Fatalf("no %q", name)
	return basis.Entry{}
}

// With a pace of coring that alone varies widely from expedition to expedition, it is what matters.
func TestWhatVariesWithTheExpeditionMattersMost(t *testing.T) {
	v := plainVoyage(t)
	entries := basis.Of(v)
	results := sim.Replicate(context.Background(), v, sim.Run{Seed: 3, Replications: 400})
	basis.Weigh(entries, sensitivity.Sensitivity(t.Context(), results))
	if first := entries[0]; first.Name != "piston_duration_factor" || !(first.Share > 0.5 && first.Share <= 1) {
		t.Errorf("%s first with %g", first.Name, first.Share)
	}
	if e := named(t, entries, "sailing_speed"); !math.IsNaN(e.Share) {
		t.Errorf("what has no spread has a share of %g", e.Share)
	}
	most := 1.0
	for _, e := range entries {
		if math.IsNaN(e.Share) {
			most = -1
			continue
		}
		if e.Share > most || e.Share < 0 || strings.HasPrefix(e.Group, "string") {
			t.Errorf("%s has %g after %g", e.Name, e.Share, most)
		}
		most = e.Share
	}
}

// What the numbers have of a cause is part of what the cause has as a driver, and bears its name. The rest is
// random stream, so that only noise can make it more.
func TestSharesOfNumbersArePartsOfTheDrivers(t *testing.T) {
	p, err := scenario.Demonstration()
	if err != nil {
		t.Fatal(err)
	}
	v, err := voyage.Compile(p)
	if err != nil {
		t.Fatal(err)
	}
	entries := basis.Of(v)
	results := sim.Replicate(context.Background(), v, sim.Run{Seed: 3, Replications: 1000})
	basis.Weigh(entries, sensitivity.Sensitivity(t.Context(), results))
	left, all := map[string]float64{}, 0.0
	for _, d := range results.Summary().Drivers {
		left[d.Name] = d.Share
		all += d.Share
	}
	if math.Abs(all-1) > 1e-9 {
		t.Errorf("drivers have %g together", all)
	}
	for _, e := range entries {
		sum := 0.0
		for _, c := range e.Causes {
			if _, known := left[c.Name]; !known && math.Abs(c.Share) > 1e-12 {
				t.Errorf("%s lies in %s, which is no driver", e.Name, c.Name)
			}
			left[c.Name] -= c.Share
			sum += c.Share
		}
		if e.Share > 0 && math.Abs(sum-e.Share) > 1e-9 {
			t.Errorf("%s has %g, its parts %g", e.Name, e.Share, sum)
		}
	}
	for name, share := range left {
		if share < -0.02 {
			t.Errorf("numbers have %g more of %s than it has", -share, name)
		}
	}
	if sum := basis.Together(entries); sum < 0.2 || sum > 0.6 {
		t.Errorf("numbers have %g together", sum)
	}
}

// A sea of 2 m on average with a standard deviation of 1 m is lognormal with sigma² = ln 1.25: even 2/√1.25 = 1.789 m,
// one in ten below 0.976 m, one in ten above 3.277 m.
func TestTheSeaIsToldAsTheLognormalOfItsMoments(t *testing.T) {
	v := plainVoyage(t)
	for m := range 12 {
		v.Plan.Sites[0].Climate.Mean[m], v.Plan.Sites[0].Climate.Variation[m] = 2, 0.5
	}
	e := named(t, basis.Of(v), "significant wave height, February")
	for what, c := range map[string][2]float64{"low": {e.Low, 0.976}, "even": {e.Mid, 1.789}, "high": {e.High, 3.277}} {
		if math.Abs(c[0]-c[1]) > 0.001 {
			t.Errorf("%s %.4f m, by hand %g m", what, c[0], c[1])
		}
	}
}
