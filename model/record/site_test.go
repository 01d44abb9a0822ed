package record

import (
	"testing"

	"coredays/model/coring"
)

func TestTheDeepestToolIsTheLastRotatedOne(t *testing.T) {
	for _, test := range []struct {
		cores map[coring.Tool]int
		want  coring.Tool
	}{
		{map[coring.Tool]int{coring.APC: 3, coring.XCB: 2, coring.RCB: 1}, coring.RCB},
		{map[coring.Tool]int{coring.APC: 3, coring.XCB: 2}, coring.XCB},
		{map[coring.Tool]int{coring.APC: 3, coring.HLAPC: 2}, coring.APC},
		{map[coring.Tool]int{coring.HLAPC: 2}, coring.APC}, // a piston corer is a piston corer
		{nil, coring.APC},
	} {
		s := Site{Holes: []Hole{{}, {}}}
		for tool, n := range test.cores {
			s.Holes[1].Cores[tool] = n
		}
		if got := s.DeepestTool(); got != test.want {
			t.Errorf("%v: %v, want %v", test.cores, got, test.want)
		}
	}
}

func TestLegsAreNamedByProgramAndNumber(t *testing.T) {
	names := LegNames([]Site{{Program: "P", Leg: "7"}, {Program: "Q", Leg: "7"}})
	if len(names) != 2 || names[0] != "P 7" || names[1] != "Q 7" {
		t.Errorf("%q", names)
	}
}
