package record

import (
	"math"
	"testing"
	"time"

	"coredays/model/coring"
	"coredays/model/unit"
)

// cores are piston cores on deck so many minutes after one another, each 9.5 m cut and 9 m up.
func cores(minutes ...int) []Core {
	at := time.Date(2030, 1, 1, 0, 0, 0, 0, time.UTC)
	list := []Core{{Number: 1, Tool: coring.APC, Cored: 9.5, Recovered: 9, OnDeck: at}}
	for i, m := range minutes {
		at = at.Add(time.Duration(m) * time.Minute)
		list = append(list, Core{Number: i + 2, Tool: coring.APC, Cored: 9.5, Recovered: 9, OnDeck: at})
	}
	return list
}

func TestTheCycleIsTheMedianBetweenCoresThatFollow(t *testing.T) {
	list := cores(50, 60, 70, 80, 90)
	if got, enough := Cycle(list, coring.APC); !enough || got != 70 {
		t.Errorf("%g min, %v", got, enough)
	}
	if _, enough := Cycle(cores(50, 60, 70, 80), coring.APC); enough {
		t.Error("four cycles are too few")
	}
	list = cores(50, 60, 70, 80, 90, -5, 25*60) // neither a typing error nor a day between makes a cycle
	if got, _ := Cycle(list, coring.APC); got != 70 {
		t.Errorf("%g min with two that make no cycle, want 70", got)
	}
	list = cores(50, 60, 1000, 70, 80, 90)
	list[3].Tool = coring.XCB // another tool between
	if got, _ := Cycle(list, coring.APC); got != 0 {
		t.Errorf("%g min of cores parted by another tool: four cycles are left", got)
	}
	list = cores(50, 60, 1000, 70, 80, 90)
	for i := 3; i < len(list); i++ {
		list[i].Number++ // what is missing between was drilled, or lost its time
	}
	if got, _ := Cycle(list, coring.APC); got != 70 {
		t.Errorf("%g min with a core missing between two, want 70 of 50, 60, 70, 80 and 90", got)
	}
}

// Nineteen holes in twenty have cores of 9.66 m at most on average (hole summaries, doi:10.5281/zenodo.10498831), so
// that of 100 m with ten cores 3.4 m were drilled; of 80 m all were cored, 8 m each.
func TestCoresAreNoLongerThanBarrelsTake(t *testing.T) {
	for cored, want := range map[unit.Length]float64{100: 96.6, 80: 80, 95: 95} {
		h := Hole{Depth: unit.Depth(cored), Cored: cored}
		h.Cores[coring.APC] = 10
		steps := h.Steps()
		if len(steps) != 1 || math.Abs(float64(steps[0].Length)-want) > 0.5 {
			t.Errorf("%g m with ten cores: %+v, want %g m", float64(cored), steps, want)
		}
		if got := float64(h.Ahead()); math.Abs(got-(float64(cored)-want)) > 0.5 {
			t.Errorf("%g m with ten cores: %.1f m drilled, want %.1f", float64(cored), got, float64(cored)-want)
		}
	}
}

// Ten full strokes of 9.5 m and ten half strokes of 4.7 m are 142 m; of 71 m each is half as long.
func TestAllCoresAreShortenedAlike(t *testing.T) {
	h := Hole{Depth: 71, Cored: 71}
	h.Cores[coring.APC], h.Cores[coring.HLAPC] = 10, 10
	steps := h.Steps()
	if len(steps) != 2 || steps[0].With != coring.APC || math.Abs(float64(steps[0].Length)-47.5) > 1e-9 || math.Abs(float64(steps[1].Length)-23.5) > 1e-9 {
		t.Errorf("%+v", steps)
	}
}

func TestRecoveryIsBySumsOfLengths(t *testing.T) {
	list := cores(50, 50, 50, 50, 50)
	list[0].Recovered = unit.Length(math.NaN())
	list[1].Recovered = 0
	if got, enough := Recovery(list, coring.APC); !enough || math.Abs(got-100*4*9/(5*9.5)) > 1e-9 {
		t.Errorf("%g %%, %v", got, enough)
	}
	if _, enough := Recovery(list[:5], coring.APC); enough {
		t.Error("four cores with a known length are too few")
	}
}

