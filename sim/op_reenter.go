package sim

import (
	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/sim/ship"
	"coredays/sim/statistics"
)

// dropFunnel makes the hole findable, once.
func (s *expedition) dropFunnel() {
	if s.Hole.Funnel {
		return
	}
	s.Do(activity.DropFunnel, s.Rate(rig.FunnelDrop))
	if s.Ended == ship.GoingOn {
		s.Hole.Funnel = true
		s.Consumed[statistics.Funnels]++
	}
}

// findExisting goes over to a hole that is there already: its cone stands, and its depth is that of the scenario.
func (s *expedition) findExisting() {
	s.Hole.Open, s.Hole.Funnel, s.Hole.Depth = true, true, float64(s.Planned().Existing)
	s.Hole.Cased.Shoe = float64(s.Planned().CasedAlready)
	s.Sites[s.SiteNumber()].FloorKnown = true
}

// reenter finds funnel or cone with the camera and stabs it. A hole without either is lost; a cone does not sink.
func (s *expedition) reenter() {
	if !s.Hole.Funnel || (s.Hole.Stabs == 0 && s.Planned().Reentry != plan.Cone && s.Happens(rig.FunnelLost)) {
		s.Hole.Lost = true
		return
	}
	if s.Offset {
		s.Do(activity.OffsetMove, s.Rate(rig.OffsetMove))
	}
	stab := rig.FirstStab
	if s.Hole.Stabs > 0 {
		stab = rig.NextStab
	}
	s.Do(activity.CameraRun, 2*s.Here.Floor/s.Rate(rig.CameraSpeed))
	s.Do(activity.Stab, s.Rate(stab))
	if s.Ended == ship.GoingOn {
		if s.Hole.Stabs == 0 && s.Planned().Existing > 0 { // what of its wall has stood for years goes on to stand
			s.Hole.OpenedAt = s.Clock
		}
		s.Hole.Stabs++
		s.Hole.Fill = s.fills()
		s.Offset = false
		s.Bit = s.Here.Floor + 1e-3
	}
}

// giveUpHole decides about a lost hole: drill another down to where it was, or drop the rest.
func (s *expedition) giveUpHole() {
	log := &s.Items[s.Item.Number]
	if s.Hole.Released {
		s.BHA = coring.NoBHA // the bit stayed in the hole
	}
	if !s.WorkLeft() {
		s.finishItem(log.Incomplete)
		return
	}
	gaveUp := s.Planned().IfLost == plan.GiveUp || log.Attempts == mostAttempts
	if !gaveUp && !s.Equipped(s.Here, s.Item) {
		s.fork() // before anything of the hole is counted: the other ship gives it up for herself
		gaveUp = true
	}
	log.Attempts++
	if gaveUp {
		s.finishItem(true)
		return
	}
	lost := s.Hole
	s.Hole = ship.Hole{Stage: lost.Stage, Half: lost.Half, Cores: lost.Cores, Probes: lost.Probes,
		Logged: lost.Logged}
	if s.Hole.Aim = s.DrilledFor(); len(s.Planned().Casing) == 0 {
		s.Hole.Aim = max(lost.Depth, lost.Aim)
	}
	s.Offset = s.Bit > 0
	s.retireBit()
	s.Place.Hole = attemptKey(s.Item, log.Attempts)
	s.meetGround()
	s.Hole.Rule = s.ruleAt()
}

// mostAttempts is how often a hole is begun again before a crew gives it up.
const mostAttempts = 3
