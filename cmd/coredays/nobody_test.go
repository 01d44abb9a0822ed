package main

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"time"

	"coredays/scenario"
)

// Plans that nobody can mean, as settings of the starter, with a part of what is said of each. Most are slips of a
// unit, a decimal point or a key.
var nobodyMeans = []struct{ setting, said string }{
	{"rates={breakdown_every: 1 h}", "from 0.5 d"},
	{"rates={repair_time: 15 d}", "at most half the time between breakdowns"},
	{"rates={breakdown_every: 13 h, repair_time: 12 h}", "at most half the time between breakdowns"},
	{"sites[0].not_after=2026-12-31T00:00Z", "a date after sailing"},
	{"sites[0].not_before=9999-01-01T00:00Z", "a year from 1950 to 2150"},
	{"sites[0].not_before=2031-01-01T00:00Z", "a date before the sea days end"},
	{"sites[0].unusable={because: ice, every: 20 min, lasts: 6 h}", "from 6 h"},
	{"sites[0].unusable={because: ice, every: 1 s, lasts: 1 s}", "from 6 h"},
	{"sites[0].unusable={because: ice, every: 1 d, lasts: 3 d}", "no longer than the time between two closings"},
	{"sites[0].unusable={because: ice, every: 9 d, lasts: 1 s}", "from 0.5 h"},
	{"sites[0].cap=1 s", "from 3 h"},
	{"sites[0].cap=10 min", "from 3 h"},
	{"sites[0].cap=-9 d", "from 3 h"},
	{"sea_days=1 min", "from 0.25 d"},
	{"sea_days=5600 d", "to 400 d"},
	{"sails=0000-01-14T08:00Z", "a year from 1950 to 2150"},
	{"sails=1500-01-14T08:00Z", "a year from 1950 to 2150"},
	{"sails=9999-01-14T08:00Z", "a year from 1950 to 2150"},
	{"rates={sailing_speed: 1e-9 kn}", "from 1 kn"},
	{"rates={sailing_speed: 200 kn}", "kn"},
	{"rates={sailing_speed: {low: 1 kn, mid: 11 kn, high: 30 kn}}", "a narrower spread"},
	{"rates={hanging_speed: 1e-6 kn}", "from 0.05 kn"},
	{"rates={tripping: 0.01 stands/h}", "from 1 stands/h"},
	{"rates={tripping: 2200 stands/h}", "to 100 stands/h"},
	{"rates={tripping_in_hole: 1e-5 stands/h}", "from 0.5 stands/h"},
	{"rates={stand_length: 2.85 cm}", "from 5 m"},
	{"rates={joint_length: 1 mm}", "from 3 m"},
	{"rates={connection: 6 d}", "to 1440 min"},
	{"rates={connection: 60 d}", "to 1440 min"},
	{"rates={connection: {shape: lognormal, median: 6 min, factor: 1000000}}", "a narrower spread"},
	{"rates={repair_time: {shape: lognormal, median: 6 h, factor: 1000}}", "a narrower spread"},
	{"rates={piston_wire: 1e-6 m/min}", "from 6 m/min"},
	{"rates={logging_speed: 1 m/h}", "from 20 m/h"},
	{"rates={logging_wire: 1 m/h}", "from"},
	{"rates={camera_speed: 1 m/h}", "from"},
	{"rates={bit_life: 1 s}", "from 1 h"},
	{"rates={rig_service_every: 1 s}", "from 1 h"},
	{"rates={line_work: 1e-6 ton-mile}", "from"},
	{"rates={piston_pace: 1e-6 %}", "from 10 %"},
	{"rates={piston_pace: 100000 %}", "to 1000 %"},
	{"rates={barrels: 0}", "from 1"},
	{"rates={barrels: 1.5}", "whole number"},
	{"rates={stuck_chance: 120 %}", "%"},
	{"rates={layer_depth: 0.001 %}", "from 10 %"},
	{"sites[0].water_depth=0 m", "above 0 m"},
	{"sites[0].water_depth=-3420 m", "above 0 m"},
	{"sites[0].water_depth=34200 m", "at most 11000 m"},
	{"sites[0].water_depth=3420", "unit"},
	{"sites[0].position=48N 400E", "position"},
	{"sites[0].position=98N 40E", "position"},
	{"sites[0].approved_to=50 km", "mbsf"},
	{"sites[0].layers[0].bottom=0 mbsf", "above 0 mbsf"},
	{"sites[0].name=" + "\x1b[31mred", "without U+001B"},
	{"sites[0].name=a\x00b", "U+0000"},
	{"sites[0].name=\u202eaddlA", "without U+202E"},
	{"sites[0].name=" + strings.Repeat("N", 10_000), "at most 80 letters"},
	{"title=" + strings.Repeat("T", 10_000), "at most 600 letters"},
	{"ports.from.name=" + strings.Repeat("P", 300), "at most 80 letters"},
	{"sites[0].holes[0].core=[]", "a tool and how far it goes"},
	{"sites[0].holes[0].core=[{with: XCB, to: refusal}]", "only a piston corer goes to refusal"},
	{"sites[0].holes[0].core=[{with: APC, to: 100 mbsf}, {with: XCB, to: 90 mbsf}]", "deeper than what comes before in the hole, 100 mbsf"},
	{"sites[0].holes[0].core=[{with: APC, to: 71.3 mbsf}, {with: XCB, to: 71 mbsf}]", "deeper than what comes before in the hole, 71.3 mbsf"},
	{"sites[0].holes[0].core=[{with: APC, to: refusal}, {with: XCB, to: 10 mbsf}]", "XCB cores at all after"},
	{"sites[0].holes[0].start_offset=300 m", "to 9.5 m"},
	{"sites[0].holes[0].rank=0", "from 1"},
	{"sites[0].holes[0].rank=100000", "from 1 to 1000"},
	{"in_port_before_sailing=3000 d", "100 d"},
	{"in_port_before_sailing={low: 1 d, mid: 2 d, high: 99 d}", "too lopsided"},
}

