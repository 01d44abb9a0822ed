package sim

import (
	"math"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/ground"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// meetTrouble is what can go wrong with the barrel and the wire of a core, and says what did: the
// liner of a piston corer bursts and the core is lost; of the other troubles, the longest tenth are parted
// lines, and in the rest the barrel has to be fetched again. The records' spread of ordinary cycles
// leaves all these out, so nothing counts twice.
func (s *ship) meetTrouble(t coring.Tool) activity.Kind {
	is := t.Of()
	if s.v.Plan.NoTrouble || !s.Happens(is.Trouble) {
		return activity.Kinds
	}
	what, takes := activity.FailedRetrieval, s.Rate(is.TroubleTime)
	switch {
	case t.Piston() && s.Happens(rig.BlownLiner):
		what = activity.BlownLiner
	case takes > s.v.Quantities[is.TroubleTime].At(spread.Score(0.9)):
		what = activity.PartedLine
	}
	s.do(what, takes)
	return what
}

// meetStuckPipe is what can happen to the string at each core or joint in the hole: it sticks, and where it can't be freed
// it is severed and the hole is lost.
func (s *ship) meetStuckPipe() {
	if s.v.Plan.NoTrouble || !s.HappensMore(rig.StuckChance, s.stickiness()) {
		return
	}
	s.do(activity.StuckPipe, s.Rate(rig.StuckTime))
	if s.Happens(rig.LostBHA) {
		s.do(activity.SeverPipe, s.Rate(rig.Severing))
		s.losesString()
	}
}

// stickiness is by how much the chance of sticking here exceeds that of the usual hole.
func (s *ship) stickiness() float64 {
	return ground.Stickiness(s.gripping(), unit.Length(s.hole.depth-s.hole.cased.shoe), unit.Duration(s.clock-s.hole.openedAt))
}

// gripping is how much more than mud the worst of the layers in the open hole sticks or falls in.
func (s *ship) gripping() (most float64) {
	for i := s.layer(s.hole.cased.shoe); i < len(s.here.Layers); i++ {
		if i == 0 || s.here.Layers[i-1].Bottom*s.layerDepth < s.hole.depth {
			most = max(most, s.v.Quantities[s.here.Layers[i].Sticking].Median)
		}
	}
	return most
}

// The rig breaks down by the hours on station. Each site has a row of breakdowns of its own, so that the
// same work meets the same ones in whatever order the ship comes to the sites, and its clock stands
// still while she is off station and while she is repaired: what does not run does not wear. Were the
// next one counted from the last breakdown rather than from the end of its repair, repairs longer than
// the time between breakdowns would never end.

// runRig has the time to the next breakdown run from now on.
func (s *ship) runRig() {
	every := s.rateMedian(rig.BreakdownEvery)
	if every <= 0 || s.Median || s.v.Plan.NoTrouble {
		return
	}
	log := &s.sites[s.siteNumber()]
	if log.toBreakdown == 0 { // an exponential time, whatever the age of what breaks
		stream := s.Stream.For(s.v.Purposes[voyage.Quantity(rig.BreakdownEvery)]).For(s.here.Key)
		log.toBreakdown = -every * math.Log(stream.Uniform(log.breakdowns))
		log.breakdowns++
	}
	s.agenda.plan(theRig, s.clock+log.toBreakdown)
}

// restRig has the time to the next breakdown stand still.
func (s *ship) restRig() {
	if at := s.agenda.at[theRig]; !math.IsInf(at, 1) {
		s.sites[s.siteNumber()].toBreakdown = at - s.clock
		s.agenda.plan(theRig, math.Inf(1))
	}
}

// breakDown stops all work for a repair.
func (s *ship) breakDown() {
	s.agenda.plan(theRig, math.Inf(1))
	s.sites[s.siteNumber()].toBreakdown = 0
	s.doUnstopped(activity.Breakdown, s.OfSite(voyage.Quantity(rig.RepairTime)))
	if s.clock <= s.longest() { // else the expedition is given up anyway
		s.runRig()
	}
}

// heldUp reports whether a breakdown in the midst of an activity leaves no time to go on with it: an activity
// that begins again after each repair may never come to its end.
func (s *ship) heldUp(stop activity.Stop) bool {
	return (stop == activity.Restart || s.clock > s.longest()) && s.outOfTime()
}
