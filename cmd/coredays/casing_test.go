package main

import (
	"context"
	"encoding/csv"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"golang.org/x/exp/stats"

	"coredays/model/activity"
	"coredays/model/voyage"
	"coredays/sim"
)

// Holes of one leg that were drilled for a cone and its casing and not cored: those that later legs came back to and deepened
// (U1557D, U1558D) and one that was left so (U1559B). That they were cased over their whole depth, the casing drilled in
// together with the cone, is from memory.
var casedHoles = []struct {
	site, hole string
	to         float64 // m below the sea floor
}{{"U1557", "D", 64}, {"U1558", "D", 150}, {"U1559", "B", 59}}

// Days on these holes (holes.csv: IODP hole summaries) lie in the simulated bands, P5 to P95, and their sum in that of sums;
// the leg's own days of re-entry and casing (legs.csv: 4.11 d) lie between what is simulated of cones and casing alone and all
// the days on its cased holes.
func TestDaysOfConesAndCasingOnRecordLieInTheSimulatedBand(t *testing.T) {
	if testing.Short() {
		t.Skip("simulates many expeditions")
	}
	holes, legs := recordRows(t, "holes.csv"), recordRows(t, "legs.csv")
	sums, casing := make([]float64, manyCased), make([]float64, manyCased)
	var recorded float64
	for n, is := range casedHoles {
		var water, days float64
		for _, row := range holes {
			if row["leg"] == "390C" && row["site"] == is.site && row["hole"] == is.hole {
				water, days = number(t, row["water_depth_m"]), number(t, row["days_on_hole"])
			}
		}
		v := oneHole(t, water, "hemipelagic mud", fmt.Sprintf("{name: A, casing: [{string: 10-3/4 in, to: %g mbsf, by: drilling in}]}", is.to))
		on, cased, _ := casedDays(v, n)
		for r := range on {
			sums[r] += on[r]
			casing[r] += cased[r]
		}
		recorded += days
		inBand(t, is.site+is.hole, days, on)
	}
	inBand(t, "all of them", recorded, sums)
	for _, row := range legs {
		if row["program"] == "IODP" && row["leg"] == "390C" {
			between(t, "re-entry and casing", number(t, row["reentry_casing_days"]), casing, sums)
		}
	}
}

const manyCased = 150

// casedDays are the days on a site in many expeditions; those of cones, casing and re-entry among them; and these with all that
// is done while casing or its running tool hangs. Which of the two the records count as re-entry and casing they do not tell.
func casedDays(v *voyage.Voyage, seed int) (on, cased, hung []float64) {
	on, cased, hung = make([]float64, manyCased), make([]float64, manyCased), make([]float64, manyCased)
	for r := range manyCased {
		hangs := false
		for _, e := range sim.Diary(context.Background(), v, uint64(seed), r, false).Entries {
			if e.Place.Site != "S" || e.Kind.Of().Class == activity.Sailing {
				continue
			}
			days := e.To.Sub(e.From).Hours() / 24
			hangs = hangs && e.Kind != activity.MakeUpBHA || e.Kind == activity.MakeUpCasing
			if on[r] += days; hangs || e.Kind.Of().Cause == activity.OfReentry {
				hung[r] += days
			}
			if e.Kind.Of().Cause == activity.OfReentry {
				cased[r] += days
			}
		}
	}
	return on, cased, hung
}

// A hole with three strings, cored below them by several bits: the leg has 4.68 d of re-entry and casing for 12 re-entries
// (legs.csv: IODP Leg 350; U1437E in 2116 m of water, 1104 m drilled and cored from there to 1806 m, holes.csv). How deep the
// strings went is from memory.
func TestDaysOfReentryAndCasingOfADeepHoleOnRecordLieInTheSimulatedBand(t *testing.T) {
	if testing.Short() {
		t.Skip("simulates many expeditions")
	}
	for _, row := range recordRows(t, "legs.csv") {
		if row["program"] == "IODP" && row["leg"] == "350" {
			v := oneHole(t, 2116, "volcaniclastic", "{name: A, casing: [{string: 20 in, to: 60 mbsf, by: drilling in}, {string: 16 in, to: 260 mbsf}, {string: 10-3/4 in, to: 1085 mbsf}], drill_ahead_to: 1104 mbsf, core: [{with: RCB, to: 1800 mbsf}]}")
			_, cased, hung := casedDays(v, 1)
			between(t, "re-entry and casing", number(t, row["reentry_casing_days"]), cased, hung)
		}
	}
}

// between fails where a value does not lie between the low end of one sample and the high end of another.
func between(t *testing.T, what string, days float64, least, most []float64) {
	t.Helper()
	low, high := stats.Quantiles(least, 0.05)[0], stats.Quantiles(most, 0.95)[0]
	t.Logf("%s: %.2f d on record; simulated medians %.2f and %.2f d", what, days, stats.Quantiles(least, 0.5)[0], stats.Quantiles(most, 0.5)[0])
	if days < low || days > high {
		t.Errorf("%s: %.2f d on record, simulated %.2f to %.2f d", what, days, low, high)
	}
}

// inBand fails where a value does not lie between the 5th and the 95th percentile of a sample.
func inBand(t *testing.T, what string, days float64, sample []float64) {
	t.Helper()
	between(t, what, days, sample, sample)
}

// recordRows are the rows of a table of records, by heading.
func recordRows(t *testing.T, name string) (rows []map[string]string) {
	t.Helper()
	folder := os.Getenv("COREDAYS_DATA")
	if folder == "" {
		t.Skip("COREDAYS_DATA names no folder of records")
	}
	f, err := os.Open(filepath.Join(folder, "holes", name))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	all, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	for _, line := range all[1:] {
		row := map[string]string{}
		for i, key := range all[0] {
			row[key] = line[i]
		}
		rows = append(rows, row)
	}
	return rows
}

func number(t *testing.T, text string) float64 {
	t.Helper()
	value, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return value
}
