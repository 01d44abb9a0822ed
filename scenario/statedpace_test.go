package scenario

import (
	"math"
	"strings"
	"testing"

	"coredays/model/rig"
)

// A pace of the piston cycle that a plan states is not made quicker where no other tool is used; without it, or where
// both are stated, the ship's or the plan's own figure holds.
func TestAStatedPaceHoldsAtAllSites(t *testing.T) {
	ship, err := Demonstration()
	if err != nil {
		t.Fatal(err)
	}
	text := string(DemonstrationText())
	for setting, want := range map[string]float64{"rates.piston_duration_factor=120 %": 1, "rates.piston_duration_factor=120 %;rates.piston_alone=70 %": 0.7, "rates.bench=30 min": ship.Ship.Rates[rig.PistonAlone].Median()} {
		p, err := WithSettings([]byte(text), "demonstration.yaml", strings.Split(setting, ";"))
		if err != nil {
			t.Fatal(err)
		}
		if got := p.Ship.Rates[rig.PistonAlone].Median(); math.Abs(got-want) > 1e-12 {
			t.Errorf("%s: %g, want %g", setting, got, want)
		}
	}
	if alone := ship.Ship.Rates[rig.PistonAlone].Median(); alone >= 1 {
		t.Errorf("the ship's own is %g", alone)
	}
}

// A layer's own rate is taken as it is; that of its lithology is the ground's.
func TestALayerWithADrillingRateIsStated(t *testing.T) {
	p, err := Read("plan.yaml", []byte(`version: 1
title: layers
sails: 2030-01-01T00:00Z
sea_days: 30 d
ports: {from: {name: A, position: 5S 110W}, to: {name: B, position: 5S 112W}}
sites:
  - name: S
    position: 6S 111W
    water_depth: 3000 m
    layers: [{bottom: 100 mbsf, lithology: chalk}, {bottom: 200 mbsf, lithology: chalk, drilling_rate: 20 m/h}, {bottom: 300 mbsf, lithology: basalt, rock_strength: 100 MPa}]
    holes: [{name: A, core: [{with: RCB, to: 300 mbsf}], drill_ahead_to: 60 mbsf}]
`))
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []bool{false, true, true} {
		if got := p.Sites[0].Layers[i].Stated; got != want {
			t.Errorf("layer %d stated %v, want %v", i, got, want)
		}
	}
}
