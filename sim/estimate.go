package sim

import (
	"coredays/model/unit"
	"coredays/model/voyage"
)

// Estimate sails the whole programme of the primary sites once, with every draw at its even value, in a
// calm sea, without trouble: a quick reckoning to hold against the days there are. It is no
// forecast: half of all expeditions take longer than even a reckoning with the sea in it.
func Estimate(v *voyage.Voyage) voyage.Reckoning {
	s := newShip(v)
	s.beginsEvenly()
	s.sails()
	r := voyage.Reckoning{Total: unit.Duration(s.clock), Home: s.home}
	for i := range s.items {
		r.Items = append(r.Items, unit.Duration(s.items[i].took))
	}
	for i := range s.sites {
		r.Arrives = append(r.Arrives, unit.Duration(s.sites[i].arrived))
		r.Leaves = append(r.Leaves, unit.Duration(s.sites[i].left))
	}
	return r
}
