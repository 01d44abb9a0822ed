package statistics

import "coredays/model/voyage"

// DepthSteps is how many parts the way down has to what is asked for of a hole; it is marked where each begins
// and at the end.
const DepthSteps = 20

// DepthMarks is how many marks a hole has.
const DepthMarks = DepthSteps + 1

// Slice is the thickness for which cored, recovered and covered section are given, m.
const Slice = 10.0

// InSlice is how many half-metres a slice has.
const InSlice = int(Slice / Bin)

// Slicing says where the slices of each site stand in a row.
type Slicing struct {
	From []int // by site, and the end
	All  int
}

func NewSlices(v *voyage.Voyage) Slicing {
	s := Slicing{From: []int{0}}
	for i := range v.Sites {
		s.All += (int(v.Sites[i].Section/Bin) + InSlice - 1) / InSlice
		s.From = append(s.From, s.All)
	}
	return s
}

// BroughtUp adds up what replications cored, recovered and covered by slice.
type BroughtUp struct {
	Cut, Recovered, Covered []int64 // cm, cm, half-metres
	Visits                  []int64 // by site
}

func NewBroughtUp(v *voyage.Voyage) BroughtUp {
	n := NewSlices(v).All
	return BroughtUp{make([]int64, n), make([]int64, n), make([]int64, n), make([]int64, len(v.Sites))}
}

// Join adds what another worker added up.
func (a *BroughtUp) Join(o *BroughtUp) {
	for _, pair := range [][2][]int64{{a.Cut, o.Cut}, {a.Recovered, o.Recovered}, {a.Covered, o.Covered}, {a.Visits, o.Visits}} {
		for i := range pair[0] {
			pair[0][i] += pair[1][i]
		}
	}
}

// Bin is the step in which recovered section is counted, m.
const Bin = 0.5
