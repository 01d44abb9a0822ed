package main

import (
	"bytes"
	"errors"
	"slices"
	"strings"
	"testing"
	"time"
)

const coreHead = "program,leg,site,hole,water_depth_m,core,type,top_depth_mbsf,cored_m,recovered_m,time_on_deck\n"

func TestReaderListsBadRowsAndGuessesNothing(t *testing.T) {
	table := "# a source\n" + coreHead +
		"X,1,10,A,1000,1,H,0.0,9.5,9.1,2000-01-01T00:00\n" +
		"X,1,10,A,deep,2,H,9.5,9.5,9.1,2000-01-01T01:00\n" +
		"X,1,10,A,1000,3,H,19.0,9.5,,noon\n" +
		"X,1,10,A\n" +
		"X,1,10,A,1000,4,H,NaN,9.5,9.1,2000-01-01T02:00\n" +
		"X,1,10,A,1000,5,H,38.0,9.5,,\n"
	cores, _, faults, err := readCores(strings.NewReader(table))
	if err != nil || len(cores) != 2 || cores[1].Number != 5 || !cores[1].OnDeck.IsZero() {
		t.Fatalf("cores %+v, error %v: want rows 1 and 5", cores, err)
	}
	for i, part := range []string{`line 4: water_depth_m "deep"`, `line 5: time_on_deck "noon"`, "wrong number of fields", `top_depth_mbsf "NaN"`} {
		if i >= len(faults) || !strings.Contains(faults[i], part) {
			t.Errorf("faults %q: number %d should tell %q", faults, i+1, part)
		}
	}
}

func TestMissingColumnsAreNamedTogether(t *testing.T) {
	_, _, _, err := readCores(strings.NewReader("leg,site,hole\n"))
	if err == nil || !strings.Contains(err.Error(), `"core"`) || !strings.Contains(err.Error(), `"time_on_deck"`) {
		t.Errorf("error %v does not name the missing columns", err)
	}
}

func TestOnlyNeighbouringCoresOfOneToolMakeACycle(t *testing.T) {
	table := coreHead +
		"X,1,10,A,1000,1,H,0.0,9.5,9.1,2000-01-01T00:00\n" +
		"X,1,10,A,1000,2,H,9.5,9.5,9.1,2000-01-01T00:45\n" + // a cycle of 45 min
		"X,1,10,A,1000,3,X,19.0,9.5,9.1,2000-01-01T01:45\n" + // other tool
		"X,1,10,A,1000,5,X,38.0,9.5,9.1,2000-01-01T03:45\n" + // core 4 missing
		"X,1,10,A,1000,6,X,47.5,9.5,9.1,2000-01-01T03:45\n" + // no time between
		"X,1,10,A,1000,7,X,57.0,9.5,9.1,2000-01-03T03:45\n" + // two days
		"X,1,10,B,1000,8,X,66.5,9.5,9.1,2000-01-03T05:45\n" // other hole
	cores, _, faults, err := readCores(strings.NewReader(table))
	if err != nil || len(faults) > 0 {
		t.Fatal(err, faults)
	}
	cycles, skipped := cyclesOf(cores)
	if len(cycles) != 1 || cycles[0].Minutes != 45 || skipped != (Skipped{1, 1}) {
		t.Errorf("cycles %+v, left out %+v; want one of 45 min, one without time, one over a day", cycles, skipped)
	}
}

func TestEveryNthSiteIsPickedWhole(t *testing.T) {
	rows := strings.Fields("a a b c c c d e e f")
	kept := pick(rows, func(s string) string { return s }, func(m []string) bool { return m[0] != "b" }, 2)
	if got := strings.Join(kept, " "); got != "c c c e e" { // of a c d e f, the second and the fourth
		t.Errorf("kept %q, want both rows of e and all of c", got)
	}
}

func TestCallWithoutARecordIsAWrongCall(t *testing.T) {
	var out, notes bytes.Buffer
	err := run(nil, &out, &notes)
	if !errors.Is(err, errCall) || exitCode(err) != 2 {
		t.Errorf("error %v, exit %d; want a wrong call, exit 2", err, exitCode(err))
	}
	if err := run([]string{"-cores", "no such file"}, &out, &notes); err == nil || exitCode(err) != 1 {
		t.Errorf("error %v: want exit 1 for a missing file", err)
	}
	if !slices.Equal([]string{out.String()}, []string{""}) {
		t.Errorf("standard output has %q", out.String())
	}
}

func TestTheFirstSiteOfALegIsTheOneBegunFirst(t *testing.T) {
	at := func(day int) time.Time { return time.Date(2030, 1, day, 0, 0, 0, 0, time.UTC) }
	all := []Hole{{Leg: "1", Site: "b", Start: at(5)}, {Leg: "1", Site: "a", Start: at(1)}, {Leg: "1", Site: "a", Start: at(9)}, {Leg: "2", Site: "c", Start: at(3)}, {Leg: "1", Site: "d"}}
	for i, want := range []string{"no", "yes", "yes", "yes"} {
		if got := firstOfLeg(all, all[i]); got != want {
			t.Errorf("site %s: %s, want %s", all[i].Site, got, want)
		}
	}
}
