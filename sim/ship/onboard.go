package ship

import (
	"coredays/model/rig"
	"coredays/model/voyage"
	"coredays/sim/statistics"
)

// gone is what stayed in holes.
type gone struct {
	assemblies int
	Pipe       float64 // m
}

// leftInHole is the share of the pipe in a hole that stays in it with the assembly: it is severed above where it is stuck, on
// average half way down [judgement].
const leftInHole = 0.5

// WritesOff counts what a severed string leaves behind.
func (s *Ship) WritesOff() {
	left := leftInHole * max(0, s.Hole.Depth-s.Voyage.OnBoard.Assembly)
	s.Gone.assemblies++
	s.Gone.Pipe += left
	s.Consumed[statistics.PipeJoints] += int(left/s.RateMedian(rig.JointLength) + 0.5)
}

// Equipped reports whether what is left on board makes up a string for an item. Without a deadline what was lost counts as
// brought.
func (s *Ship) Equipped(site *voyage.Site, i *voyage.Item) bool {
	return !s.Constrained || i.Hole == nil || s.Voyage.MakesUp(site, i.Item, s.Gone.assemblies, s.Gone.Pipe)
}
