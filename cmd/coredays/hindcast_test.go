package main

import (
	"context"
	"io"
	"math"
	"os"
	"path/filepath"
	"testing"

	"coredays/model/score"
	"coredays/scenario/records"
	"coredays/sim"
)

// The extract of testdata/published (98 sites by a stated rule, never by fit) is scored at each run of
// the tests; the whole record where COREDAYS_DATA names the folder that has holes/holes.csv. What is
// allowed follows from the sampling error over legs, not from what comes out.

const (
	extract      = "../../testdata/published/site_days.csv"
	extractCores = "../../testdata/published/core_cycles.csv"
)

func scored(t *testing.T, holes, cores string, known records.Knowledge, replications int) *score.Hindcast {
	t.Helper()
	h := hindcasting{cores: cores, level: known.String()}
	r, err := h.read(holes, sim.Run{Seed: 1, Replications: replications}, io.Discard)
	if err != nil {
		t.Fatal(err)
	}
	result, err := r.sail(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	c := result.Card
	t.Logf("%v: %d sites of %d legs, CRPS %.3f (%.3f-%.3f), skill %.2f, abs %.1f %%, ratio %.3f (%.3f-%.3f), in 50 %% %.3f (%.3f-%.3f), in 80 %% %.3f (%.3f-%.3f)",
		known, c.Cases, c.Groups, c.CRPS, c.CRPSCI[0], c.CRPSCI[1], c.Skill, c.AbsPercent, c.Ratio, c.RatioCI[0], c.RatioCI[1],
		c.Inside50, c.Inside50CI[0], c.Inside50CI[1], c.Inside80, c.Inside80CI[0], c.Inside80CI[1])
	return result
}

// holds wants an interval of three standard errors to hold a value: six intervals are looked at in each run, of
// which one of 95 in 100 would fail one run in four for no fault of the model.
func holds(t *testing.T, what string, ci [2]float64, value float64) {
	t.Helper()
	more := (3/1.96 - 1) / 2 * (ci[1] - ci[0])
	ci = [2]float64{ci[0] - more, ci[1] + more}
	if !(ci[0] <= value && value <= ci[1]) {
		t.Errorf("%s: the interval %.3f to %.3f does not hold %.3g", what, ci[0], ci[1], value)
	}
}

// wholeRecord80 is the share of the whole record's sites inside the 80 % band: with cores of their own length a little less
// than it should be, until the days are fitted anew (testdata/published/HINDCAST.md).
const wholeRecord80 = 0.77

func TestDaysOfTheExtractAreForeseen(t *testing.T) {
	if testing.Short() {
		t.Skip("simulates many expeditions")
	}
	for _, known := range []records.Knowledge{records.Programme, records.Counts} {
		result := scored(t, extract, "", known, 200)
		c := &result.Card
		if c.Cases < 60 {
			t.Errorf("%d sites, wanted at least 60", c.Cases)
		}
		holds(t, "median ratio", c.RatioCI, 1)
		holds(t, "share inside the 50 % band", c.Inside50CI, 0.5)
		holds(t, "share inside the 80 % band", c.Inside80CI, wholeRecord80)
		if c.CRPSCI[0] > 1.66 { // cross-validated boosted regression trees on the counts of this record have 1.59, a log-linear regression 1.66
			t.Errorf("CRPS of at least %.2f d, wanted 1.66 d or less", c.CRPSCI[0])
		}
	}
}

// cyclesOff is how far the median of a class of cycles may be off, 10 %, beside three standard errors of
// the median of its holes: the medians of holes scatter by 0.33 in the logarithm (piston, extended) to
// 0.6 (rotary, mostly rock; core summary, doi:10.5281/zenodo.10498831).
func cyclesOff(c score.Cycle) float64 {
	scatter := 0.33
	if c.Tool == "RCB" {
		scatter = 0.6
	}
	return 0.10 + 3*scatter*math.Sqrt(math.Pi/2/float64(c.Holes))
}

func TestCyclesAndRecoveryOfTheExtractAreForeseen(t *testing.T) {
	if testing.Short() {
		t.Skip("simulates many expeditions")
	}
	result := scored(t, wholeRecordOr(t, extract), extractCores, records.Counts, 20)
	holes := 0
	for _, c := range result.Cycles {
		off := math.Log(c.Simulated / c.Record)
		t.Logf("%-5s %s %3d holes: record %5.1f min, simulated %5.1f, %+.0f %%", c.Tool, c.DepthClass, c.Holes, c.Record, c.Simulated, 100*off)
		if math.Abs(off) > cyclesOff(c) {
			t.Errorf("%s cycles in %s of water: %+.0f %%, allowed %.0f %%", c.Tool, c.DepthClass, 100*off, 100*cyclesOff(c))
		}
		holes += c.Holes
	}
	for _, r := range result.Recovery {
		t.Logf("%-5s %3d holes: record %.0f, simulated %.0f %%", r.Tool, r.Holes, r.Record, r.Simulated)
	}
	if holes < 10 {
		t.Errorf("cycles of %d holes only", holes)
	}
}

// wholeRecordOr is the whole record of holes where it is at hand: the extracts of holes and of cores
// are of different sites.
func wholeRecordOr(t *testing.T, extract string) string {
	t.Helper()
	if dir := os.Getenv("COREDAYS_DATA"); dir != "" {
		return filepath.Join(dir, "holes", "holes.csv")
	}
	return extract
}

func TestTheWholeRecordIsForeseen(t *testing.T) {
	dir := os.Getenv("COREDAYS_DATA")
	if dir == "" {
		t.Skip("COREDAYS_DATA names no folder with holes/holes.csv")
	}
	result := scored(t, filepath.Join(dir, "holes", "holes.csv"), "", records.Programme, 200)
	c := &result.Card
	holds(t, "median ratio", c.RatioCI, 1)
	holds(t, "share inside the 50 % band", c.Inside50CI, 0.5)
	holds(t, "share inside the 80 % band", c.Inside80CI, 0.8)
	if c.CRPS > 1.6 {
		t.Errorf("CRPS %.2f d, wanted 1.60 d or less", c.CRPS)
	}
}
