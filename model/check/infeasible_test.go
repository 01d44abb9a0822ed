package check_test

import (
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"coredays/model/check"
	"coredays/model/voyage"
	"coredays/scenario"
	"coredays/sim"
)

// infeasible is a case of testdata/infeasible.txt.
type infeasible struct {
	name         string
	settings     []string
	verdict      check.Verdict
	what, hole   string
	value, limit string
	chance       string
}

func infeasibles(t *testing.T) (cases []infeasible) {
	t.Helper()
	text := string(mustRead(t, "testdata/infeasible.txt"))
	for line := range strings.Lines(text) {
		line = strings.TrimSpace(line)
		if line == "" || line[0] == '#' {
			continue
		}
		word, rest, _ := strings.Cut(line, ": ")
		if word == "case" {
			cases = append(cases, infeasible{name: rest})
			continue
		}
		c := &cases[len(cases)-1]
		switch word {
		case "set":
			c.settings = append(c.settings, rest)
		case "stop", "caution":
			c.verdict, c.what = check.Caution, rest
			if word == "stop" {
				c.verdict = check.Stop
			}
		case "chance":
			c.chance = rest
		case "hole":
			c.hole = rest
		case "value":
			c.value = rest
		case "limit":
			c.limit = rest
		case "why":
		default:
			t.Fatalf("what is %q?", line)
		}
	}
	return cases
}

func mustRead(t *testing.T, name string) []byte {
	t.Helper()
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// checked checks base.yaml with settings.
func checked(t *testing.T, settings ...string) []check.Finding {
	t.Helper()
	p, beyond, err := scenario.ToCheck(mustRead(t, "testdata/base.yaml"), "base.yaml", settings)
	if err != nil {
		t.Fatal(err)
	}
	v, err := voyage.Compile(p)
	if err != nil {
		t.Fatal(err)
	}
	var estimated voyage.QuickEstimate
	if len(beyond) == 0 {
		estimated = sim.Estimate(v)
	}
	return check.Plan(v, estimated)
}

func TestNothingStopsTheFeasiblePlan(t *testing.T) {
	found := checked(t)
	if len(found) < 20 {
		t.Errorf("only %d things were looked at", len(found))
	}
	for _, f := range found {
		if f.Verdict != check.Pass {
			t.Errorf("%s: %s: %.4g, limit %.4g %s", f.Verdict, f.What, f.Value, f.Limit, f.Unit)
		}
		if f.Source == "" {
			t.Errorf("%s has no source", f.What)
		}
	}
}

// The direction of a limit is what it passes by: a finding that passes is on the right side of it.
func TestWhatPassesIsOnTheRightSideOfItsLimit(t *testing.T) {
	settings := [][]string{nil}
	for _, c := range infeasibles(t) {
		settings = append(settings, c.settings)
	}
	for _, settings := range settings {
		for _, f := range checked(t, settings...) {
			right := f.Value <= f.Limit
			if f.Least {
				right = f.Value >= f.Limit
			}
			if f.Verdict == check.Pass && !math.IsNaN(f.Value) && !math.IsNaN(f.Limit) && !right {
				t.Errorf("%s passes with %.4g %s against a limit of %.4g, least %v", f.What, f.Value, f.Unit, f.Limit, f.Least)
			}
		}
	}
}

func TestEachInfeasiblePlanGetsItsStopWithItsFigure(t *testing.T) {
	cases := infeasibles(t)
	if len(cases) < 16 {
		t.Fatalf("%d cases, wanted at least 16", len(cases))
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) { c.check(t) })
	}
}

func (c infeasible) check(t *testing.T) {
	var stops []string
	for _, f := range check.Of(checked(t, c.settings...), c.verdict) {
		stops = append(stops, f.What)
		if !strings.HasPrefix(f.What, c.what) || c.hole != "" && f.Hole != c.hole {
			continue
		}
		if c.value != "" {
			near(t, "value", f.Value, f.Unit, c.value)
		}
		if c.limit != "" {
			near(t, "limit", f.Limit, f.Unit, c.limit)
		}
		if f.Path != "" && f.Where == "" || c.verdict == check.Stop && f.Site != "" && f.Where == "" {
			t.Errorf("nothing tells where %q stands", f.Path)
		}
		if c.chance != "" {
			near(t, "chance", 100**f.Chance, "%", c.chance)
		}
		return
	}
	t.Errorf("no %s %q in hole %q among %q", c.verdict, c.what, c.hole, stops)
}

// near wants a figure such as "380 mbsf", within one per cent, or "8364 m within 2".
func near(t *testing.T, what string, got float64, unit, want string) {
	t.Helper()
	words := strings.Fields(want)
	figure, err := strconv.ParseFloat(words[0], 64)
	if err != nil {
		t.Fatal(err)
	}
	percent := 1.0
	if len(words) == 4 {
		percent, _ = strconv.ParseFloat(words[3], 64)
	}
	if unit != words[1] || math.Abs(got/figure-1) > percent/100 {
		t.Errorf("%s is %.4g %s, want %s", what, got, unit, want)
	}
}

func TestTheDemonstrationPassesWithCautionsToLookAt(t *testing.T) {
	p, err := scenario.Demonstration()
	if err != nil {
		t.Fatal(err)
	}
	v, err := voyage.Compile(p)
	if err != nil {
		t.Fatal(err)
	}
	if worst := check.Worst(check.Plan(v, sim.Estimate(v))); worst != check.Caution {
		t.Errorf("the demonstration: %s", worst)
	}
}
