package output

import (
	"encoding/json"
	"io"
	"math"
	"slices"
	"strings"
	"testing"

	"coredays/model/check"
	"coredays/model/plan"
	"coredays/model/rig"
)

func somePlan() *plan.Plan {
	return &plan.Plan{Title: "Invented", Ship: rig.Ship{Name: "some ship"}, Warnings: []string{"no weather is given"}}
}

func someFindings() []check.Finding {
	return []check.Finding{
		{Site: "SB-01", Hole: "B", What: "target within the approved depth", Verdict: check.Stop, Value: 380, Limit: 350, Unit: "mbsf", Source: "approved_to of the scenario"},
		{Site: "SB-02", What: "no approved depth is stated", Verdict: check.Caution, Value: math.NaN(), Limit: math.NaN(), Source: "a review approves a depth for each site, and says so in words that are longer than the column is wide"},
		{What: "sea days within the ship's endurance", Value: 56, Limit: 75, Unit: "d", Source: "a page"},
		{Site: "SB-01", Hole: "A", What: "string reaches the target", Value: 3811.4, Limit: 8423.2, Unit: "m", Source: "a sheet"},
		{Site: "SB-01", Hole: "C", What: "string reaches the target", Value: 3811.4, Limit: 8423.2, Unit: "m", Source: "a sheet"},
		{Site: "SB-01", Hole: "D", What: "string reaches the target", Value: 3500, Limit: 8423.2, Unit: "m", Source: "a sheet"},
	}
}

func TestCheckIsPrintedWithStopsFirst(t *testing.T) {
	matchGolden(t, "check.txt", printed(t, func(w io.Writer) error { return Check(w, somePlan(), someFindings()) }))
}

func TestCheckStaysOnThePage(t *testing.T) {
	long := someFindings()
	for i := range long {
		long[i].Site, long[i].Hole, long[i].What = strings.Repeat("S", 60), strings.Repeat("H", 60), strings.Repeat("word ", 40)
	}
	text := printed(t, func(w io.Writer) error { return Check(w, somePlan(), long) })
	for line := range strings.Lines(text) {
		if n := displayed(strings.TrimSuffix(line, "\n")); n > pageWidth {
			t.Errorf("%d columns: %s", n, line)
		}
	}
}

func TestEachStopIsToldOnALineWithItsFigures(t *testing.T) {
	want := []string{"■ site SB-01: hole B: target within the approved depth (380 mbsf, limit 350 mbsf)"}
	if got := Stops(someFindings()); !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

func TestCheckJSONKeepsItsPromise(t *testing.T) {
	text := printed(t, func(w io.Writer) error { return CheckJSON(w, somePlan(), someFindings()) })
	var got struct {
		Schema, Scenario, Verdict string
		Items                     []map[string]any
		Cautions                  []string
	}
	if err := json.Unmarshal([]byte(text), &got); err != nil {
		t.Fatal(err)
	}
	if got.Schema != "coredays.check/1" || got.Scenario != "Invented" || got.Verdict != "stop" || len(got.Items) != 6 || len(got.Cautions) == 0 {
		t.Errorf("%+v", got)
	}
	for _, key := range []string{"site", "hole", "what", "verdict", "value", "limit", "unit", "source"} {
		if _, there := got.Items[0][key]; !there {
			t.Errorf("no %s", key)
		}
	}
	if got.Items[1]["value"] != nil || got.Items[0]["limit"] != 350.0 {
		t.Errorf("%+v", got.Items[:2])
	}
}

func TestGasAndHydrogenSulphideAreNeverLeftOut(t *testing.T) {
	text := printed(t, func(w io.Writer) error { return Check(w, &plan.Plan{}, nil) })
	for _, word := range []string{"Gas is monitored", "H2S", "severed", "Marine mammals", "not a clearance", "ice"} {
		if !strings.Contains(text, word) {
			t.Errorf("nothing of %q", word)
		}
	}
}
