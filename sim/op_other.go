package sim

import (
	"coredays/model/activity"
	"coredays/model/rig"
)

// What the records show beyond the named work between cores is other work on site. It comes with
// trips, assemblies, moves and drilling ahead, so much for each hour of them, and has a line
// of its own: the named work takes what its rates say. The cycles of cores have paces of their own,
// which the times on deck of the records tell.

// bringsOther reports whether other work comes with a kind of activity.
func bringsOther(k activity.Kind) bool {
	switch k {
	case activity.Position, activity.Secure:
		return false // all pipe is on deck
	case activity.DrillAhead, activity.CentreBit:
		return true
	}
	return k.Of().Class == activity.Trips
}

// otherWorkDue: there was work that brings other work since it was done last.
func (s *ship) otherWorkDue() bool {
	share := &s.v.Quantities[rig.OtherWork]
	none := share.Fixed && share.Median == 0
	return s.here != nil && (s.otherLeft > 0 || s.handled > 0 && !none)
}

// doOtherWork does the other work that has are recovered so far; what the sea interrupts is done later.
func (s *ship) doOtherWork() {
	if !s.otherWorkDue() {
		return
	}
	s.otherLeft += s.handled * s.Rate(rig.OtherWork)
	s.handled = 0
	s.otherLeft -= s.do(activity.OtherWork, s.otherLeft)
}

// tryOut: with the first assembly of an expedition rig and tools are tried out, as other work.
func (s *ship) tryOut() {
	if !s.triedOut {
		s.triedOut = true
		s.otherLeft += s.Rate(rig.FirstSiteWork)
	}
}

// withOther is the crew's estimate of work with the other work that it brings, s.
func (s *ship) withOther(takes float64) float64 { return takes * (1 + s.rateMedian(rig.OtherWork)) }
