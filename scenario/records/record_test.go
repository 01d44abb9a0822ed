package records

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"coredays/model/coring"
	"coredays/model/record"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// holesHead is the heading of a table of holes.
var holesHead = strings.Join(holeColumns, ",")

// holeRow is a row of an invented site of one hole, with some cells changed.
func holeRow(change map[string]string) string {
	cells := map[string]string{"program": "X", "leg": "1", "site": "S", "hole": "A", "hole_order": "1", "holes_at_site": "1",
		"latitude": "-48.5", "longitude": "158", "water_depth_m": "3000", "penetration_m": "200", "cored_m": "200", "n_cores": "22",
		"n_apc": "12", "n_hlapc": "", "n_xcb": "10", "n_rcb": "0", "n_other": "0", "cored_apc_m": "110", "cored_xcb_m": "90", "cored_rcb_m": "0",
		"cored_other_m": "0", "start": "2030-01-01T00:00", "end": "2030-01-03T12:00"}
	var row []string
	for _, c := range holeColumns {
		value := cells[c]
		if changed, is := change[c]; is {
			value = changed
		}
		row = append(row, value)
	}
	return strings.Join(row, ",")
}

func readRows(t *testing.T, rows ...string) ([]record.Site, []record.LeftOut) {
	t.Helper()
	sites, out, err := ReadHoles("holes.csv", strings.NewReader(holesHead+"\n"+strings.Join(rows, "\n")+"\n"))
	if err != nil {
		t.Fatal(err)
	}
	return sites, out
}

func TestARowThatCannotBeReadIsLeftOutWithItsReason(t *testing.T) {
	for _, test := range []struct {
		change map[string]string
		want   string
	}{
		{map[string]string{"site": ""}, `site "": wanted a name`},
		{map[string]string{"water_depth_m": "deep"}, `water_depth_m "deep": wanted a number from 1 to 11000`},
		{map[string]string{"water_depth_m": "NaN"}, `water_depth_m "NaN": wanted a number`},
		{map[string]string{"penetration_m": "-3"}, `penetration_m "-3": wanted a number from 0 to 5000`},
		{map[string]string{"hole_order": "1.5"}, `hole_order "1.5": wanted a whole number`},
		{map[string]string{"latitude": "95"}, "latitude and longitude 95 158: the position"},
		{map[string]string{"longitude": ""}, "latitude and longitude -48.5 "},
		{map[string]string{"start": "1 Jan 2030"}, `start "1 Jan 2030": wanted a time in UTC, such as 2027-03-18T03:00`},
		{map[string]string{"end": "2029-12-31T00:00"}, `end "2029-12-31T00:00": wanted a time after the start and at most 200 days later`},
		{map[string]string{"end": "2031-12-31T00:00"}, "at most 200 days later"},
		{map[string]string{"n_apc": "", "n_xcb": "", "n_rcb": ""}, "the tools of the cores are not stated"},
		{map[string]string{"n_apc": "many"}, `n_apc "many": wanted a number from 0 to 2000`},
		{map[string]string{"leg": "378S"}, "the expedition did not core"},
		{map[string]string{"holes_at_site": "2"}, "more holes than the file has rows of it"},
		{map[string]string{"penetration_m": "12"}, "no hole of the site was cored below 20 m"},
	} {
		sites, out := readRows(t, holeRow(test.change))
		if len(sites) != 0 || len(out) != 1 || out[0].Row != 2 || !strings.Contains(out[0].Why, test.want) {
			t.Errorf("%v: %d sites, left out %v, want line 2: %s", test.change, len(sites), out, test.want)
		}
	}
}

func TestASiteIsLeftOutWithItsBadRow(t *testing.T) {
	two := map[string]string{"holes_at_site": "2"}
	bad := map[string]string{"holes_at_site": "2", "hole": "B", "hole_order": "2", "start": "soon"}
	sites, out := readRows(t, holeRow(two), holeRow(bad), holeRow(map[string]string{"site": "T"}))
	if len(sites) != 1 || sites[0].Name != "T" {
		t.Errorf("sites %v, want T alone", sites)
	}
	if len(out) != 2 || out[0].Row != 2 || out[1].Row != 3 || out[0].Why != "another row of the site was left out" {
		t.Errorf("left out %v", out)
	}
}

// The first site of a leg is the one that began first, whether or not the ones before it in the file are used.
func TestTheFirstSiteOfALegIsToldApart(t *testing.T) {
	sites, _ := readRows(t, holeRow(map[string]string{"site": "late", "start": "2030-02-01T00:00", "end": "2030-02-02T00:00"}), holeRow(nil),
		holeRow(map[string]string{"leg": "2", "site": "after a failure"}),
		holeRow(map[string]string{"leg": "2", "site": "failed", "penetration_m": "12", "start": "2029-12-30T00:00"}))
	model, _ := Model()
	want := map[string]bool{"late": false, "S": true, "after a failure": false}
	for _, s := range sites {
		p, err := model.Plan(s, Programme)
		if err != nil {
			t.Fatal(err)
		}
		if first, named := want[s.Name]; !named || s.First != first || p.Begun == first {
			t.Errorf("site %s: first of its leg %v, in its plan the expedition has begun %v", s.Name, s.First, p.Begun)
		}
	}
	if len(sites) != len(want) {
		t.Errorf("%d sites, want %d", len(sites), len(want))
	}
}

func TestARowWithTooFewCellsIsListed(t *testing.T) {
	sites, out := readRows(t, "X,1,S,A", holeRow(nil))
	if len(sites) != 1 || len(out) != 1 || out[0].Row != 2 {
		t.Errorf("%d sites, left out %v", len(sites), out)
	}
}

