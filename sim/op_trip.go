package sim

import (
	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/sim/statistics"
)

// makeUpBHA makes up the assembly that the hole in hand needs.
func (s *ship) makeUpBHA() {
	if s.assembly() == coring.CasingString {
		s.makeUpCasing()
		return
	}
	s.do(activity.MakeUpBHA, s.Rate(s.assembly().Of().MakeUp))
	if s.ended != goingOn {
		return
	}
	s.tryOut()
	s.bha = s.assembly()
	s.rotating, s.bitLife = 0, 0
	s.hole.conditioned, s.hole.released = false, false // a new bit
	if s.bha.Of().Bit {
		s.bitLife = s.Rate(rig.BitLife)
		s.consumed[statistics.RotaryBits]++
	}
}

// runPipe brings the bit down to above the sea floor.
func (s *ship) runPipe() { s.move(activity.RunPipe, s.clear()) }

// recoverPipe brings all pipe on deck and lays down the assembly.
func (s *ship) recoverPipe() {
	s.move(activity.PullPipe, 0)
	s.do(activity.LayDownBHA, s.Rate(rig.LayDown))
	if s.ended == goingOn {
		s.bha = coring.NoBHA
	}
	s.offset = false
}

// drillDown drills without coring to the depth aimed at, a joint at a time, layer by layer. A worn bit stops it:
// the centre bit then is recovered with the string.
func (s *ship) drillDown() {
	s.hole.centre = s.bha.Of().Bit && s.dueCasing() == nil // for casing a bit without a hole for barrels drills
	for s.hole.depth < s.ruledTo(s.hole.aim)-1e-6 && s.ended == goingOn && !s.bitWorn() {
		i := s.layer(s.hole.depth)
		to := s.hole.aim
		if bottom := s.here.Layers[i].Bottom * s.layerDepth; i < len(s.here.Layers)-1 && bottom < to {
			to = bottom
		}
		s.drillTo(to, s.Draw(s.here.Layers[i].Ahead))
	}
	if s.hole.centre && s.ended == goingOn && !s.bitWorn() && len(s.stages()) > 0 {
		s.do(activity.CentreBit, s.bit/s.Rate(rig.RotaryWire)+s.Rate(rig.CentreBit))
		s.hole.centre = false
	}
}

// drillTo drills at a rate to a depth, a joint at a time: the joint in hand is finished in any sea, and
// the bit is where it got to when the sea or the end of the time stops the work.
func (s *ship) drillTo(to, rate float64) {
	for s.hole.depth < s.ruledTo(to) && s.ended == goingOn && !s.bitWorn() && !s.outOfTime() {
		from, length := s.hole.depth, min(s.rateMedian(rig.JointLength), to-s.hole.depth)
		takes := length / (rate * s.weighted())
		drilled := s.doInUnits(activity.DrillAhead, takes, takes)
		s.rotating += drilled * s.wear()
		s.deepen(length * drilled / takes)
		s.connect(from, s.hole.depth)
		s.meetStuckPipe()
	}
}

// deepen makes the hole deeper by a length. The bit goes with the bottom, but where a storm that ended the
// script has had it pulled up since.
func (s *ship) deepen(length float64) {
	follows := s.onBottom()
	s.hole.depth += length
	if follows {
		s.bit = s.bottom()
	}
	log := &s.items[s.item.Number]
	log.depth = max(log.depth, s.hole.depth)
	s.markDepth()
	s.drifted = max(s.drifted, s.bottom())
}

// connect adds the joints of pipe that an advance needs.
func (s *ship) connect(from, to float64) {
	joint := s.rateMedian(rig.JointLength)
	for n := int(to/joint) - int(from/joint); n > 0; n-- {
		s.do(activity.Connection, s.Rate(rig.Connection))
	}
}

// changeBit brings in a new bit: with a free-fall funnel the hole is found again, without one it
// ends here.
func (s *ship) changeBit() {
	if !s.canReenter() {
		s.items[s.item.Number].incomplete = true
		s.hole.finished = true
		return
	}
	if s.inHole() {
		s.dropFunnel()
		s.move(activity.PullFromHole, s.here.Floor)
	}
	s.move(activity.PullPipe, 0)
	s.do(activity.LayDownBHA, s.Rate(rig.LayDown))
	if s.ended == goingOn {
		s.bha = coring.NoBHA
	}
}
