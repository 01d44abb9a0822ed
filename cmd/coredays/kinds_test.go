package main

import (
	"context"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"coredays/model/activity"
	"coredays/model/check"
	"coredays/model/voyage"
	"coredays/scenario"
	"coredays/sim"
)

// kinds of programmes: what a ship does in each and nowhere else, what she has no cause to do, and of what the
// check warns.
var kinds = map[string]struct {
	does, spares []activity.Kind
	sites        int
	caution      string
}{
	"legacy_basalt": {does: []activity.Kind{activity.Task, activity.WashDown, activity.WashBarrel, activity.CameraRun, activity.Stab, activity.CutCore, activity.RunString}, spares: []activity.Kind{activity.WaterCore, activity.DrillAhead}, sites: 1, caution: "radioactive sources"},
	"shallow_shelf": {does: []activity.Kind{activity.ShootPiston, activity.CutCore, activity.OffsetMove}, sites: 1, caution: "time to drift out of the station circle"},
	"high_latitude": {does: []activity.Kind{activity.ShootPiston, activity.CutCore}, sites: 1, caution: "time in months with sea ice"},
	"bare_rock":     {does: []activity.Kind{activity.Task, activity.FailedStart, activity.CutCore}, spares: []activity.Kind{activity.ShootPiston, activity.Survey}, sites: 1, caution: "sediment above basalt to bury the collars"},
	"three_holes":   {does: []activity.Kind{activity.ShootPiston, activity.DrillAhead, activity.CutCore}, sites: 1},
	"deep_sediment": {does: []activity.Kind{activity.ShootPiston, activity.DrillAhead, activity.CutCore, activity.RunString}, sites: 1, caution: "radioactive sources"},
	"double_piston": {does: []activity.Kind{activity.ShootPiston, activity.OffsetMove}, spares: []activity.Kind{activity.CutCore, activity.DrillAhead}, sites: 1},
	"observatory":   {does: []activity.Kind{activity.JetCasing, activity.CementCasing, activity.DrillShoe, activity.Task, activity.FrailTask}, sites: 1},
	"possible_gas":  {does: []activity.Kind{activity.ShootPiston, activity.AwaitResults, activity.CementPlug}, sites: 1, caution: "sand beneath other sediment"},
	"transect":      {does: []activity.Kind{activity.ShootPiston, activity.Call, activity.Passage}, spares: []activity.Kind{activity.CutCore}, sites: 5},
}

func TestTenKindsOfProgrammesRun(t *testing.T) {
	if testing.Short() {
		t.Skip("simulates many expeditions")
	}
	files, err := filepath.Glob("../../testdata/scenarios/kinds/*.yaml")
	if err != nil || len(files) != len(kinds) {
		t.Fatalf("%d scenarios, %d kinds: %v", len(files), len(kinds), err)
	}
	for _, file := range files {
		name := strings.TrimSuffix(filepath.Base(file), ".yaml")
		t.Run(name, func(t *testing.T) {
			p, err := scenario.Open(file)
			if err != nil {
				t.Fatal(err)
			}
			v, err := voyage.Compile(p)
			if err != nil {
				t.Fatal(err)
			}
			kind := kinds[name]
			warned := kind.caution == ""
			for _, f := range check.Plan(v, sim.Estimate(v)) {
				if f.Verdict == check.Stop {
					t.Errorf("stopped: %s (%g, limit %g)", f.What, f.Value, f.Limit)
				}
				warned = warned || f.Verdict == check.Caution && strings.HasPrefix(f.What, kind.caution)
			}
			if !warned {
				t.Errorf("no caution %q", kind.caution)
			}
			did, sites := map[activity.Kind]bool{}, map[string]bool{}
			for n := range 6 { // a hole may be lost before it is logged
				for _, e := range sim.Diary(context.Background(), v, 1, n, false).Entries {
					did[e.Kind] = true
					sites[e.Place.Site] = true
				}
			}
			delete(sites, "")
			if len(sites) != kind.sites {
				t.Errorf("works at %d sites, wanted %d", len(sites), kind.sites)
			}
			for k := range activity.Kinds {
				if slices.Contains(kind.does, k) && !did[k] || slices.Contains(kind.spares, k) && did[k] {
					t.Errorf("%s: %v", k, did[k])
				}
			}
		})
	}
}
