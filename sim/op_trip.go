package sim

import (
	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/sim/ship"
	"coredays/sim/statistics"
)

// makeUpBHA makes up the assembly that the hole in hand needs.
func (s *expedition) makeUpBHA() {
	if s.Assembly() == coring.CasingString {
		s.makeUpCasing()
		return
	}
	s.Do(activity.MakeUpBHA, s.Rate(s.Assembly().Of().MakeUp))
	if s.Ended != ship.GoingOn {
		return
	}
	s.tryOut()
	s.BHA = s.Assembly()
	s.Rotating, s.BitLife = 0, 0
	s.Hole.Conditioned, s.Hole.Released = false, false // a new bit
	if s.BHA.Of().Bit {
		s.BitLife = s.Rate(rig.BitLife)
		s.Consumed[statistics.RotaryBits]++
	}
}

// runPipe brings the bit down to above the sea floor.
func (s *expedition) runPipe() { s.Move(activity.RunPipe, s.Clear()) }

// recoverPipe brings all pipe on deck and lays down the assembly.
func (s *expedition) recoverPipe() {
	s.Move(activity.PullPipe, 0)
	s.Do(activity.LayDownBHA, s.Rate(rig.LayDown))
	if s.Ended == ship.GoingOn {
		s.BHA = coring.NoBHA
	}
	s.Offset = false
}

// drillDown drills without coring to the depth aimed at, a joint at a time, layer by layer. A worn bit stops it:
// the centre bit then is recovered with the string.
func (s *expedition) drillDown() {
	s.Hole.Centre = s.BHA.Of().Bit && s.DueCasing() == nil // for casing a bit without a hole for barrels drills
	for s.Hole.Depth < s.ruledTo(s.Hole.Aim)-1e-6 && s.Ended == ship.GoingOn && !s.bitWorn() {
		i := s.Layer(s.Hole.Depth)
		to := s.Hole.Aim
		if bottom := s.Here.Layers[i].Bottom * s.LayerDepth; i < len(s.Here.Layers)-1 && bottom < to {
			to = bottom
		}
		s.drillTo(to, s.Draw(s.Here.Layers[i].Ahead))
	}
	if s.Hole.Centre && s.Ended == ship.GoingOn && !s.bitWorn() && len(s.Stages()) > 0 {
		s.Do(activity.CentreBit, s.Bit/s.Rate(rig.RotaryWire)+s.Rate(rig.CentreBit))
		s.Hole.Centre = false
	}
}

// drillTo drills at a rate to a depth, a joint at a time: the joint in hand is finished in any sea, and
// the bit is where it got to when the sea or the end of the time stops the work.
func (s *expedition) drillTo(to, rate float64) {
	for s.Hole.Depth < s.ruledTo(to) && s.Ended == ship.GoingOn && !s.bitWorn() && !s.OutOfTime() {
		from, length := s.Hole.Depth, min(s.RateMedian(rig.JointLength), to-s.Hole.Depth)
		takes := length / (rate * s.Weighted())
		drilled := s.DoInUnits(activity.DrillAhead, takes, takes)
		s.Rotating += drilled * s.Wear()
		s.deepen(length * drilled / takes)
		s.connect(from, s.Hole.Depth)
		s.MeetStuckPipe()
	}
}

// deepen makes the hole deeper by a length. The bit goes with the bottom, but where a storm that ended the
// script has had it pulled up since.
func (s *expedition) deepen(length float64) {
	follows := s.onBottom()
	s.Hole.Depth += length
	if follows {
		s.Bit = s.Bottom()
	}
	log := &s.Items[s.Item.Number]
	log.Depth = max(log.Depth, s.Hole.Depth)
	s.MarkDepth()
	s.Drifted = max(s.Drifted, s.Bottom())
}

// connect adds the joints of pipe that an advance needs.
func (s *expedition) connect(from, to float64) {
	joint := s.RateMedian(rig.JointLength)
	for n := int(to/joint) - int(from/joint); n > 0; n-- {
		s.Do(activity.Connection, s.Rate(rig.Connection))
	}
}

// changeBit brings in a new bit: with a free-fall funnel the hole is found again, without one it
// ends here.
func (s *expedition) changeBit() {
	if !s.CanReenter() {
		s.Items[s.Item.Number].Incomplete = true
		s.Hole.Finished = true
		return
	}
	if s.InHole() {
		s.dropFunnel()
		s.Move(activity.PullFromHole, s.Here.Floor)
	}
	s.Move(activity.PullPipe, 0)
	s.Do(activity.LayDownBHA, s.Rate(rig.LayDown))
	if s.Ended == ship.GoingOn {
		s.BHA = coring.NoBHA
	}
}
