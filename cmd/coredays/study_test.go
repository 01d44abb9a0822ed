package main

import (
	"context"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	gocmp "github.com/google/go-cmp/cmp"

	"coredays/scenario"
)

// aStudy is the folder of a study of the starter scenario on two dates with two settings.
func aStudy(t *testing.T, scenarios string) (file string) {
	t.Helper()
	dir := t.TempDir()
	file = filepath.Join(dir, "study.yaml")
	for name, text := range map[string]string{"plan.yaml": string(scenario.Starter()), "study.yaml": "version: 1\nscenarios: [" + scenarios + "]\ndates: 2027-06-01,2027-10-01T12:00Z\nvary:\n  - {set: sea_days, to: [14 d, 18 d]}\n"} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	return file
}

// allFigures is a spread with all its figures.
type allFigures map[string]any

// A row of a study is what simulate says of that plan, set by hand, to the last digit.
func TestARowOfAStudyIsTheSimulationOfThatPlan(t *testing.T) {
	file := aStudy(t, "plan.yaml")
	code, out, stderr := called(t.Context(), "study", file, "--replications", "40", "--seed", "3", "--json", "-")
	if code != exitOK {
		t.Fatal(stderr)
	}
	var studied struct {
		Plans []struct {
			Settings  map[string]string
			Needed    allFigures `json:"days_needed"`
			First     float64    `json:"chance_primary"`
			All       float64    `json:"chance_all"`
			InHand    allFigures `json:"days_in_hand"`
			Recovered allFigures `json:"recovered_m"`
		}
	}
	if err := json.Unmarshal([]byte(out), &studied); err != nil {
		t.Fatal(err)
	}
	last := studied.Plans[3]
	if len(studied.Plans) != 4 || last.Settings["sea_days"] != "18 d" {
		t.Fatalf("%+v", studied)
	}
	code, out, stderr = called(t.Context(), "simulate", filepath.Join(filepath.Dir(file), "plan.yaml"), "--set", "sea_days=18 d", "--set", "sails=2027-10-01T12:00Z",
		"--replications", "40", "--seed", "3", "--json", "-")
	if code != exitOK {
		t.Fatal(stderr)
	}
	var simulated struct {
		Needed struct{ Total allFigures } `json:"days_needed"`
		Within struct {
			First     float64    `json:"chance_primary"`
			All       float64    `json:"chance_all"`
			InHand    allFigures `json:"days_in_hand"`
			Recovered allFigures `json:"recovered_m"`
		} `json:"within_allotted"`
	}
	if err := json.Unmarshal([]byte(out), &simulated); err != nil {
		t.Fatal(err)
	}
	if d := gocmp.Diff(simulated.Needed.Total, last.Needed) + gocmp.Diff(simulated.Within.InHand, last.InHand) + gocmp.Diff(simulated.Within.Recovered, last.Recovered); d != "" {
		t.Errorf("(-simulated +studied):\n%s", d)
	}
	if simulated.Within.First != last.First || simulated.Within.All != last.All {
		t.Errorf("chances %g and %g, simulated %g and %g", last.First, last.All, simulated.Within.First, simulated.Within.All)
	}
}

// What of it was done before is told is a matter of sim/study.
func TestAnInterruptedStudyLeavesNoPart(t *testing.T) {
	part := filepath.Join(t.TempDir(), "p")
	stopped, stop := context.WithCancel(t.Context())
	stop()
	file := aStudy(t, "plan.yaml")
	if code, out, _ := called(stopped, "study", file); code != exitInterrupted || strings.Contains(out, "In short") {
		t.Errorf("exit %d: %s", code, out)
	}
	if code, _, _ := called(stopped, "study", file, "--shard", "1/2", "--part", part); code != exitInterrupted {
		t.Errorf("exit %d", code)
	}
	if _, err := os.Stat(part); err == nil {
		t.Error("a share that was stopped has left a part")
	}
}
