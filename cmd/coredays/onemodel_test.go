package main

import (
	"strings"
	"testing"

	"coredays/model/chance"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/voyage"
	"coredays/scenario"
	"coredays/scenario/records"
	"coredays/sim"
	"coredays/sim/hindcast"
	"coredays/sim/statistics"
)

// An invented site as a record says it, its piston cores whole strokes and the 4.75 m of a first one from 4.75 m above the sea floor, and as a planner would write it down: what a record does not tell is
// switched off on both sides.
const (
	recordedSite = `program,leg,site,hole,hole_order,holes_at_site,latitude,longitude,water_depth_m,penetration_m,cored_m,n_cores,n_apc,n_hlapc,n_xcb,n_rcb,n_other,cored_apc_m,cored_xcb_m,cored_rcb_m,cored_other_m,start,end
X,1,S,A,1,2,-48.5,158,3000,500,500,53,12,0,41,0,0,109.25,390.75,0,0,2030-01-01T00:00,2030-01-05T12:00
X,1,S,B,2,2,-48.5,158,3000,109.25,109.25,12,12,0,0,0,0,109.25,0,0,0,2030-01-05T12:00,2030-01-06T12:00
`
	plannedSite = `version: 1
title: One model
sails: 2030-01-01T00:00Z
sea_days: 100 d
ports: {from: {name: port, position: 48.5S 158E}, to: {name: port, position: 48.5S 158E}}
in_port_before_sailing: 0 d
rates: {pilotage: 0 h, approach: 0 h, securing: 30 min, lost_bha: 0 %, funnel_lost: 0 %, extended_least_rate: 0.02 m/h, layer_depth: 100 %}
sites:
  - name: S
    position: 48.5S 158E
    water_depth: 3000 m
    approved_to: 500 mbsf
    layers: [{bottom: 500 mbsf, lithology: nannofossil ooze, side_shear: 0.001 kPa/m}]
    holes:
      - {name: A, core: [{with: APC, to: 109.25 mbsf}, {with: XCB, to: 500 mbsf}], reentry: free-fall funnel}
      - {name: B, core: [{with: APC, to: 109.25 mbsf}], reentry: free-fall funnel}
    refusal: {overpull: 450 klbf, partial_strokes: 20}
`
)

// recorded is the plan that a hindcast makes of the record, where the record leaves nothing open: its years are those
// of the ship, nothing was done but coring, and the ground is the one of the plan.
func recorded(t *testing.T, of *plan.Plan) *plan.Plan {
	t.Helper()
	sites, out, err := records.ReadHoles("holes.csv", strings.NewReader(recordedSite))
	if err != nil || len(sites) != 1 {
		t.Fatalf("%d sites, left out %v, %v", len(sites), out, err)
	}
	model, faults := records.Model()
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	model.Eras, model.Work = nil, [records.UnrecordedClasses]records.Sometimes{}
	model.Ship.Rates[rig.Securing] = of.Ship.Rates[rig.Securing] // in storms too
	for i := range model.Ground {
		model.Ground[i] = of.Sites[0].Layers[0].Lithology
	}
	p, err := model.Plan(sites[0], records.Programme)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// What a hindcast is scored on is what a plan gets: the days of the site are the same to the last bit.
func TestHindcastAndSimulateAreOneModel(t *testing.T) {
	const replications = 200
	planned, err := scenario.Read("plan.yaml", []byte(plannedSite))
	if err != nil {
		t.Fatal(err)
	}
	planned.Ship.Rates[rig.Securing] = spread.Just(0) // a visit ends before it, and the sea may stop it
	voyages, errs := voyage.CompileAll([]*plan.Plan{planned, recorded(t, planned)})
	for _, err := range errs {
		if err != nil {
			t.Fatal(err)
		}
	}
	days := hindcast.Sail(t.Context(), voyages[1:], []string{"X 1"}, sim.Run{Seed: 1, Replications: replications}).OnSite[0]
	r := sim.Replicate(t.Context(), voyages[0], sim.Run{Seed: chance.SeedOf(1, "X 1"), Replications: replications})
	arrived, left := r.Column(r.Unconstrained, r.Layout.Site(0, statistics.SiteArrived)), r.Column(r.Unconstrained, r.Layout.Site(0, statistics.SiteLeft))
	for n := range replications {
		if got, want := left[n], days[n]; got != want || arrived[n] != 0 {
			t.Errorf("replication %d: simulate has %.9f h on site from %.9f h on, hindcast %.9f h", n, left[n]/3600, arrived[n]/3600, want/3600)
		}
	}
}
