package scenario

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/unit"
)

// base is the whole scenario that the broken ones come from.
func base(t *testing.T, settings ...string) *plan.Plan {
	t.Helper()
	return mustRead(t, "base.yaml", []byte(readTestFile(t, "broken/base.yaml")), settings...)
}

func TestAPlanSaysWhatTheFileSays(t *testing.T) {
	p := base(t)
	a, b, task := p.Sites[0].Items[0], p.Sites[0].Items[1], p.Sites[0].Items[2]
	wantA := &plan.Hole{Oriented: true, Temperature: []int{4, 7, 10}, Stages: []plan.Stage{{With: coring.APC, To: 380, ToRefusal: true}, {With: coring.XCB, To: 290}}}
	if diff := cmp.Diff(wantA, a.Hole); diff != "" {
		t.Errorf("hole A (-want +got)\n%s", diff)
	}
	wantB := &plan.Hole{DrillAheadTo: 270, Stages: []plan.Stage{{With: coring.RCB, To: 380}}, Logging: []int{0, 1}, Abandon: plan.HeavyMud}
	if diff := cmp.Diff(wantB, b.Hole); diff != "" || b.Rank != 2 || a.Rank != 1 {
		t.Errorf("hole B, ranks %d and %d (-want +got)\n%s", a.Rank, b.Rank, diff)
	}
	if task.Name != "set observatory" || task.Task == nil || !task.Task.Steps[0].Interruptible || task.Task.Steps[0].Takes.Median() != float64(30*unit.Hour) {
		t.Errorf("task %+v", task.Task)
	}
	if diff := cmp.Diff(&plan.Condition{Hole: 0, Above: true, Depth: 150}, task.When); diff != "" {
		t.Errorf("condition (-want +got)\n%s", diff)
	}
	if p.SeaDays != 30*unit.Day || p.Sites[0].Cap != 12*unit.Day || p.Sites[0].WaterDepth != 3420 || !p.Sites[1].Alternate {
		t.Errorf("days %v, cap %v, water %v", p.SeaDays, p.Sites[0].Cap, p.Sites[0].WaterDepth)
	}
}

func TestRefusalIsLookedForToTheLesserOfApprovedAndKnown(t *testing.T) {
	for setting, want := range map[string]unit.Depth{"sites[0].approved_to=390 mbsf": 380, "sites[0].approved_to=380 mbsf": 380} {
		if got := base(t, setting).Sites[0].Items[0].Hole.Stages[0].To; got != want {
			t.Errorf("%s: %v, want %v", setting, got, want)
		}
	}
	p := base(t, "sites[1].approved_to=120 mbsf")
	if got := p.Sites[1].Items[0].Hole.Stages[0].To; got != 120 {
		t.Errorf("got %v, want the approved 120 mbsf", got)
	}
}

func TestAlternatesComeLastUnlessTheOrderSaysOtherwise(t *testing.T) {
	text := readTestFile(t, "broken/base.yaml")
	text = text[:strings.Index(text, "order: ")]
	swapped := strings.Replace(strings.Replace(text, "priority: primary", "priority: alternate", 1), "    priority: alternate\n    position: 46", "    position: 46", 1)
	if got := mustRead(t, "plan.yaml", []byte(swapped)).Order; !cmp.Equal(got, []int{1, 0}) {
		t.Errorf("got %v, want the primary site first", got)
	}
	if got := mustRead(t, "plan.yaml", []byte(text), "order=[SB-02, SB-01]").Order; !cmp.Equal(got, []int{1, 0}) {
		t.Errorf("got %v, want the stated order", got)
	}
	if got := mustRead(t, "plan.yaml", []byte(text), "order=[SB-01]").Order; !cmp.Equal(got, []int{0, 1}) {
		t.Errorf("got %v, want the alternate last", got)
	}
}

func TestAStatedLimitTakesThePlaceOfAllTheShipsForThatWork(t *testing.T) {
	ship := builtIn().ship
	p := base(t, "limits=[{for: piston_coring, of: wave height, most: 3 m}]")
	count := map[activity.Limit]int{}
	for _, l := range p.Ship.Limits {
		count[l.For]++
		if l.For == activity.PistonCoring && (l.Of != rig.WaveHeight || l.Most != 3) {
			t.Errorf("a limit of the ship is left: %+v", l)
		}
	}
	if count[activity.PistonCoring] != 1 || count[activity.RotaryCoring] != 3 {
		t.Errorf("limits by work: %v", count)
	}
	if len(ship.Limits) != len(builtIn().ship.Limits) || len(ship.Limits) < 10 {
		t.Error("the built-in ship was changed")
	}
}

