package records

import (
	"slices"
	"testing"

	"coredays/model/coring"
	"coredays/model/record"
	"coredays/model/unit"
)

// cored is a hole of 200 m with 9.5 m for each core, drilled ahead as far as that leaves it.
func cored(cores map[coring.Tool]int) record.Hole {
	h := record.Hole{Depth: 200, ByTool: true}
	for tool, n := range cores {
		h.Cores[tool], h.Metres[tool] = n, unit.Length(n)*9.5
	}
	return h
}

func TestHolesOnRecordAreClassedByTheirTools(t *testing.T) {
	piston, half, extended := map[coring.Tool]int{coring.APC: 21}, map[coring.Tool]int{coring.HLAPC: 21}, map[coring.Tool]int{coring.APC: 10, coring.XCB: 11}
	rotary, below := map[coring.Tool]int{coring.RCB: 21}, map[coring.Tool]int{coring.RCB: 5}
	for _, test := range []struct {
		what  string
		holes []map[coring.Tool]int
		want  []UnrecordedClass
	}{
		{"piston alone", []map[coring.Tool]int{piston, half}, []UnrecordedClass{PistonHole, PistonHole}},
		{"extended below", []map[coring.Tool]int{extended}, []UnrecordedClass{ExtendedHole}},
		{"rotary from the sea floor", []map[coring.Tool]int{rotary, rotary}, []UnrecordedClass{BareHole, BareHole}},
		{"rotary beside a piston hole", []map[coring.Tool]int{piston, rotary}, []UnrecordedClass{PistonHole, RotaryHole}},
		{"rotary below what was drilled", []map[coring.Tool]int{below}, []UnrecordedClass{RotaryHole}},
		{"one of two drilled ahead", []map[coring.Tool]int{rotary, below}, []UnrecordedClass{RotaryHole, RotaryHole}},
		{"drilled, no core", []map[coring.Tool]int{nil, rotary}, []UnrecordedClass{CorelessHole, BareHole}},
		{"nothing but drilled", []map[coring.Tool]int{nil}, []UnrecordedClass{CorelessHole}},
	} {
		s := &record.Site{}
		for _, cores := range test.holes {
			s.Holes = append(s.Holes, cored(cores))
		}
		if got := ClassesOf(s); !slices.Equal(got, test.want) {
			t.Errorf("%s: classes %v, want %v", test.what, got, test.want)
		}
	}
}

// No source states the metres of half-length cores: where there are any, those of the other tools are not all.
func TestMetresByToolCountWhereEveryToolHasThem(t *testing.T) {
	for half, want := range map[string]bool{"": true, "0": true, "3": false} {
		sites, _ := readRows(t, holeRow(map[string]string{"n_hlapc": half}))
		if got := sites[0].Holes[0].ByTool; got != want {
			t.Errorf("%q half-length cores: by tool %v, want %v", half, got, want)
		}
	}
}
