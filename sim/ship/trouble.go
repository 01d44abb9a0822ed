package ship

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

// MeetTrouble is what can go wrong with the barrel and the wire of a core, and says what did: the
// liner of a piston corer bursts and the core is lost; of the other troubles, the longest tenth are parted
// lines, and in the rest the barrel has to be fetched again. The records' spread of ordinary cycles
// leaves all these out, so nothing counts twice.
func (s *Ship) MeetTrouble(t coring.Tool) activity.Kind {
	is := t.Of()
	if s.Voyage.Plan.NoTrouble || !s.Happens(is.Trouble) {
		return activity.Kinds
	}
	what, takes := activity.FailedRetrieval, s.Rate(is.TroubleTime)
	switch {
	case t.Piston() && s.Happens(rig.BlownLiner):
		what = activity.BlownLiner
	case takes > s.Voyage.Quantities[is.TroubleTime].At(spread.Score(0.9)):
		what = activity.PartedLine
	}
	s.Do(what, takes)
	return what
}

// MeetStuckPipe is what can happen to the string at each core or joint in the hole: it sticks, and where it can't be freed
// it is severed and the hole is lost.
func (s *Ship) MeetStuckPipe() {
	if s.Voyage.Plan.NoTrouble || !s.HappensMore(rig.StuckChance, s.Stickiness()) {
		return
	}
	s.Do(activity.StuckPipe, s.Rate(rig.StuckTime))
	if s.Happens(rig.LostBHA) {
		s.Do(activity.SeverPipe, s.Rate(rig.Severing))
		s.losesString()
	}
}

// Stickiness is by how much the chance of sticking here exceeds that of the usual hole.
func (s *Ship) Stickiness() float64 {
	return ground.Stickiness(s.Gripping(), unit.Length(s.Hole.Depth-s.Hole.Cased.Shoe), unit.Duration(s.Clock-s.Hole.OpenedAt))
}

// Gripping is how much more than mud the worst of the layers in the open hole sticks or falls in.
func (s *Ship) Gripping() (most float64) {
	for i := s.Layer(s.Hole.Cased.Shoe); i < len(s.Here.Layers); i++ {
		if i == 0 || s.Here.Layers[i-1].Bottom*s.LayerDepth < s.Hole.Depth {
			most = max(most, s.Voyage.Quantities[s.Here.Layers[i].Sticking].Median)
		}
	}
	return most
}

// The rig breaks down by the hours on station. Each site has a row of breakdowns of its own, so that the
// same work meets the same ones in whatever order the ship comes to the sites, and its clock stands
// still while she is off station and while she is repaired: what does not run does not wear. Were the
// next one counted from the last breakdown rather than from the end of its repair, repairs longer than
// the time between breakdowns would never end.

// RunRig has the time to the next breakdown run from now on.
func (s *Ship) RunRig() {
	every := s.RateMedian(rig.BreakdownEvery)
	if every <= 0 || s.Median || s.Voyage.Plan.NoTrouble {
		return
	}
	log := &s.Sites[s.SiteNumber()]
	if log.toBreakdown == 0 { // an exponential time, whatever the age of what breaks
		stream := s.Stream.For(s.Voyage.Purposes[voyage.Quantity(rig.BreakdownEvery)]).For(s.Here.Key)
		log.toBreakdown = -every * math.Log(stream.Uniform(log.Breakdowns))
		log.Breakdowns++
	}
	s.Agenda.Plan(TheRig, s.Clock+log.toBreakdown)
}

// restRig has the time to the next breakdown stand still.
func (s *Ship) restRig() {
	if at := s.Agenda.At[TheRig]; !math.IsInf(at, 1) {
		s.Sites[s.SiteNumber()].toBreakdown = at - s.Clock
		s.Agenda.Plan(TheRig, math.Inf(1))
	}
}

// breakDown stops all work for a repair.
func (s *Ship) breakDown() {
	s.Agenda.Plan(TheRig, math.Inf(1))
	s.Sites[s.SiteNumber()].toBreakdown = 0
	s.doUnstopped(activity.Breakdown, s.OfSite(voyage.Quantity(rig.RepairTime)))
	if s.Clock <= s.Longest() { // else the expedition is given up anyway
		s.RunRig()
	}
}

// heldUp reports whether a breakdown in the midst of an activity leaves no time to go on with it: an activity
// that begins again after each repair may never come to its end.
func (s *Ship) heldUp(stop activity.Stop) bool {
	return (stop == activity.Restart || s.Clock > s.Longest()) && s.OutOfTime()
}

// LeaveStation: the ship holds her position no longer.
func (s *Ship) LeaveStation() {
	s.Positioned = false
	s.restRig()
}