// judged checks a plan, and tells what is said and how much memory was asked for in all.
func judged(t *testing.T, args ...string) (said string, bytes uint64) {
	t.Helper()
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	ctx, cancel := context.WithTimeout(t.Context(), time.Minute)
	defer cancel()
	_, stdout, stderr := called(ctx, append([]string{"check"}, args...)...)
	if ctx.Err() != nil {
		t.Fatalf("%q takes more than a minute", args)
	}
	runtime.ReadMemStats(&after)
	return stderr + "\n" + stdout, after.TotalAlloc - before.TotalAlloc
}

func TestPlansThatNobodyCanMeanAreToldWhereTheyStand(t *testing.T) {
	plan := filepath.Join(t.TempDir(), "starter.yaml")
	if err := os.WriteFile(plan, scenario.Starter(), 0o666); err != nil {
		t.Fatal(err)
	}
	if len(nobodyMeans) < 60 {
		t.Errorf("%d plans, want 60", len(nobodyMeans))
	}
	for _, c := range nobodyMeans {
		said, bytes := judged(t, plan, "--set", c.setting)
		path, _, _ := strings.Cut(c.setting, "=")
		if !strings.Contains(unwrapped(said), c.said) || !strings.Contains(said, path) && !strings.Contains(unwrapped(said), "cores at all") {
			t.Errorf("%.80s:\nwant %q at %s in\n%.600s", c.setting, c.said, path, said)
		}
		if bytes > 100<<20 {
			t.Errorf("%.80s asks for %d MB of memory", c.setting, bytes>>20)
		}
	}
}

// Files with more of everything than an expedition has.
func TestEndlessListsAreRefused(t *testing.T) {
	head := "version: 1\nsails: 2027-02-01T08:00Z\nsea_days: 40 d\nports: {from: {name: A, position: 0N 0E}, to: {name: B, position: 0N 9E}}\nsites:\n"
	site := func(name, layers, holes string) string {
		return "  - {name: " + name + ", position: 1N 1E, water_depth: 2000 m, layers: [" + layers + "], holes: [" + holes + "]}\n"
	}
	layer, hole := "{bottom: 300 mbsf, lithology: chalk}", "{name: A, core: [{with: APC, to: refusal}]}"
	var sites, layers, holes strings.Builder
	for i := range 5000 {
		sites.WriteString(site(fmt.Sprint("S", i), layer, hole))
		fmt.Fprintf(&layers, "{bottom: %d mbsf, lithology: chalk},", i+1)
		fmt.Fprintf(&holes, "{name: H%d, core: [{with: APC, to: refusal}]},", i)
	}
	for want, text := range map[string]string{
		"at most 200 sites":                    sites.String(),
		"at most 200 layers":                   site("S", strings.TrimSuffix(layers.String(), ","), hole),
		"at most 100 holes and tasks":          site("S", layer, strings.TrimSuffix(holes.String(), ",")),
		"at most 20 tools one after the other": site("S", layer, "{name: A, core: ["+strings.TrimSuffix(strings.Repeat("{with: APC, to: refusal},", 5000), ",")+"]}"),
	} {
		plan := filepath.Join(t.TempDir(), "long.yaml")
		if err := os.WriteFile(plan, []byte(head+text), 0o666); err != nil {
			t.Fatal(err)
		}
		if said, _ := judged(t, plan); !strings.Contains(said, want) || !strings.Contains(said, "long.yaml:") {
			t.Errorf("want %q in\n%.600s", want, said)
		}
	}
}

// What is rare and can be meant is let pass.
func TestExtremesThatCanBeMeantAreTaken(t *testing.T) {
	plan := filepath.Join(t.TempDir(), "starter.yaml")
	if err := os.WriteFile(plan, scenario.Starter(), 0o666); err != nil {
		t.Fatal(err)
	}
	for _, setting := range []string{
		"sea_days=365 d", "sites[0].position=62S 175E", "rates={tripping: {low: 8 stands/h, mid: 20 stands/h, high: 25 stands/h, highest: 26 stands/h}}",
		"rates={repair_time: {shape: lognormal, median: 4 h, factor: 8}}", "rates={connection: {low: 3 min, mid: 6 min, high: 14 min}}",
		"rates={breakdown_every: 10000 d}", "sites[0].unusable={because: ice, every: 3 d, lasts: 1 d}", "sites[0].cap=12 h", "sites[0].water_depth=40 m",
		"rates={sailing_speed: 4 kn}", "title=Züge nach Südwest — 深海", "rates={other_work: 0 %, first_site_work: 0 h}",
	} {
		if code, _, stderr := called(t.Context(), "simulate", plan, "--replications", "2", "--anyway", "--set", setting); code != exitOK {
			t.Errorf("%s: exit %d, %s", setting, code, stderr)
		}
	}
}
