package sim

import "coredays/model/voyage"

// depthSteps is how many parts the way down has to what is asked for of a hole; it is marked where each begins
// and at the end.
const depthSteps = 20

// depthMarks is how many marks a hole has.
const depthMarks = depthSteps + 1

// slice is the thickness for which cored, recovered and covered section are told, m.
const slice = 10.0

// inSlice is how many half-metres a slice has.
const inSlice = int(slice / bin)

// slicing says where the slices of each site stand in a row.
type slicing struct {
	from []int // by site, and the end
	all  int
}

func newSlices(v *voyage.Voyage) slicing {
	s := slicing{from: []int{0}}
	for i := range v.Sites {
		s.all += (int(v.Sites[i].Section/bin) + inSlice - 1) / inSlice
		s.from = append(s.from, s.all)
	}
	return s
}

// broughtUp adds up what replications cored, recovered and covered by slice.
type broughtUp struct {
	cut, recovered, covered []int64 // cm, cm, half-metres
	visits                  []int64 // by site
}

func newBroughtUp(v *voyage.Voyage) broughtUp {
	n := newSlices(v).all
	return broughtUp{make([]int64, n), make([]int64, n), make([]int64, n), make([]int64, len(v.Sites))}
}

// join adds what another worker added up.
func (a *broughtUp) join(o *broughtUp) {
	for _, pair := range [][2][]int64{{a.cut, o.cut}, {a.recovered, o.recovered}, {a.covered, o.covered}, {a.visits, o.visits}} {
		for i := range pair[0] {
			pair[0][i] += pair[1][i]
		}
	}
}

// bin is the step in which recovered section is counted, m.
const bin = 0.5
