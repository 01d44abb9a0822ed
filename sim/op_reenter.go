package sim

import (
	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/sim/statistics"
)

// canReenter reports whether the hole can be found again.
func (s *ship) canReenter() bool { return s.planned().Reentry != plan.NoReentry }

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

// findExisting goes over to a hole that is there already: its cone stands, and its depth is that of the scenario.
func (s *ship) findExisting() {
	s.hole.open, s.hole.funnel, s.hole.depth = true, true, float64(s.planned().Existing)
	s.hole.cased.shoe = float64(s.planned().CasedAlready)
	s.sites[s.siteNumber()].floorKnown = true
}

// reenter finds funnel or cone with the camera and stabs it. A hole without either is lost; a cone does not sink.
func (s *ship) reenter() {
	if !s.hole.funnel || (s.hole.stabs == 0 && s.planned().Reentry != plan.Cone && s.Happens(rig.FunnelLost)) {
		s.hole.lost = true
		return
	}
	if s.offset {
		s.do(activity.OffsetMove, s.Rate(rig.OffsetMove))
	}
	stab := rig.FirstStab
	if s.hole.stabs > 0 {
		stab = rig.NextStab
	}
	s.do(activity.CameraRun, 2*s.here.Floor/s.Rate(rig.CameraSpeed))
	s.do(activity.Stab, s.Rate(stab))
	if s.ended == goingOn {
		if s.hole.stabs == 0 && s.planned().Existing > 0 { // what of its wall has stood for years goes on to stand
			s.hole.openedAt = s.clock
		}
		s.hole.stabs++
		s.hole.fill = s.fills()
		s.offset = false
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
	if !s.equipped(s.here, s.item) {
		s.fork()
		s.finishItem(true)
		return
	}
	lost := s.hole
	s.hole = hole{stage: lost.stage, half: lost.half, cores: lost.cores, probes: lost.probes,
		logged: lost.logged}
	if s.hole.aim = s.drilledFor(); len(s.planned().Casing) == 0 {
		s.hole.aim = max(lost.depth, lost.aim)
	}
	s.offset = s.bit > 0
	s.retireBit()
	s.Place.Hole = attemptKey(s.item, log.attempts)
	s.meetGround()
	s.hole.rule = s.ruleAt()
}

// mostAttempts is how often a hole is begun again before a crew gives it up.
const mostAttempts = 3
