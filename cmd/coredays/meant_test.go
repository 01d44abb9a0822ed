package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"coredays/model/rig"
	"coredays/model/voyage"
	"coredays/scenario"
	"coredays/scenario/entry"
	"coredays/sim"
)

// What somebody may mean, however far from the usual, is simulated. The starter with settings.
func TestExtremesThatSomebodyMayMeanAreSimulated(t *testing.T) {
	months := func(hs, sd string) string {
		return "sites[0].weather={months: [" + strings.Repeat("{hs: "+hs+", sd: "+sd+"}, ", 12) + "]}"
	}
	for name, sets := range map[string][]string{
		"nine kilometres of water": {"sites[0].places=off", "sites[0].water_depth=9000 m", "sites[0].approved_to=150 mbsf", "sites[0].holes[A].core=[{with: APC, to: refusal}]",
			"string.pipe=[{name: 5 in 19.50 lb/ft S-140, class: new, length: 6000 m}, {name: 5-1/2 in 24.70 lb/ft S-140, class: new, length: 4000 m}]",
			"string.overpull=10 klbf", "string.roll=0 deg", "sites[0].refusal.overpull=10 klbf",
			"limits=[{for: tripping, of: largest heave, most: 3 m}, {for: piston_coring, of: largest heave, most: 3 m}]"},
		"a year at sea":          {"sea_days=365 d", "endurance=400 d"},
		"the Antarctic":          {"sites[0].position=71S 170W", "sites[0].via=[60S 175E]", "ports.from.position=43S 147E", "ports.to.position=43S 173E", months("3 m", "1.2 m")},
		"water of the least":     {"sites[0].places=off", "sites[0].water_depth=75 m"},
		"a sea that is a pond":   {months("0.3 m", "0.1 m")},
		"a rough sea":            {months("5 m", "2 m"), "limits=[{for: piston_coring, of: wave height, most: 7 m}, {for: pipe_handling, of: wave height, most: 8 m}, {for: positioning, of: wave height, most: 9 m}]"},
		"piston cores to 315 m":  {"sites[0].approved_to=320 mbsf", "sites[0].layers=[{bottom: 320 mbsf, lithology: nannofossil ooze}]", "sites[0].holes[B].core=[{with: APC, to: 315 mbsf}]"}, // 313.2 m in Hole 1225A (core records)
		"a piston after a crust": {"sites[0].holes[A].core=[{with: XCB, to: 10 mbsf}, {with: APC, to: refusal}, {with: XCB, to: 250 mbsf}]"},                                                   // Hole 1050A (core records)
		"a spud in 22.6 m":       {"sites[0].layers=[{bottom: 22.6 mbsf, lithology: pelagic clay}, {bottom: 300 mbsf, lithology: basalt}]", "sites[0].holes=[{name: A, core: [{with: RCB, to: 60 mbsf}]}]"},
		"a spud on bare rock":    {"sites[0].layers=[{bottom: 300 mbsf, lithology: basalt}]", "sites[0].holes=[{name: A, core: [{with: RCB, to: 30 mbsf}]}]"}, // ODP Hole 779A and others
		"wide spreads": {"rates={stuck_time: {shape: lognormal, median: 4 h, factor: 8}, repair_time: {low: 1 h, mid: 4 h, high: 20 h, lowest: 0.5 h, highest: 20 d}, " +
			"tripping: {low: 6 stands/h, mid: 15 stands/h, high: 25 stands/h}, sailing_speed: {low: 6 kn, mid: 10 kn, high: 12 kn}, connection: {low: 2 min, mid: 6 min, high: 16 min}, other_work: {shape: lognormal, median: 60 %, factor: 4}}"},
		"a ship that often breaks down":   {"rates={breakdown_every: 2 d, repair_time: {low: 2 h, mid: 6 h, high: 16 h}}"},
		"ice that comes and goes":         {"sites[0].unusable={because: ice, every: 4 d, lasts: {low: 0.5 d, mid: 2 d, high: 6 d}}"},
		"a ship that never breaks down":   {"rates={breakdown_every: 10000 d}"},
		"a slow ship":                     {"rates={sailing_speed: 4 kn}"},
		"the far south":                   {"sites[0].position=62S 175E", "ports.from.position=43S 172E", "ports.to.position=43S 172E"},
		"a window":                        {"sites[0].not_before=2027-06-20T00:00Z", "sites[0].not_after=2027-07-10T00:00Z"},
		"a short cap":                     {"sites[0].cap=12 h"},
		"an expedition of long ago":       {"sails=1968-08-11T08:00Z"},
		"an expedition of our children":   {"sails=2099-08-11T08:00Z"},
		"work that takes no time":         {"rates={strapping: 0 min, filling: 0 min, sweep: 0 min, heavy_mud: 0 h, other_work: 0 %, first_site_work: 0 h}"},
		"names in other scripts":          {"sites[0].name=\"Цунами می\u200cخواهم 深海 " + strings.Repeat("é", 50) + "\""},
		"a long task":                     {"sites[0].holes[B]={task: set observatory, takes: {low: 20 d, mid: 30 d, high: 40 d}}"},
		"more first than there are days":  {"sea_days=9 d"},
		"one bit for all":                 {"sites[0].layers[1].lithology=basalt", "sites[0].holes[B]={name: B, drill_ahead_to: 180 mbsf, core: [{with: RCB, to: 300 mbsf}]}", "sites[0].holes[A].core=[{with: APC, to: 100 mbsf}]"},
		"a sea that forbids half of it":   {months("3 m", "1 m"), "limits=[{for: piston_coring, of: wave height, most: 2.2 m}]"},
		"a derrick stated to be a strong": {"string.derrick=3000 klbf", "string.hoist=3000 klbf"},
	} {
		t.Run(name, func(t *testing.T) { simulates(t, string(scenario.Starter()), sets...) })
	}
}

