package sim

import (
	"coredays/model/activity"
	"coredays/model/rig"
)

// fills is what has gathered on the bottom of the hole while the string was out of it, m: what falls in, at most all that is
// open. Of an existing hole to which she comes for the first time the plan may state it.
func (s *ship) fills() float64 {
	open := max(0, s.hole.depth-s.hole.cased.shoe)
	if stated := float64(s.planned().Fill); stated > 0 && s.hole.stabs == 1 {
		return min(stated, s.hole.depth)
	}
	return min(open, s.Rate(rig.TripFill)*s.gripping())
}

// runToBottom brings the bit back to the bottom of the hole.
func (s *ship) runToBottom() { s.goDown(s.bottom()) }

// goDown brings the bit to a depth in the hole below the sea surface, m, through what has filled it.
func (s *ship) goDown(to float64) {
	if top := min(to, s.bottom()-s.hole.fill); s.bit < top {
		s.move(activity.RunInHole, top)
	}
	washed := to - max(s.bit, s.bottom()-s.hole.fill)
	if s.ended != goingOn || s.hole.fill <= 0 || washed <= 0 {
		s.move(activity.RunInHole, to)
		return
	}
	rate := s.Rate(rig.WashDown)
	from, takes := s.bit, washed/rate
	done := s.doInUnits(activity.WashDown, takes, s.rateMedian(rig.JointLength)/rate) / takes
	s.hole.fill -= washed * done
	if s.ended != goingOn {
		if s.bit == from {
			s.bit += washed * done
		}
		return
	}
	s.bit = to
	if s.coringLeft() && !s.aheadLeft() && s.dueCasing() == nil && to >= s.bottom() {
		s.fetchWashBarrel()
	}
}

// fetchWashBarrel fetches the barrel that kept fill out of the pipe, before the next one is dropped.
func (s *ship) fetchWashBarrel() {
	is := s.tool().Of()
	s.do(activity.WashBarrel, 2*s.bit/s.Rate(is.Wire)+s.Rate(is.Handling))
}
