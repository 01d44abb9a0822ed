package sim

import (
	"math"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/voyage"
)

// meetTrouble is what can go wrong with the barrel and the wire of a core, and tells what did: the
// liner of a piston corer bursts and the core is lost, the line parts (the longest tenth of the time
// lost), or else the barrel has to be fetched again. The records' spread of ordinary cycles leaves
// all these out, so nothing counts twice.
func (s *ship) meetTrouble(t coring.Tool) activity.Kind {
	r := troubleOf(t)
	if s.v.Plan.NoTrouble || !s.happens(r.chance) {
		return activity.Kinds
	}
	what, takes := activity.FailedRetrieval, s.rate(r.time)
	switch {
	case takes > s.v.Quantities[r.time].At(spread.Score(0.9)):
		what = activity.PartedLine
	case t.Piston() && s.happens(rig.BlownLiner):
		what = activity.BlownLiner
	}
	s.do(what, takes)
	return what
}

// meetStuckPipe is what can happen to the string while it rotates in the hole: it sticks, and where
// it can't be freed it is severed and the hole is lost.
func (s *ship) meetStuckPipe() {
	if s.v.Plan.NoTrouble || !s.happens(rig.StuckChance) {
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
	if every <= 0 || s.median || s.v.Plan.NoTrouble {
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
