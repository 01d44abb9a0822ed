package sim

import (
	"math"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/voyage"
)

// meetTrouble is what can go wrong with a core. The records' spread of ordinary cycles leaves these
// out, so nothing counts twice.
func (s *ship) meetTrouble(t coring.Tool) {
	r := troubleOf(t)
	if s.happens(r.chance) {
		s.do(activity.BarrelTrouble, s.rate(r.time))
	}
	if t.Piston() || !s.happens(rig.StuckChance) {
		return
	}
	s.do(activity.StuckPipe, s.rate(rig.StuckTime))
	if s.happens(rig.LostBHA) {
		s.do(activity.SeverPipe, s.rate(rig.Severing))
		if s.ended == goingOn {
			s.ended = stringLost
		}
	}
}

type trouble struct{ chance, time rig.Rate }

func troubleOf(t coring.Tool) trouble {
	switch t {
	case coring.XCB:
		return trouble{rig.ExtendedTrouble, rig.ExtendedTroubleTime}
	case coring.RCB:
		return trouble{rig.RotaryTrouble, rig.RotaryTroubleTime}
	default:
		return trouble{rig.PistonTrouble, rig.PistonTroubleTime}
	}
}

// planBreakdown sets when the rig breaks down next: after an exponential time, whatever the age of
// what breaks.
func (s *ship) planBreakdown() {
	every := s.rateMedian(rig.BreakdownEvery)
	if every <= 0 || s.median {
		s.agenda.plan(theRig, math.Inf(1))
		return
	}
	luck := s.luck.For(s.v.Purposes[voyage.Quantity(rig.BreakdownEvery)])
	s.agenda.plan(theRig, s.clock-every*math.Log(luck.Uniform(s.breaks)))
	s.breaks++
}

// breakDown stops all work for a repair, where the ship is on station, and tells whether it did.
func (s *ship) breakDown() bool {
	s.planBreakdown()
	if !s.positioned {
		return false
	}
	s.pass(activity.Breakdown, s.rate(rig.RepairTime))
	return true
}
