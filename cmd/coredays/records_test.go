package main

import (
	"context"
	"encoding/csv"
	"fmt"
	"os"
	"strconv"
	"strings"
	"testing"

	"golang.org/x/exp/stats"

	"coredays/model/activity"
	"coredays/model/result"
	"coredays/model/voyage"
	"coredays/scenario"
	"coredays/sim"
)

// The built-in ship and ground against what really happened. The records are worked out or read
// from publications; each file in testdata/published says where its figures come from.

// published are the figures of testdata/published/medians.csv by quantity, tool and class.
func published(t *testing.T) func(quantity, tool, class, statistic string) float64 {
	t.Helper()
	f, err := os.Open("../../testdata/published/medians.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return func(quantity, tool, class, statistic string) float64 {
		t.Helper()
		for _, row := range rows {
			if row[0] == quantity && row[1] == tool && row[2] == class && row[3] == statistic {
				value, err := strconv.ParseFloat(row[4], 64)
				if err != nil {
					t.Fatal(err)
				}
				return value
			}
		}
		t.Fatalf("no published %s %s %s %s", quantity, tool, class, statistic)
		return 0
	}
}

// oneHole is a scenario of one hole in mild seas, in a depth of water (m) and a lithology. Before it
// comes a short hole at a site as deep, so that the pipe has been strapped: the records are mostly
// of later sites.
func oneHole(t *testing.T, water float64, lithology, hole string) *voyage.Voyage {
	t.Helper()
	mild := strings.TrimSuffix(strings.Repeat("{hs: 0.5 m, sd: 0.1 m}, ", 12), ", ")
	text := fmt.Sprintf(`
version: 1
title: one hole
sails: 2030-03-01T00:00Z
sea_days: 60 d
ports: {from: {name: Near, position: 5S 110W}, to: {name: Far, position: 5S 112W}}
sites:
  - name: before
    position: 5.5S 111W
    water_depth: %[1]g m
    layers: [{bottom: 30 mbsf, lithology: silty clay}]
    weather: {months: [%[3]s]}
    holes: [{name: A, core: [{with: APC, to: 9 mbsf}]}]
  - name: S
    position: 6S 111W
    water_depth: %[1]g m
    layers: [{bottom: 2000 mbsf, lithology: %[2]s}]
    weather: {months: [%[3]s]}
    holes: [%[4]s]
`, water, lithology, mild, hole)
	p, err := scenario.Read("hole.yaml", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	v, err := voyage.Compile(p)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// diaries sails a voyage often and keeps what happened from the arrival at the last site on.
func diaries(v *voyage.Voyage, n int) []*result.Diary {
	var all []*result.Diary
	for i := range n {
		d := sim.Diary(context.Background(), v, 11, i, false)
		last := 0
		for j, e := range d.Entries {
			if strings.HasSuffix(e.Place.Way, "to S") { // the passage and the survey under way
				last = j + 1
			}
		}
		d.Entries = d.Entries[last:]
		all = append(all, d)
	}
	return all
}

// onDeck is when each core of an expedition reached the deck, in minutes after its first entry.
func onDeck(d *result.Diary) []float64 {
	var at []float64
	for _, e := range d.Entries {
		if e.Kind == activity.HandleBarrel || e.Kind == activity.HandleCorer {
			at = append(at, e.To.Sub(d.Entries[0].From).Minutes())
		}
	}
	return at
}

// cycles are the medians, by hole, of the minutes between cores on deck.
func cycles(all []*result.Diary) []float64 {
	var medians []float64
	for _, d := range all {
		var gaps []float64
		at := onDeck(d)
		for i := 1; i < len(at); i++ {
			gaps = append(gaps, at[i]-at[i-1])
		}
		if len(gaps) > 0 {
			medians = append(medians, stats.Quantiles(gaps, 0.5)[0])
		}
	}
	return medians
}

// within reports a figure that is off the record by more than a share.
func within(t *testing.T, what string, got, want, share float64) {
	t.Helper()
	off := got/want - 1
	t.Logf("%-45s simulated %7.2f, recorded %7.2f, %+5.1f %%", what, got, want, 100*off)
	if off > share || off < -share {
		t.Errorf("%s: simulated %.3g, recorded %.3g: %+.0f %%, allowed %.0f %%", what, got, want, 100*off, 100*share)
	}
}

// Piston cycles are 0.91 of the line through all in 113 holes of sites where no other tool was used, and 1.08 in 155
// holes where another followed (core summary, doi:10.5281/zenodo.10498831).
func TestPistonAndExtendedCyclesAreThoseOfTheRecords(t *testing.T) {
	record := published(t)
	tools := []struct {
		tool, name, lithology, hole string
		ofLine                      float64
	}{
		{"APC alone", "piston", "nannofossil ooze", "{name: A, core: [{with: APC, to: 150 mbsf}]}", 0.91},
		{"APC", "piston", "nannofossil ooze", "{name: A, core: [{with: APC, to: 150 mbsf}, {with: XCB, to: 160 mbsf}]}", 1.08},
		{"XCB", "extended barrel", "chalk", "{name: A, drill_ahead_to: 150 mbsf, core: [{with: XCB, to: 350 mbsf}]}", 1},
	}
	for _, tool := range tools {
		constant, slope := record("core cycle line", tool.name, "", "constant"), record("core cycle line", tool.name, "", "slope")
		for _, water := range []float64{500, 2000, 3500, 5000} {
			got := stats.Quantiles(cycles(diaries(oneHole(t, water, tool.lithology, tool.hole), 200)), 0.5)[0]
			within(t, fmt.Sprintf("%s core cycle at %g m, min", tool.tool, water), got, tool.ofLine*(constant+slope*water/1000), 0.15)
		}
	}
}

// The records' slope of the rotary cycle with water depth is mostly rock, as deep holes are drilled
// for the basement: so each class of depth gets the lithology whose rate is nearest to the one
// recorded there, and is compared with the median of that class.
func TestRotaryCyclesAreThoseOfTheRecords(t *testing.T) {
	record := published(t)
	hole := "{name: A, drill_ahead_to: 200 mbsf, core: [{with: RCB, to: 400 mbsf}], reentry: free-fall funnel}"
	for _, class := range []struct {
		name  string
		water float64
		rate  string
	}{
		{"0-1 km", 500, "14.4 m/h"}, {"1-2 km", 1500, "11.1 m/h"}, {"2-3 km", 2500, "13.3 m/h"},
		{"3-4 km", 3500, "11.4 m/h"}, {"4-5 km", 4500, "3.05 m/h"}, {"5-6 km", 5300, "3.1 m/h"},
	} {
		v := oneHole(t, class.water, "claystone, drilling_rate: "+class.rate, hole)
		got := stats.Quantiles(cycles(diaries(v, 100)), 0.5)[0]
		within(t, "RCB core cycle, "+class.name+" of water, min", got, record("core cycle median", "rotary", class.name, "median of hole medians"), 0.15)
	}
}

func TestTheFirstCoreComesUpWhenTheRecordsSay(t *testing.T) {
	record := published(t)
	const q = "start to first core first hole"
	classes := []struct {
		name   string
		centre float64 // m
	}{{"0-0.5 km", 300}, {"0.5-1.5 km", 1000}, {"1.5-2.5 km", 2000}, {"2.5-3.5 km", 3000}, {"3.5-4.5 km", 4000}, {"4.5-7 km", 5100}}
	// Between the middles of the classes the median runs straight.
	recorded := func(water float64) float64 {
		for i := 1; i < len(classes); i++ {
			if a, b := classes[i-1], classes[i]; water <= b.centre {
				low, high := record(q, "any", a.name, "P50"), record(q, "any", b.name, "P50")
				return low + (high-low)*(water-a.centre)/(b.centre-a.centre)
			}
		}
		return 0
	}
	for _, water := range []float64{500, 2000, 3500, 5000} {
		var hours []float64
		for _, d := range diaries(oneHole(t, water, "nannofossil ooze", "{name: A, core: [{with: APC, to: 60 mbsf}, {with: XCB, to: 70 mbsf}]}"), 300) {
			hours = append(hours, firstCore(d))
		}
		within(t, fmt.Sprintf("arrival to first core on deck at %g m, h", water), stats.Quantiles(hours, 0.5)[0], recorded(water), 0.15)
	}
}

// firstCore is the time from arrival on site to the first core on deck, h.
func firstCore(d *result.Diary) float64 {
	return onDeck(d)[0] / 60
}

// span is the hours that an activity took in a diary.
func span(d *result.Diary, kinds ...activity.Kind) float64 {
	var hours float64
	for _, e := range d.Entries {
		for _, k := range kinds {
			if e.Kind == k {
				hours += e.To.Sub(e.From).Hours()
			}
		}
	}
	return hours
}

// A dated case lies within what the simulator takes for possible: between its 2nd and 98th
// hundredth. Cases and sources stand in testdata/published/timed_cases.csv.
func TestDatedCasesLieWithinTheSpread(t *testing.T) {
	out := func(d *result.Diary) float64 { return span(d, activity.PullPipe, activity.LayDownBHA) }
	spud := func(d *result.Diary) float64 {
		for _, e := range d.Entries {
			if e.Kind == activity.TopDrive {
				return e.To.Sub(d.Entries[0].From).Hours()
			}
		}
		return 0
	}
	coring := func(d *result.Diary) float64 {
		var from, to float64
		for _, e := range d.Entries {
			at := e.To.Sub(d.Entries[0].From).Hours()
			if e.Kind == activity.TopDrive && from == 0 {
				from = at
			}
			if e.Kind == activity.PullFromHole {
				to = at
			}
		}
		return to - from
	}
	tests := []struct {
		id, what, lithology, hole string
		water, hours              float64
		of                        func(*result.Diary) float64
	}{
		{"V01", "26 APC oriented + 2 XCB, 259.6 m", "nannofossil ooze, side_shear: 0.1 kPa/m", "{name: A, oriented: yes, core: [{with: APC, to: 240 mbsf}, {with: XCB, to: 259.6 mbsf}]}", 2387, 23.5, coring},
		{"V02", "22 APC + 10 XCB, 285.5 m", "nannofossil ooze, side_shear: 0.1 kPa/m", "{name: A, core: [{with: APC, to: 206.9 mbsf}, {with: XCB, to: 285.5 mbsf}]}", 4788, 45.33, coring},
		{"V04", "20 APC oriented + temperature, 181.3 m", "hemipelagic mud, side_shear: 0.1 kPa/m", "{name: A, oriented: yes, temperature: {on_cores: [4, 7, 10]}, core: [{with: APC, to: 181.3 mbsf}]}", 489, 13.87, coring},
		{"V05", "11 APC + 11 XCB, 205.2 m", "silty clay, side_shear: 0.1 kPa/m", "{name: A, core: [{with: APC, to: 100.3 mbsf}, {with: XCB, to: 205.2 mbsf}]}", 1015, 15.58, coring},
		{"V16", "sea floor to rotary table", "basalt", "{name: A, drill_ahead_to: 20 mbsf, core: [{with: RCB, to: 30 mbsf}]}", 5020, 8.5, out},
		{"V17", "sea floor to rotary table", "basalt", "{name: A, drill_ahead_to: 20 mbsf, core: [{with: RCB, to: 30 mbsf}]}", 3635, 5.5, out},
		{"V18", "sea floor to rig floor", "silty clay", "{name: A, core: [{with: APC, to: 30 mbsf}]}", 1731, 4.92, out},
		{"V19", "sea floor to rig floor", "claystone", "{name: A, drill_ahead_to: 20 mbsf, core: [{with: RCB, to: 30 mbsf}]}", 3732, 8.25, out},
		{"V20", "arrive to spud", "nannofossil ooze", "{name: A, core: [{with: APC, to: 30 mbsf}]}", 2387, 6.17, spud},
		{"V22", "beacon to RCB spud", "claystone", "{name: A, drill_ahead_to: 20 mbsf, core: [{with: RCB, to: 30 mbsf}]}", 3804, 8.13, spud},
	}
	for _, test := range tests {
		var hours []float64
		for _, d := range diaries(oneHole(t, test.water, test.lithology, test.hole), 300) {
			hours = append(hours, test.of(d))
		}
		q := stats.Quantiles(hours, 0.02, 0.5, 0.98)
		t.Logf("%s %-40s at %4.0f m: recorded %5.2f h, simulated P2 %5.2f, P50 %5.2f, P98 %5.2f", test.id, test.what, test.water, test.hours, q[0], q[1], q[2])
		if test.hours < q[0] || test.hours > q[2] {
			t.Errorf("%s %s: recorded %.2f h, simulated %.2f to %.2f h", test.id, test.what, test.hours, q[0], q[2])
		}
	}
}
