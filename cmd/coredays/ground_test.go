package main

import (
	"context"
	"fmt"
	"math"
	"testing"

	"golang.org/x/exp/stats"
	"gonum.org/v1/gonum/stat"

	"coredays/model/result"
	"coredays/sim"
)

// The built-in ground against the records: refusal, recovery, the memory of cycles.

// softSediments are the default lithologies that piston corers were built for.
var softSediments = []string{"nannofossil ooze", "diatom ooze", "pelagic clay", "hemipelagic mud", "silty clay"}

// summary sails a hole often.
func summary(t *testing.T, water float64, lithology, hole string, n int) *result.Summary {
	t.Helper()
	s := sim.Replicate(context.Background(), oneHole(t, water, lithology, hole), sim.Run{Seed: 5, Replications: n}).Summary()
	if len(s.Sites) != 2 {
		t.Fatalf("%d sites", len(s.Sites))
	}
	return s
}

// Records of refusal are censored: holes that stopped at their target might have gone on. The changes
// of tool alone refuse too early; the survival estimate, which takes every stop for a target, too
// late. What is simulated must lie between them.
func TestRefusalLiesBetweenTheTwoEstimatesOfTheRecords(t *testing.T) {
	record := published(t)
	var depths []float64
	for _, lithology := range softSediments {
		v := oneHole(t, 2500, lithology, "{name: A, core: [{with: APC, to: refusal}]}")
		for _, d := range diaries(v, 200) {
			depths = append(depths, deepest(d))
		}
	}
	for _, p := range []struct {
		name  string
		level float64
	}{{"P10", 0.1}, {"P50", 0.5}, {"P90", 0.9}} {
		got := stats.Quantiles(depths, p.level)[0]
		low, high := record("refusal changes alone", "piston", "", p.name), record("refusal survival upper bound", "piston", "", p.name)
		t.Logf("refusal %s: %.0f mbsf, records %.0f to %.0f", p.name, got, low, high)
		if !(got >= low && got <= high) {
			t.Errorf("refusal %s is %.0f mbsf, want between %.0f and %.0f", p.name, got, low, high)
		}
	}
}

// Holes joined with the lithology described in them are refused at 150 mbsf in calcareous ooze and at 101 in clay, silt and mud
// (survival medians of 66 holes of 12 legs and of 51 of 10; standard errors of their logarithms 0.19 and 0.12, whole legs drawn
// again: `go run ./cmd/fitlevels -holes … -lithology …`, doi:10.5281/zenodo.10498831 and doi:10.1029/2022PA004572). Their legs,
// all early ones, refuse sooner than later ones, so that the two are held against each other.
func TestCorersGoDeeperInOozeThanInMud(t *testing.T) {
	median := func(lithology string) float64 {
		return float64(summary(t, 2500, lithology, "{name: A, core: [{with: APC, to: refusal}]}", 600).Sites[1].Holes[0].Refusal.P50)
	}
	got, want := math.Log(median("nannofossil ooze")/median("hemipelagic mud")), math.Log(150.0/101)
	stdErr := math.Hypot(0.19, 0.12)
	t.Logf("ln of the ratio %.2f, records %.2f ± %.2f", got, want, stdErr)
	if !(math.Abs(got-want) <= stdErr) {
		t.Errorf("the logarithm of the ratio is %.2f, records have %.2f ± %.2f", got, want, stdErr)
	}
}

// deepest is the greatest depth of a diary, m below sea floor.
func deepest(d *result.Diary) float64 {
	most := 0.0
	for _, e := range d.Entries {
		if depth := float64(e.Depth); depth > most {
			most = depth
		}
	}
	return most
}

