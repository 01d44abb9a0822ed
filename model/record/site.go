package record

import (
	"cmp"
	"slices"
	"time"

	"coredays/model/coring"
	"coredays/model/unit"
)

// Site is all that was drilled at a site on one leg.
type Site struct {
	Program, Leg, Name string
	Holes              []Hole // in the order drilled
	First              bool   // of its leg
	// Reached is the assembly that hung clear of the sea floor when the ship came, NoBHA where all pipe was on deck;
	// LeftHanging tells that she left so.
	Reached     coring.Assembly
	LeftHanging bool
}

// Days is the time on the site: the sum over its holes. Only the sum compares with a simulation, as
// the trip in falls to the first hole and the trip out to the last.
func (s *Site) Days() (days unit.Duration) {
	for i := range s.Holes {
		days += s.Holes[i].Days()
	}
	return days
}

// Start is when the first hole began.
func (s *Site) Start() time.Time { return s.Holes[0].Start }

// Water is the depth of water at the first hole.
func (s *Site) Water() unit.Length { return s.Holes[0].Water }

// Deepest is the bottom of the deepest hole.
func (s *Site) Deepest() (deepest unit.Depth) {
	for i := range s.Holes {
		deepest = max(deepest, s.Holes[i].Depth)
	}
	return deepest
}

// Cores counts the cores of a tool.
func (s *Site) Cores(t coring.Tool) (n int) {
	for i := range s.Holes {
		n += s.Holes[i].Cores[t]
	}
	return n
}

// DeepestTool is the tool that goes deepest by the order in which tools follow each other: rotary,
// else extended barrel, else piston.
func (s *Site) DeepestTool() coring.Tool {
	switch {
	case s.Cores(coring.RCB) > 0:
		return coring.RCB
	case s.Cores(coring.XCB) > 0:
		return coring.XCB
	default:
		return coring.APC
	}
}

// Cored tells whether a hole of the site went below failed starts and was cored.
func (s *Site) Cored() bool {
	return slices.ContainsFunc(s.Holes, func(h Hole) bool { return !h.FailedStart() && len(h.Steps()) > 0 })
}

// inOrder sorts the holes as they were drilled.
func (s *Site) inOrder() {
	slices.SortFunc(s.Holes, func(a, b Hole) int { return cmp.Compare(a.Order, b.Order) })
}
