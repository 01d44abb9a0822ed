package main

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"coredays/cmd/fitlevels/regress"

	"gonum.org/v1/gonum/stat/distuv"
)

const published = "../../testdata/published/"

// medians reads the table of figures worked out from the whole records: quantity|tool|class|statistic -> value.
func medians(t *testing.T) map[string]float64 {
	t.Helper()
	f, err := os.Open(published + "medians.csv")
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
	table := map[string]float64{}
	for _, row := range rows[1:] {
		value, err := strconv.ParseFloat(row[4], 64)
		key := strings.Join(row[:4], "|")
		if _, twice := table[key]; err != nil || twice {
			t.Fatalf("medians.csv: %q: value %q, or there twice", key, row[4])
		}
		table[key] = value
	}
	return table
}

// known is a figure that must be in the table.
func known(t *testing.T, table map[string]float64, key string) float64 {
	t.Helper()
	v, ok := table[key]
	if !ok {
		t.Fatalf("medians.csv has no %q", key)
	}
	return v
}

// agree allows two standard errors of the extract: the whole record's own error is half of that or less.
func agree(t *testing.T, what string, got, whole, stdErr float64) {
	t.Helper()
	if !(math.Abs(got-whole) <= 2*stdErr) {
		t.Errorf("%s: %.4g on the extract, %.4g on the whole record, standard error %.3g", what, got, whole, stdErr)
	}
}

func TestExtractAgreesWithTheWholeRecord(t *testing.T) {
	r, err := openRecords(published+"core_cycles.csv", "")
	if err != nil || len(r.faults) > 0 {
		t.Fatal(err, r.faults)
	}
	s, table := studyOf(r.cores, nil), medians(t)
	s.inOrder(func(f ToolFit, rec Recovery) {
		for i, statistic := range []string{"constant", "slope"} {
			agree(t, f.Tool+" "+statistic, f.Line.Value[i], known(t, table, "core cycle line|"+f.Tool+"||"+statistic), f.Line.StdErr[i])
		}
		trouble := f.Splits[0].Trouble
		agree(t, f.Tool+" trouble", trouble.Chance, known(t, table, "cycles above twice the hole median|"+f.Tool+"||share"), trouble.ChanceErr)
		agree(t, f.Tool+" recovery", rec.ByLength, known(t, table, "recovery by length|"+f.Tool+"||total"), rec.LengthErr)
		levels := f.Splits[0].Levels
		agree(t, f.Tool+" sd of legs", levels.SD[0], known(t, table, "sd of ln cycle|"+f.Tool+"|between legs|robust"), levels.StdErr[0])
	})
	if len(s.Tools) != 3 {
		t.Errorf("%d tools fitted, want 3", len(s.Tools))
	}
}

// The goal for core cycles is 10 % of the median; the line at mid-depth holds it on a quarter of the record.
func TestLinesOfTheExtractAgreeWithinATenthAtThreeKilometres(t *testing.T) {
	r, err := openRecords(published+"core_cycles.csv", "")
	if err != nil {
		t.Fatal(err)
	}
	cycles, _ := cyclesOf(r.cores)
	table := medians(t)
	for _, tool := range []string{"H", "X"} {
		grouped := byHole(withTool(cycles, tool), leastCycles)
		rows := column(holeMedians(grouped), func(c Cycle) []float64 { return []float64{1, c.Water} })
		line := Fit{Value: regress.LeastAbsolute(rows, minutes(holeMedians(grouped)))}
		name := "core cycle line|" + toolName[tool] + "||"
		whole := known(t, table, name+"constant") + 3*known(t, table, name+"slope")
		if got := line.At([]float64{1, 3}); math.Abs(got/whole-1) > 0.1 {
			t.Errorf("%s at 3 km: %.3g min on the extract, %.3g on the whole record", toolName[tool], got, whole)
		}
	}
}

func TestRefusalOfTheExtractHoldsTheWholeRecordsMedian(t *testing.T) {
	r, err := openRecords(published+"core_cycles.csv", "")
	if err != nil {
		t.Fatal(err)
	}
	var depths []float64
	for _, s := range pistonStops(r.cores) {
		if s.Changed {
			depths = append(depths, s.Depth)
		}
	}
	slices.Sort(depths)
	low, high := medianRanks(len(depths))
	whole := known(t, medians(t), "refusal changes alone|piston||P50")
	if whole < depths[low] || whole > depths[high] {
		t.Errorf("median of the whole record %.0f m is outside the extract's %.0f-%.0f m", whole, depths[low], depths[high])
	}
}

// medianRanks are the order statistics (from 0) that hold the median with 95 %: binomial, n trials of 1/2.
func medianRanks(n int) (low, high int) {
	b := distuv.Binomial{N: float64(n), P: 0.5}
	for b.CDF(float64(low)) < 0.025 {
		low++
	}
	return low, n - 1 - low
}

func TestReportAndJSONAreWholeOnTheExtract(t *testing.T) {
	file := filepath.Join(t.TempDir(), "fit.json")
	var out, notes bytes.Buffer
	if err := run([]string{"-cores", published + "core_cycles.csv", "-holes", published + "site_days.csv", "-json", file}, &out, &notes); err != nil {
		t.Fatal(err)
	}
	for _, title := range []string{"Core cycle: median lines", "Trouble:", "Rotary cutting rate, m/h", "Refusal of the piston, m", "Failed starts:"} {
		if !strings.Contains(out.String(), title) {
			t.Errorf("report has no table %q", title)
		}
	}
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	var s Study
	if err := json.Unmarshal(text, &s); err != nil || s.Tools["H"].Line.Value[1] < 1 {
		t.Errorf("JSON does not read back: %v", err)
	}
}

// The whole records are 1 MB and stay out of the repository.
func TestWholeRecordGivesTheFiguresKept(t *testing.T) {
	dir := os.Getenv("COREDAYS_DATA")
	if dir == "" {
		t.Skip("set COREDAYS_DATA to the directory that has holes/cores.csv and holes/holes.csv")
	}
	r, err := openRecords(filepath.Join(dir, "holes/cores.csv"), filepath.Join(dir, "holes/holes.csv"))
	if err != nil {
		t.Fatal(err)
	}
	s, table := studyOf(r.cores, r.holes), medians(t)
	compare := func(key string, got float64) {
		whole := known(t, table, key)
		if math.Abs(got/whole-1) > 0.006 { // three figures are kept
			t.Errorf("%s: %.4g, kept as %.4g", key, got, whole)
		}
	}
	s.inOrder(func(f ToolFit, _ Recovery) {
		for _, c := range f.Classes {
			compare("core cycle median|"+f.Tool+"|"+strconv.Itoa(int(c.From))+"-"+strconv.Itoa(int(c.From)+1)+" km|median of hole medians", c.Minutes)
		}
		for i, statistic := range []string{"constant", "slope"} {
			agree(t, f.Tool+" "+statistic, f.Line.Value[i], known(t, table, "core cycle line|"+f.Tool+"||"+statistic), f.Line.StdErr[i])
		}
	})
	agree(t, "failed starts", s.Failed.Share, known(t, table, "holes stopping above 20 mbsf|any||share"), s.Failed.ShareErr)
	agree(t, "sites with one", s.Failed.SitesWith, known(t, table, "sites with a hole stopping above 20 mbsf|any||share"), 0.01)
}
