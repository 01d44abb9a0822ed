package sim

import (
	"coredays/model/rig"
	"coredays/model/voyage"
	"coredays/sim/statistics"
)

// gone is what stayed in holes.
type gone struct {
	assemblies int
	pipe       float64 // m
}

// leftInHole is the share of the pipe in a hole that stays in it with the assembly: it is severed above where it is stuck, on
// average half way down [judgement].
const leftInHole = 0.5

// writesOff counts what a severed string leaves behind.
func (s *ship) writesOff() {
	left := leftInHole * max(0, s.hole.depth-s.v.OnBoard.Assembly)
	s.gone.assemblies++
	s.gone.pipe += left
	s.consumed[statistics.PipeJoints] += int(left/s.rateMedian(rig.JointLength) + 0.5)
}

// equipped reports whether what is left on board makes up a string for an item. Without a deadline what was lost counts as
// brought.
func (s *ship) equipped(site *voyage.Site, i *voyage.Item) bool {
	return !s.constrained || i.Hole == nil || s.v.MakesUp(site, i.Item, s.gone.assemblies, s.gone.pipe)
}
