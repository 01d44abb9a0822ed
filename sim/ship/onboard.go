package ship

import (
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/sim/statistics"
)

// gone is what stayed in holes.
type gone struct {
	Assemblies int
	Pipe       float64 // m
}

// WritesOff counts what a severed string leaves behind.
func (s *Ship) WritesOff() {
	left := float64(rig.LeftInHole(unit.Length(s.Hole.Depth), unit.Length(s.Voyage.OnBoard.Assembly)))
	s.Gone.Assemblies++
	s.Gone.Pipe += left
	s.Consumed[statistics.PipeJoints] += int(left/s.RateMedian(rig.JointLength) + 0.5)
}

// Equipped reports whether what is left on board makes up a string for an item. Without a deadline what was lost counts as
// brought.
func (s *Ship) Equipped(site *voyage.Site, i *voyage.Item) bool {
	return !s.Constrained || i.Hole == nil || s.Voyage.MakesUp(site, i.Item, s.Gone.Assemblies, s.Gone.Pipe)
}
