package sim

import (
	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/sim/statistics"
)

// canReenter reports whether the hole can be found again.
func (s *ship) canReenter() bool { return s.planned().Reentry == plan.Funnel }

// dropFunnel makes the hole findable, once.
func (s *ship) dropFunnel() {
	if s.hole.funnel {
		return
	}
	s.do(activity.DropFunnel, s.Rate(rig.FunnelDrop))
	if s.ended == goingOn {
		s.hole.funnel = true
		s.consumed[statistics.Funnels]++
	}
}

// reenter finds the funnel with the camera and stabs it. A hole without a funnel is lost.
func (s *ship) reenter() {
	if !s.hole.funnel || (s.hole.stabs == 0 && s.Happens(rig.FunnelLost)) {
		s.hole.lost = true
		return
	}
	stab := rig.FirstStab
	if s.hole.stabs > 0 {
		stab = rig.NextStab
	}
	s.do(activity.CameraRun, 2*s.here.Floor/s.Rate(rig.CameraSpeed))
	s.do(activity.Stab, s.Rate(stab))
	if s.ended == goingOn {
		s.hole.stabs++
		s.bit = s.here.Floor + 1e-3
	}
}

// giveUpHole decides about a lost hole: drill another down to where it was, or drop the rest.
func (s *ship) giveUpHole() {
	log := &s.items[s.item.Number]
	if s.hole.released {
		s.bha = coring.NoBHA // the bit stayed in the hole
	}
	if !s.workLeft() {
		s.finishItem(log.incomplete)
		return
	}
	log.attempts++
	if s.planned().IfLost == plan.GiveUp || log.attempts > mostAttempts {
		s.finishItem(true)
		return
	}
	lost := s.hole
	s.hole = hole{aim: max(lost.depth, lost.aim), stage: lost.stage, half: lost.half, cores: lost.cores, probes: lost.probes,
		logged: lost.logged}
	s.offset = s.bit > 0
	s.retireBit()
	s.Place.Hole = attemptKey(s.item, log.attempts)
	s.meetGround()
}

// mostAttempts is how often a hole is begun again before a crew gives it up.
const mostAttempts = 3