func simulates(t *testing.T, text string, sets ...string) {
	t.Helper()
	file := filepath.Join(t.TempDir(), "plan.yaml")
	if err := os.WriteFile(file, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	args := []string{"simulate", file, "--replications", "5"}
	for _, s := range sets {
		args = append(args, "--set", s)
	}
	if code, _, stderr := called(t.Context(), args...); code != exitOK {
		t.Errorf("exit %d: %s", code, stderr)
	}
}

func TestSixtySitesAreSimulated(t *testing.T) {
	text := strings.Replace(string(scenario.Starter()), "sea_days: 56 d", "endurance: 400 d\nsea_days: 365 d", 1)
	var more strings.Builder
	for i := range 59 {
		fmt.Fprintf(&more, "  - {name: S%d, position: %d.5N 50W, water_depth: 3000 m, approved_to: 100 mbsf, layers: [{bottom: 100 mbsf, lithology: diatom ooze}], holes: [{name: A, core: [{with: APC, to: refusal}]}]}\n", i, 20+i%12)
	}
	simulates(t, strings.Replace(text, "  - name: ONE\n", more.String()+"  - name: ONE\n", 1))
}

// At its least and at its most no figure of the ship keeps an expedition from coming home in the end.
func TestEveryFigureOfTheShipAtItsBoundsComesHome(t *testing.T) {
	for _, b := range entry.Bounds() {
		for _, r := range b.Rates {
			for _, value := range []string{b.Least, b.Most} {
				if r == rig.RepairTime && value == b.Most {
					continue // more than the time between breakdowns
				}
				p, err := scenario.WithSettings(scenario.Starter(), "starter.yaml", []string{"sites[0].holes[A].logging=[density-resistivity]", "rates." + r.Of().Key + "=" + value})
				if err != nil {
					t.Fatal(err)
				}
				v, err := voyage.Compile(p)
				if err != nil {
					t.Fatal(err)
				}
				const years = 3 * 365 * 86400 // s
				if summary := sim.Replicate(t.Context(), v, sim.Run{Seed: 1, Replications: 4}).Summary(); !(summary.Needed.Total.Mean < years) {
					t.Errorf("with %s of %s it takes %g d", r.Of().Key, value, summary.Needed.Total.Mean/86400)
				}
			}
		}
	}
}
