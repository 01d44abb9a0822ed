package main

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// A record of the sea and a ship that a scenario names are no more written over than the scenario itself.
func TestWhatAScenarioNamesIsSpared(t *testing.T) {
	dir := t.TempDir()
	plan, record := filepath.Join(dir, "plan.yaml"), filepath.Join(dir, "sea.csv")
	var b strings.Builder
	b.WriteString("time,hs_m\n")
	for h := range 24 * 400 {
		fmt.Fprintf(&b, "%s,%.1f\n", time.Date(2020, 1, 1, h, 0, 0, 0, time.UTC).Format("2006-01-02T15:04Z"), 1.5+float64(h%240)/120)
	}
	scenario := `version: 1
title: With a record
sails: 2027-02-01T08:00Z
sea_days: 20 d
ports: {from: {name: First port, position: 42S 147E}, to: {name: Last port, position: 46S 171E}}
sites:
  - {name: ONE, position: 46S 153E, water_depth: 2650 m, layers: [{bottom: 400 mbsf, lithology: chalk}], weather: {record: sea.csv},
     holes: [{name: A, core: [{with: APC, to: refusal}]}]}
`
	for path, text := range map[string]string{plan: scenario, record: b.String()} {
		if err := os.WriteFile(path, []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	if code, _, stderr := called(context.Background(), "check", plan); code == exitUsage || strings.Contains(stderr, "record") {
		t.Fatal(stderr)
	}
	for _, flags := range [][]string{{"--csv", dir}, {"--csv", dir + "/."}} {
		code, stdout, stderr := called(context.Background(), append([]string{"simulate", plan, "--replications", "2"}, flags...)...)
		if code != exitUsage || stdout != "" || !strings.Contains(stderr, "sea.csv lies in the folder of --csv") {
			t.Errorf("%q: exit %d, %s", flags, code, stderr)
		}
	}
	if kept, err := os.ReadFile(record); err != nil || string(kept) != b.String() {
		t.Error("the record is not what it was")
	}
}
