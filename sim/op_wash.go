package sim

import (
	"coredays/model/activity"
	"coredays/model/rig"
	"coredays/sim/ship"
)

// fills is what has gathered on the bottom of the hole while the string was out of it, m: what falls in, at most all that is
// open. Of an existing hole to which she comes for the first time the plan may state it.
func (s *expedition) fills() float64 {
	open := max(0, s.Hole.Depth-s.Hole.Cased.Shoe)
	if stated := float64(s.Planned().Fill); stated > 0 && s.Hole.Stabs == 1 {
		return min(stated, s.Hole.Depth)
	}
	return min(open, s.Rate(rig.TripFill)*s.Gripping())
}

// runToBottom brings the bit back to the bottom of the hole.
func (s *expedition) runToBottom() { s.goDown(s.Bottom()) }

// goDown brings the bit to a depth in the hole below the sea surface, m, through what has filled it.
func (s *expedition) goDown(to float64) {
	if top := min(to, s.Bottom()-s.Hole.Fill); s.Bit < top {
		s.Move(activity.RunInHole, top)
	}
	washed := to - max(s.Bit, s.Bottom()-s.Hole.Fill)
	if s.Ended != ship.GoingOn || s.Hole.Fill <= 0 || washed <= 0 {
		s.Move(activity.RunInHole, to)
		return
	}
	rate := s.Rate(rig.WashDown)
	from, takes := s.Bit, washed/rate
	done := s.DoInUnits(activity.WashDown, takes, s.RateMedian(rig.JointLength)/rate) / takes
	s.Hole.Fill -= washed * done
	if s.Ended != ship.GoingOn {
		if s.Bit == from {
			s.Bit += washed * done
		}
		return
	}
	s.Bit = to
	if s.CoringLeft() && !s.AheadLeft() && s.DueCasing() == nil && to >= s.Bottom() {
		s.fetchWashBarrel()
	}
}

// fetchWashBarrel fetches the barrel that kept fill out of the pipe, before the next one is dropped.
func (s *expedition) fetchWashBarrel() {
	is := s.Tool().Of()
	s.Do(activity.WashBarrel, 2*s.Bit/s.Rate(is.Wire)+s.Rate(is.Handling))
}