func TestClassesHoldTheirLowerBound(t *testing.T) {
	for x, want := range map[float64]string{-1: "below 0", 0: "0 to 150", 149.9: "0 to 150", 150: "150 to 300", 800: "800 and more"} {
		if got := between(x, 0, 150, 300, 800); got != want {
			t.Errorf("%g: %s, want %s", x, got, want)
		}
	}
	if got := WaterClass(2999); got != "2 to 3 km" {
		t.Error(got)
	}
}

func TestOtherToolsCountToTheLastOfTheHole(t *testing.T) {
	h := Hole{Depth: 100, ByTool: true, Other: 2, OtherMetres: 10}
	h.Cores[coring.APC], h.Metres[coring.APC] = 5, 45
	h.Cores[coring.XCB], h.Metres[coring.XCB] = 4, 35
	steps := h.Steps()
	if last := steps[len(steps)-1]; last.With != coring.XCB || last.Cores != 6 || last.Length != 45 {
		t.Errorf("%+v", steps)
	}
	if got := float64(h.Ahead()); math.Abs(got-10) > 1e-9 {
		t.Errorf("%g m drilled, want 10", got)
	}
	h = Hole{Depth: 30, ByTool: true, Other: 3, OtherMetres: 20}
	if steps := h.Steps(); len(steps) != 1 || steps[0].With != coring.RCB {
		t.Errorf("a hole of other tools alone: %+v", steps)
	}
}

func TestTheDeepestToolIsThatOfTheOrderOfTools(t *testing.T) {
	var a, b Hole
	a.Cores[coring.APC], b.Cores[coring.XCB] = 3, 4
	s := Site{Holes: []Hole{a, b}}
	if got := s.DeepestTool(); got != coring.XCB {
		t.Error(got)
	}
	s.Holes[0].Cores[coring.RCB] = 1
	if got := s.DeepestTool(); got != coring.RCB {
		t.Error(got)
	}
}

func TestASiteMustBeWhole(t *testing.T) {
	day := func(d int) time.Time { return time.Date(2030, 1, d, 0, 0, 0, 0, time.UTC) }
	row := func(order, of, from int) Row {
		h := Hole{Order: order, Depth: 100, ByTool: true, Start: day(from), End: day(from + 1), Row: order + 1}
		h.Cores[coring.APC], h.Metres[coring.APC] = 11, 100
		return Row{Program: "X", Leg: "1", Site: "S", Hole: h, Of: of, Coring: true}
	}
	for _, test := range []struct {
		name string
		rows []Row
		used bool
	}{
		{"whole", []Row{row(1, 2, 1), row(2, 2, 3)}, true},
		{"in another order in the file", []Row{row(2, 2, 3), row(1, 2, 1)}, true},
		{"one missing", []Row{row(1, 2, 1)}, false},
		{"the second begins first", []Row{row(1, 2, 3), row(2, 2, 1)}, false},
		{"the same order twice", []Row{row(1, 2, 1), row(1, 2, 3)}, false},
	} {
		sites, out := Group(test.rows, nil)
		if used := len(sites) == 1; used != test.used || used == (len(out) > 0) {
			t.Errorf("%s: %d sites, left out %v", test.name, len(sites), out)
		}
	}
}

// One hole in six on record stops above 20 m below the sea floor: a start that failed, or a trial of the mudline.
func TestAHoleThatStopsAboveTwentyMetresIsAFailedStart(t *testing.T) {
	for depth, want := range map[unit.Depth]bool{0: true, 19.9: true, 20: false, 25: false} {
		if h := (Hole{Depth: depth}); h.FailedStart() != want {
			t.Errorf("%g m: failed start %v", float64(depth), h.FailedStart())
		}
	}
}
