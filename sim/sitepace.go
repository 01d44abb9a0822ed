package sim

import (
	"coredays/model/activity"
	"coredays/model/rig"
)

// paceOf is how many times its own time an activity takes at the site where the ship is. Trips,
// assemblies, moves and drilling ahead go slow or fast together at a site; the cycles of cores have
// paces of their own, which the times on deck of the records tell.
func (s *ship) paceOf(k activity.Kind) float64 {
	between := k.Of().Class == activity.Trips || k == activity.DrillAhead || k == activity.CentreBit
	if s.here == nil || !between {
		return 1
	}
	if s.pace == 0 {
		s.pace = s.paceAt()
	}
	return s.pace
}

// paceAt draws the pace of the site, which is the same for all its holes.
func (s *ship) paceAt() float64 {
	hole := s.place.hole
	s.place.hole = s.place.site
	pace := s.rate(rig.SitePace)
	s.place.hole = hole
	return pace
}
