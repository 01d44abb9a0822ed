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
	Partial            bool   // the table has not all sites of its leg
	// Reached is the assembly that hung clear of the sea floor when the ship came, NoBHA where all pipe was on deck;
	// LeftHanging says that she left so.
	Reached     coring.Assembly
	LeftHanging bool
}

// LegName is the program and the leg, by which sites belong together.
func (s *Site) LegName() string { return s.Program + " " + s.Leg }

// LegNames are those of sites, one a site.
func LegNames(sites []Site) []string {
	names := make([]string, len(sites))
	for i := range sites {
		names[i] = sites[i].LegName()
	}
	return names
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

// DeepestTool is the tool that goes deepest by the order in which tools follow each other: the last of the
// rotated ones, else the piston corer.
func (s *Site) DeepestTool() coring.Tool {
	for t := coring.Tools - 1; t > 0; t-- {
		if !t.Piston() && s.Cores(t) > 0 {
			return t
		}
	}
	return coring.APC
}

// Cored reports whether a hole of the site went below failed starts and was cored.
func (s *Site) Cored() bool {
	return slices.ContainsFunc(s.Holes, func(h Hole) bool { return !h.FailedStart() && len(h.Steps()) > 0 })
}

// inOrder sorts the holes as they were drilled.
func (s *Site) inOrder() {
	slices.SortFunc(s.Holes, func(a, b Hole) int { return cmp.Compare(a.Order, b.Order) })
}
