package output_test

import (
	"encoding/json"
	"io"
	"math"
	"slices"
	"strings"
	"testing"

	"coredays/model/result"
	jsonout "coredays/output/json"
	"coredays/output/outputtest"
)

// tree is the JSON of a summary as a program meets it.
func tree(t *testing.T, s *result.Summary) map[string]any {
	t.Helper()
	text := printed(t, func(w io.Writer) error { return jsonout.Simulation(w, s) })
	var got map[string]any
	if err := json.Unmarshal([]byte(text), &got); err != nil {
		t.Fatalf("%v in %s", err, text)
	}
	return got
}

// at follows keys; a list is entered at its first element.
func at(t *testing.T, node any, path string) any {
	t.Helper()
	for _, key := range strings.Split(path, ".") {
		if list, is := node.([]any); is {
			node = list[0]
		}
		value, there := node.(map[string]any)[key]
		if !there {
			t.Fatalf("%s: no key %q", path, key)
		}
		node = value
	}
	return node
}

// promised are the keys that others rely on; those of spreads are listed apart.
var promised = []string{"schema", "scenario", "seed", "replications", "stopped_early", "within_allotted.sea_days",
	"within_allotted.chance_all", "within_allotted.chance_primary", "sites.name", "sites.chance_reached", "sites.chance_complete",
	"sites.holes.name", "drivers.name", "drivers.share", "consumables.item", "consumables.p50", "consumables.p90", "warnings"}

var promisedSpreads = []string{"days_needed.total", "days_needed.by_class.sailing", "days_needed.by_class.port",
	"days_needed.by_class.rig_up_and_trips", "days_needed.by_class.coring", "days_needed.by_class.measuring",
	"days_needed.by_class.waiting", "days_needed.by_class.repair", "days_needed.by_class.other",
	"within_allotted.days_in_hand", "within_allotted.recovered_m", "recovery.cored_m", "recovery.recovered_m", "recovery.percent",
	"recovery.cores", "sites.days", "sites.waiting", "sites.cored_m", "sites.recovered_m", "sites.percent", "sites.cores",
	"sites.section_coverage", "sites.holes.days", "sites.holes.depth_m", "sites.holes.refusal_depth_m"}

func TestJSONHasThePromisedKeys(t *testing.T) {
	for name, summary := range summaries {
		got := tree(t, summary())
		for _, path := range promised {
			if name == "single" && strings.HasPrefix(path, "drivers.") {
				continue // one replication has none
			}
			at(t, got, path)
		}
		for _, path := range promisedSpreads {
			for _, key := range []string{"mean", "sd", "p10", "p50", "p90"} {
				at(t, got, path+"."+key)
			}
			for _, key := range []string{"p10_ci", "p50_ci", "p90_ci"} {
				if pair, is := at(t, got, path+"."+key).([]any); !is || len(pair) != 2 {
					t.Errorf("%s: %s.%s is no pair", name, path, key)
				}
			}
		}
	}
}

func TestJSONIsInDaysMetresAndShares(t *testing.T) {
	got := tree(t, outputtest.Ordinary())
	for path, want := range map[string]float64{
		"days_needed.total.p50": 41.6, "days_needed.total.mean": 42.18, "within_allotted.sea_days": 40, "within_allotted.chance_all": 0.3775,
		"within_allotted.chance_late": 0.0025, "in_port_before_sailing.p90": 6, "recovery.percent.p50": 90.1, "sites.water_depth_m": 3420,
		"sites.days.p10": 12.1, "sites.holes.refusal_depth_m.p50": 188, "sites.section_coverage.p50": 0.94, "sites.holes.days.n": 400,
		"recovery.by_tool.XCB.percent.p50": 72.4, "sites.arrives_after_days.p50": 16.3, "sites.holes.chance_refused": 0.5, "seed": 7,
	} {
		if value := at(t, got, path).(float64); math.Abs(value-want) > 1e-9 {
			t.Errorf("%s is %.17g, want %g", path, value, want)
		}
	}
	// 14 January 08:00 and 16.3 days: 16 days are 30 January 08:00, 0.3 of a day are 7 h 12 min.
	if date := at(t, got, "sites.arrives_on.p50"); date != "2027-01-30T15:12:00Z" {
		t.Errorf("arrives on %v", date)
	}
	if at(t, got, "schema") != "coredays.simulation/1" {
		t.Error("schema is", at(t, got, "schema"))
	}
}

func TestMeansOfClassesAddUpInJSON(t *testing.T) {
	s := outputtest.Ordinary() // its classes add up to 42.18 d: 12.1+0.04+9.2+11.7+3.05+4.34+1.75
	got := tree(t, s)
	sum := 0.0
	for _, class := range at(t, got, "days_needed.by_class").(map[string]any) {
		sum += class.(map[string]any)["mean"].(float64)
	}
	if total := at(t, got, "days_needed.total.mean").(float64); math.Abs(sum/total-1) > 1e-12 {
		t.Errorf("classes add up to %.17g, total %.17g", sum, total)
	}
}

func TestWhatIsUndefinedIsNullInJSON(t *testing.T) {
	got := tree(t, poisoned())
	for _, path := range []string{"days_needed.total.mean", "days_needed.total.p50", "sites.chance_reached", "sites.arrives_on.p50",
		"within_allotted.chance_all", "drivers.share", "consumables.p90"} {
		if value := at(t, got, path); value != nil {
			t.Errorf("%s is %v", path, value)
		}
	}
	one := tree(t, outputtest.Single())
	for _, key := range []string{"sd", "p10", "p90"} {
		if value := at(t, one, "days_needed.total."+key); value != nil {
			t.Errorf("one replication: %s is %v", key, value)
		}
	}
	if value := at(t, one, "days_needed.total.p50_ci"); !slices.Equal(value.([]any), []any{nil, nil}) {
		t.Errorf("one replication: interval %v", value)
	}
	if value := at(t, one, "days_needed.total.p50"); value == nil {
		t.Error("one replication has no P50")
	}
}

func TestEmptySummaryHasListsInJSON(t *testing.T) {
	got := tree(t, &result.Summary{})
	for _, key := range []string{"sites", "drivers", "consumables", "warnings"} {
		if list, is := got[key].([]any); !is || len(list) != 0 {
			t.Errorf("%s is %v", key, got[key])
		}
	}
	if got["sails"] != nil {
		t.Errorf("sails %v", got["sails"])
	}
}

func TestJSONKeepsAllDigitsAndTheSameBytes(t *testing.T) {
	s := outputtest.Ordinary()
	s.Allotted.ChanceAll = 1.0 / 3
	s.Allotted.ChancePrimary = math.Copysign(0, -1)
	s.Seed = math.MaxUint64
	first := printed(t, func(w io.Writer) error { return jsonout.Simulation(w, s) })
	for _, want := range []string{`"chance_all": 0.3333333333333333,`, `"chance_primary": 0,`, `"seed": 18446744073709551615,`} {
		if !strings.Contains(first, want) {
			t.Errorf("no %s", want)
		}
	}
	if again := printed(t, func(w io.Writer) error { return jsonout.Simulation(w, s) }); again != first {
		t.Error("the same summary gives other bytes")
	}
}
