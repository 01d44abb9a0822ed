package plan

import "coredays/model/unit"

// Casing is a string of casing in a hole.
type Casing struct {
	Name     string     // its size, such as "10-3/4 in"
	To       unit.Depth // of its shoe
	By       CasingWay
	Cemented bool
}

// CasingWay is how casing comes to its depth.
type CasingWay int

// The ways. The first two set the cone with it.
const (
	Jetted         CasingWay = iota // washed in by the jet of its bit, in soft sediment
	DrilledIn                       // drilled in with a motor and an underreamer below it
	InADrilledHole                  // lowered into a hole that was drilled for it
)

// CasedTo is the depth of the deepest shoe; 0 without casing.
func (h *Hole) CasedTo() unit.Depth {
	if len(h.Casing) == 0 {
		return 0
	}
	return h.Casing[len(h.Casing)-1].To
}
