package main

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// writeRecord writes an invented record of so many years, every 3 h, with a gap and a fill code.
func writeRecord(t *testing.T, years int) string {
	t.Helper()
	var text bytes.Buffer
	text.WriteString("time;Hs (m)\n2004-12-31T23:00Z;99.0\n")
	for i := 0; i < years*8766; i += 3 {
		x := float64(i)
		hs := math.Exp(0.9 + 0.3*math.Cos(2*math.Pi*x/8766) + 0.4*math.Sin(x/37) + 0.3*math.Sin(x/53+2))
		if i/24 != 100 {
			fmt.Fprintf(&text, "%s;%.2f\n", time.Date(2005, 1, 1, i, 0, 0, 0, time.UTC).Format("2006-01-02T15:04Z"), hs)
		}
	}
	path := filepath.Join(t.TempDir(), "buoy.csv")
	if err := os.WriteFile(path, text.Bytes(), 0o644); err != nil {
		t.Fatal(err)
	}
	return path
}

// answered is what a call that must succeed prints.
func answered(t *testing.T, args ...string) string {
	t.Helper()
	code, stdout, stderr := called(context.Background(), args...)
	if code != exitOK {
		t.Fatalf("%q: exit %d\n%s", args, code, stderr)
	}
	return stdout
}

func TestASeaLikeARecordIsPrintedBesideIt(t *testing.T) {
	for years, how := range map[int]string{2: "too few for pieces of it", 6: "pieces of 15 to 20 days"} {
		text := strings.Join(strings.Fields(answered(t, "sea", writeRecord(t, years), "--years", "40")), " ")
		for _, want := range []string{"The sea at buoy.csv", "The record and the sea made like it, all year (record / made)", how, "ten years leave ±10 % and ±15 %",
			"1 row (first on line 2) hold a fill code", "a reading every 3 h", "1 gap", "the limit of coring"} {
			if !strings.Contains(text, want) {
				t.Errorf("%d years: no %q in\n%s", years, want, text)
			}
		}
	}
}

func TestTheJSONOfARecordHasItsSharesAndThoseMadeLikeIt(t *testing.T) {
	var got struct {
		Thresholds []struct {
			Hs     float64 `json:"hs_m"`
			Share  float64 `json:"share_above"`
			Made   float64 `json:"generated_share_above"`
			Season string
		}
	}
	if err := json.Unmarshal([]byte(answered(t, "sea", writeRecord(t, 6), "--years", "60", "--json", "-")), &got); err != nil {
		t.Fatal(err)
	}
	if len(got.Thresholds) < 20 {
		t.Errorf("%d thresholds", len(got.Thresholds))
	}
	for _, row := range got.Thresholds {
		if row.Season == "all" && math.Abs(row.Share-row.Made) > 0.02 {
			t.Errorf("%g m: share above %.3f, made %.3f", row.Hs, row.Share, row.Made)
		}
	}
}

func TestAScenarioWithARecordIsSailedInItsSea(t *testing.T) {
	record := writeRecord(t, 6)
	plan := filepath.Join(filepath.Dir(record), "plan.yaml")
	text := answered(t, "init")
	if err := os.WriteFile(plan, []byte(strings.Replace(text, "weather: {climate: built in}", "weather: {record: buoy.csv}", 1)), 0o644); err != nil {
		t.Fatal(err)
	}
	if got := answered(t, "sea", plan, "--years", "20"); !strings.Contains(got, "Source: the record buoy.csv") {
		t.Error(got)
	}
	one := answered(t, "simulate", plan, "--replications", "50", "--workers", "1")
	if many := answered(t, "simulate", plan, "--replications", "50", "--workers", "3"); many != one {
		t.Error("another number of workers met another sea")
	}
	if !strings.Contains(strings.Join(strings.Fields(one), " "), "buoy.csv: record from 2005-01-01 to") {
		t.Errorf("no warning of what was found in the record:\n%s", one)
	}
}
