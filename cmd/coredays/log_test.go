package main

import (
	"encoding/csv"
	"io"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"testing"
)

// A replication written down as a log passes every depth when the simulation of that replication alone
// has marked it: what is drawn over the chart is on the same scale as what is drawn below.
func TestADiaryKeptAsALogPassesEachDepthWhenItWasMarked(t *testing.T) {
	if testing.Short() {
		t.Skip("reads a whole expedition")
	}
	dir := t.TempDir()
	log := filepath.Join(dir, "log.csv")
	for _, args := range [][]string{{"diary", "--replication", "0", "--csv", log},
		{"simulate", "--replications", "1", "--log", log, "--csv", dir}} {
		if code := run(t.Context(), args, io.Discard, os.Stderr); code != exitOK {
			t.Fatalf("%q: exit code %d", args, code)
		}
	}
	file, err := os.Open(filepath.Join(dir, "logged.csv"))
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	holes := map[string]bool{}
	for _, row := range rows[1:] {
		logged, _ := strconv.ParseFloat(row[3], 64)
		marked, err := strconv.ParseFloat(row[6], 64)
		if err != nil || math.Abs(logged-marked)*86400 > 2 { // a log is kept to the second, and so is the arrival
			t.Errorf("site %s, hole %s, %s m: logged after %s d, marked after %s d", row[0], row[1], row[2], row[3], row[6])
		}
		holes[row[0]+" "+row[1]] = true
	}
	if len(holes) < 12 {
		t.Errorf("only %d holes were compared", len(holes))
	}
}
