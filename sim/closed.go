package sim

import (
	"math"

	"coredays/model/chance"
	"coredays/model/voyage"
)

// A site may be unusable for a while for other reasons than waves: ice, current, a cyclone. Then all
// pipe is recovered and the ship stands off.

// theClosings is the purpose of when sites close.
var theClosings = chance.KeyOf("site closed")

// planClosing sets when the site closes next: after an exponential time, as such things come without
// a memory of the last.
func (s *ship) planClosing() {
	if s.here.Every == voyage.NoQuantity || s.median {
		return
	}
	luck, log := s.luck.For(theClosings).For(s.here.Key), &s.sites[s.siteNumber()]
	s.agenda.plan(theSite, s.clock-s.ofSite(s.here.Every)*math.Log(luck.Uniform(log.closings)))
	log.closings++
}

// closeOrOpen closes the site for as long as it lasts, or opens it again.
func (s *ship) closeOrOpen() {
	s.closed = !s.closed
	if s.closed {
		s.agenda.plan(theSite, s.clock+s.ofSite(s.here.Lasts))
		return
	}
	s.agenda.plan(theSite, math.Inf(1))
	s.planClosing()
}