func TestATableWithoutAColumnSaysWhich(t *testing.T) {
	_, _, err := ReadHoles("holes.csv", strings.NewReader("program,leg\n"))
	if err == nil || !strings.Contains(err.Error(), "holes.csv:1: the heading has no column site, hole") {
		t.Errorf("error %v", err)
	}
}

func TestDaysOfASiteAreTheSumOfItsHoles(t *testing.T) {
	sites, _ := readRows(t, holeRow(map[string]string{"holes_at_site": "2"}),
		holeRow(map[string]string{"holes_at_site": "2", "hole": "B", "hole_order": "2", "start": "2030-02-01T00:00", "end": "2030-02-01T06:00"}))
	if got := float64(sites[0].Days() / unit.Day); math.Abs(got-2.75) > 1e-9 {
		t.Errorf("%g days, want 2.75: the month between the holes was elsewhere", got)
	}
}

// Without metres by tool each core is a full stroke, shortened where that is more than was cored.
func TestMetresByToolFollowFromCores(t *testing.T) {
	blank := map[string]string{"cored_apc_m": "", "cored_xcb_m": "", "cored_rcb_m": "", "cored_other_m": ""}
	sites, _ := readRows(t, holeRow(blank))
	h := sites[0].Holes[0]
	want := []float64{12 * 200.0 / 22, 10 * 200.0 / 22}
	for i, step := range h.Steps() {
		if math.Abs(float64(step.Length)-want[i]) > 1e-9 {
			t.Errorf("%v %.2f m, want %.2f", step.With, float64(step.Length), want[i])
		}
	}
	blank["cored_m"], blank["penetration_m"] = "500", "500"
	sites, _ = readRows(t, holeRow(blank))
	h = sites[0].Holes[0]
	if got, want := float64(h.Ahead()), 500-22*9.5*1.02; math.Abs(got-want) > 1e-9 {
		t.Errorf("drilled %.1f m, want %.1f: 22 cores can't be longer than full barrels", got, want)
	}
}

func TestAPlanFromARecordGoesAsDeepAsTheRecord(t *testing.T) {
	model, faults := Model()
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	failed := map[string]string{"holes_at_site": "2", "penetration_m": "9", "cored_m": "9", "n_cores": "1", "n_apc": "1", "n_xcb": "0", "cored_apc_m": "9", "cored_xcb_m": "0"}
	whole := map[string]string{"holes_at_site": "2", "hole": "B", "hole_order": "2", "start": "2030-01-03T12:00", "end": "2030-01-05T12:00"}
	sites, _ := readRows(t, holeRow(failed), holeRow(whole))
	for known, want := range map[Knowledge]string{Programme: "B B", Counts: "A B B"} {
		p, err := model.Plan(sites[0], known)
		if err != nil {
			t.Fatal(err)
		}
		var names []string
		for _, item := range p.Sites[0].Items {
			names = append(names, strings.SplitN(item.Name, ",", 2)[0])
			if item.Hole != nil && item.Name == "B" && math.Abs(float64(item.Target())-200) > 1e-9 {
				t.Errorf("%v: hole B goes to %v", known, item.Target())
			}
		}
		if got := strings.Join(names, " "); got != want {
			t.Errorf("%v: items %s, want %s: a hole and the work not on record", known, got, want)
		}
		if _, err := voyage.Compile(p); err != nil {
			t.Error(err)
		}
	}
}

func TestPlansKnowOfCountsOnlyAtThatLevel(t *testing.T) {
	model, _ := Model()
	sites, _ := readRows(t, holeRow(nil))
	for known, want := range map[Knowledge]float64{Programme: 0, Counts: 110.0 / 12} {
		p, _ := model.Plan(sites[0], known)
		if got := float64(p.Sites[0].Items[0].Hole.Stages[0].Advance); math.Abs(got-want) > 1e-9 {
			t.Errorf("%v: each core %.2f m, want %.2f", known, got, want)
		}
	}
}

func TestTheSeaOfIceIsThatOfTheNearestWaterTowardsTheEquator(t *testing.T) {
	model, _ := Model()
	sites, _ := readRows(t, holeRow(map[string]string{"latitude": "-76", "longitude": "-175"}))
	p, err := model.Plan(sites[0], Programme)
	if err != nil || p.Sites[0].Climate.Mean[0] <= 0 {
		t.Errorf("climate %v, error %v", p, err)
	}
}

func TestWorkNotOnRecordComesWithItsChance(t *testing.T) {
	s := Sometimes{Chance: 0.4, Median: 10, Factor: 3}
	for p, want := range map[float64]float64{0.1: 0, 0.6: 0, 0.8: 10, 0.96: 30} { // half and nine tenths of the upper 40 %
		if got := s.Quantile(p); math.Abs(got-want) > 1e-6 {
			t.Errorf("quantile %g: %g, want %g", p, got, want)
		}
	}
}

func TestCoresOfOtherToolsArePassedOver(t *testing.T) {
	text := strings.Join(coreColumns, ",") + "\nX,1,S,A,1,H,9.5,9.0,2030-01-01T10:00\nX,1,S,A,2,1,20,,\nX,1,S,A,3,X,9.5,,2030-01-01T12:00\nX,1,S,A,4,R,long,1,\n"
	holes, out, err := ReadCores("cores.csv", strings.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	cores := holes[record.CoreHole{Program: "X", Leg: "1", Site: "S", Hole: "A"}]
	if len(cores) != 2 || cores[1].Tool != coring.XCB || !math.IsNaN(float64(cores[1].Recovered)) {
		t.Errorf("cores %v", cores)
	}
	if got := fmt.Sprint(out); len(out) != 1 || !strings.Contains(got, `cored_m "long"`) || out[0].Row != 5 {
		t.Errorf("left out %s", got)
	}
}
