package sim

import (
	"math"
	"time"
)

// meetPlace closes or opens the site as cyclones and ice of the known place have it now, and plans when that
// changes. The spells hang on the calendar and the random stream of the replication alone, so that every alternative
// meets the same ones at the same place and date.
func (s *ship) meetPlace() {
	s.agenda.plan(thePlace, math.Inf(1))
	if s.here == nil || s.here.Known == nil || s.Median {
		return
	}
	const rounding = time.Millisecond // so that a spell that ends now has ended
	now := s.v.Plan.Sails.Add(time.Duration(s.clock*float64(time.Second)) + rounding)
	shut, until, found := s.here.Known.At(s.Stream, now)
	s.shut = shut
	if found {
		s.agenda.plan(thePlace, s.clock+until.Sub(now).Seconds()+rounding.Seconds())
	}
}