func TestWhatIsFilledInIsToldInWarnings(t *testing.T) {
	text := readTestFile(t, "broken/base.yaml")
	cases := []struct{ cut, warning string }{
		{"ship: riserless drillship\n", "no ship is given: the built-in riserless drillship is used"},
		{"    layers: [{bottom: 200 mbsf, lithology: hemipelagic mud}]\n", "site SB-02: no layers are given, so nannofossil ooze is assumed down to 200 mbsf"},
		{"    approved_to: 200 mbsf\n", "site SB-02: no approved depth is given, so no target is held against one"},
	}
	for _, c := range cases {
		p := mustRead(t, "plan.yaml", []byte(strings.Replace(text, c.cut, "", 1)))
		if diff := cmp.Diff([]string{c.warning}, p.Warnings); diff != "" {
			t.Errorf("without %q (-want +got)\n%s", c.cut, diff)
		}
	}
	p := mustRead(t, "plan.yaml", []byte(strings.Replace(text, "    weather: {climate: built in}\n", "", 1)))
	if len(p.Warnings) != 1 || !strings.HasPrefix(p.Warnings[0], "site SB-01: no weather is given, so the built-in climate is used (") {
		t.Errorf("without weather: %v", p.Warnings)
	}
}

func TestARouteOverLandIsWarnedOf(t *testing.T) {
	// From the Gulf of Alaska to the Labrador Sea the great circle crosses North America.
	across := []string{"sites[0].position=50N 45W", "sites[1].position=50N 43W", "ports.from.position=50N 140W", "ports.to.position=45N 40W"}
	p := base(t, across...)
	if len(p.Warnings) != 1 || !strings.HasPrefix(p.Warnings[0], "the great circle from Port Aldous to SB-01 crosses land near ") {
		t.Errorf("got %v", p.Warnings)
	}
	// Round the Horn it does not.
	p = base(t, append(across, "sites[0].via=[0N 125W, 40S 100W, 58S 68W, 30S 30W, 10N 35W]")...)
	if len(p.Warnings) != 0 {
		t.Errorf("round the Horn: %v", p.Warnings)
	}
}

func TestDepthsFromTheRigFloorLoseItsHeight(t *testing.T) {
	if got := base(t, "sites[0].datum=rig floor").Sites[0].WaterDepth; got != 3420-builtIn().ship.RigFloor {
		t.Errorf("got %v", got)
	}
}

func TestAClimateOfOnesOwnIsReadByMonths(t *testing.T) {
	months := "sites[0].weather={source: a buoy, months: [" + strings.TrimSuffix(strings.Repeat("{hs: 2 m, sd: 0.8 m}, ", 12), ", ") + "]}"
	climate := base(t, months).Sites[0].Climate
	if err := climate.Check(); err != nil {
		t.Fatal(err)
	}
	if climate.Mean[11] != 2 || climate.Variation[11] != 0.4 || climate.Source != "a buoy" {
		t.Errorf("got %+v", climate)
	}
}

func TestSettingsReplaceBeforeAnythingIsLookedAt(t *testing.T) {
	p := base(t, "sites[SB-01].cap=9 d", "sites[0].holes[B].rank=3", "sites[SB-01].holes[set observatory].takes=5 h", "sea_days=40 d", "rates.bench=30 min",
		"sites[1].refusal.overpull=100 klbf")
	if p.Sites[0].Cap != 9*unit.Day || p.Sites[0].Items[1].Rank != 3 || p.Sites[0].Items[2].Task.Steps[0].Takes.Median() != float64(5*unit.Hour) || p.SeaDays != 40*unit.Day {
		t.Error("a setting was not taken")
	}
	if got := p.Ship.Rates[rig.Bench]; got.Median() != 1800 || got.Source != "--set: rates.bench" {
		t.Errorf("bench %v from %q", got.Median(), got.Source)
	}
	if r := p.Sites[1].Refusal; r.PartialStrokes != builtIn().ship.refusal.PartialStrokes || r.Overpull == p.Sites[0].Refusal.Overpull {
		t.Errorf("refusal %+v", r)
	}
}