func TestCyclesRememberAsTheRecordsDo(t *testing.T) {
	record := published(t)
	for _, tool := range []struct{ tool, name, lithology, hole string }{
		{"APC", "piston", "nannofossil ooze, side_shear: 0.1 kPa/m", "{name: A, core: [{with: APC, to: 300 mbsf}]}"},
		{"XCB", "extended barrel", "chalk", "{name: A, drill_ahead_to: 150 mbsf, core: [{with: XCB, to: 450 mbsf}]}"},
	} {
		var lags []float64
		for _, d := range diaries(oneHole(t, 2500, tool.lithology, tool.hole), 300) {
			if lag, ok := lagOne(onDeck(d)); ok {
				lags = append(lags, lag)
			}
		}
		got, se := stat.Mean(lags, nil), stat.StdErr(stat.StdDev(lags, nil), float64(len(lags)))
		want := record("lag-1 correlation of cycles in a hole", tool.name, "", "correlation")
		t.Logf("%s: lag-1 correlation %.2f ± %.2f, records about %.2f", tool.tool, got, se, want)
		if !(got > want-0.15 && got < want+0.15) {
			t.Errorf("%s: lag-1 correlation of cycles %.2f, records about %.2f", tool.tool, got, want)
		}
	}
}

// lagOne is the correlation of a cycle with the next, troubled cycles left out as in the records.
func lagOne(at []float64) (float64, bool) {
	var a, b []float64
	var all []float64
	for i := 1; i < len(at); i++ {
		all = append(all, at[i]-at[i-1])
	}
	if len(all) < 15 {
		return 0, false
	}
	most := 2 * stats.Quantiles(all, 0.5)[0]
	for i := 1; i < len(all); i++ {
		if all[i-1] < most && all[i] < most {
			a, b = append(a, all[i-1]), append(b, all[i])
		}
	}
	return stat.Correlation(a, b, nil), true
}

// Recovery of holes of the records' kind of ground. The records tell no lithology; the default
// lithologies are weighed alike.
func TestRecoveryByToolSpansThatOfTheRecords(t *testing.T) {
	const what = "recovery by length"
	record := published(t)
	tests := []struct {
		name, hole  string
		lithologies []string
	}{
		{"piston", "{name: A, core: [{with: APC, to: 120 mbsf}]}", softSediments},
		{"extended barrel", "{name: A, drill_ahead_to: 150 mbsf, core: [{with: XCB, to: 300 mbsf}]}",
			[]string{"nannofossil ooze", "pelagic clay", "hemipelagic mud", "silty clay", "sand", "chalk", "claystone", "volcaniclastic"}},
		{"rotary", "{name: A, drill_ahead_to: 150 mbsf, core: [{with: RCB, to: 350 mbsf}], reentry: free-fall funnel}",
			[]string{"chalk", "limestone", "chert", "claystone", "volcaniclastic", "basalt", "gabbro", "sand", "silty clay"}},
	}
	for _, test := range tests {
		var holes []float64
		var cored, recovered float64
		for _, lithology := range test.lithologies {
			s := summary(t, 2500, lithology, test.hole, 300)
			site := s.Sites[1]
			cored += site.Cored.Mean
			recovered += site.Recovered.Mean
			v := oneHole(t, 2500, lithology, test.hole)
			for _, d := range diaries(v, 150) {
				holes = append(holes, recovery(d))
			}
		}
		q := stats.Quantiles(holes, 0.1, 0.9)
		low, high := record(what, test.name, "holes of 20 m or more", "P10"), record(what, test.name, "holes of 20 m or more", "P90")
		total := record(what, test.name, "", "total")
		t.Logf("%-16s total %3.0f %%, holes P10 %3.0f, P90 %3.0f; records %3.0f, %3.0f, %3.0f", test.name, 100*recovered/cored, q[0], q[1], 100*total, 100*low, 100*high)
		pointsApart(t, test.name+" by length", 100*recovered/cored, 100*total, 5)
		pointsApart(t, test.name+" P10 of holes", q[0], 100*low, 10)
		pointsApart(t, test.name+" P90 of holes", q[1], 100*high, 10)
	}
}

// pointsApart reports shares that are too many percentage points apart.
func pointsApart(t *testing.T, what string, got, want, most float64) {
	t.Helper()
	if !(got > want-most && got < want+most) {
		t.Errorf("%s: %.0f %%, records %.0f %%, allowed %g points", what, got, want, most)
	}
}

// recovery is the share of what was cut that was recovered in a diary, %.
func recovery(d *result.Diary) float64 {
	var cut, up float64
	for _, e := range d.Entries {
		var c, u float64
		var number int
		var letter string
		if n, _ := fmt.Sscanf(e.Note, "%d%1s: %f m cut, %f up", &number, &letter, &c, &u); n == 4 {
			cut += c
			up += u
		}
	}
	return 100 * up / cut
}
