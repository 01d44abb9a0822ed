package sim

import (
	"coredays/model/activity"
	"coredays/model/rig"
)

// What the records show beyond the named work between cores is other work on site. It comes with
// trips, assemblies, moves and drilling ahead, so much for each hour of them, and has a line
// of its own: the named work takes what its rates say. The cycles of cores have paces of their own,
// which the times on deck of the records tell.

// otherWorkDue: there was work that brings other work since it was done last.
func (s *expedition) otherWorkDue() bool {
	share := &s.Voyage.Quantities[rig.OtherWork]
	none := share.Fixed && share.Median == 0
	return s.Here != nil && (s.OtherLeft > 0 || s.Handled > 0 && !none)
}

// doOtherWork does the other work that has come due so far; what the sea interrupts is done later.
func (s *expedition) doOtherWork() {
	if !s.otherWorkDue() {
		return
	}
	s.OtherLeft += s.Handled * s.Rate(rig.OtherWork)
	s.Handled = 0
	s.OtherLeft -= s.Do(activity.OtherWork, s.OtherLeft)
}

// tryOut: with the first assembly of an expedition rig and tools are tried out, as other work.
func (s *expedition) tryOut() {
	if !s.TriedOut {
		s.TriedOut = true
		s.OtherLeft += s.Rate(rig.FirstSiteWork)
	}
}
