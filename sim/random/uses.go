package random

import (
	"cmp"
	"math"
	"slices"

	"coredays/model/voyage"
)

// uses notes where quantities are drawn, and how often, over some replications.
type uses struct {
	of []map[Place]*use // by quantity
	at int              // replication in hand
}

// use is of one quantity at one place.
type use struct {
	in   int // replications in which it is drawn
	last int // replication in which it was noted last, from 1
	runs int // in all of them
	most int // in the one noted last
}

// rare is the share of the replications below which a place is passed over, since it moves the days of hardly any
// expedition. Our choice.
const rare = 0.05

func NewUses(v *voyage.Voyage) *uses { return &uses{of: make([]map[Place]*use, len(v.Quantities))} }

// Next goes over to another replication.
func (u *uses) Next() { u.at++ }

// note counts a draw, which is the n-th of a place.
func (u *uses) note(id voyage.Quantity, at Place, n int) {
	if u.of[id] == nil {
		u.of[id] = map[Place]*use{}
	}
	x := u.of[id][at]
	if x == nil {
		x = &use{}
		u.of[id][at] = x
	}
	if x.last != u.at {
		x.in, x.last, x.most = x.in+1, u.at, 0
	}
	x.runs += n - x.most
	x.most = n
}

// UsedAt is a place where a quantity counts, and the mean number of its runs there.
type UsedAt struct {
	Place
	runs int
}

// Worthwhile lists the places of each quantity that are not rare, in the order of their keys.
func (u *uses) Worthwhile(replications int) [][]UsedAt {
	list := make([][]UsedAt, len(u.of))
	for id, places := range u.of {
		for at, x := range places {
			if float64(x.in) >= rare*float64(replications) {
				list[id] = append(list[id], UsedAt{at, int(math.Round(float64(x.runs) / float64(x.in)))})
			}
		}
		slices.SortFunc(list[id], func(a, b UsedAt) int {
			return cmp.Or(cmp.Compare(a.Site, b.Site), cmp.Compare(a.Hole, b.Hole))
		})
	}
	return list
}
