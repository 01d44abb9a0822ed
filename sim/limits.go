package sim

import (
	"coredays/model/voyage"
	"coredays/sim/ship"
)

// The limits of the expedition: leave in time for port, keep caps, give up what ranks lower first.
// They look at the crew's estimates and at nothing that the replication has yet to draw.

// worthStarting is the share of a hole's estimated time that must be left for it to be begun
// [common practice: a hole that can't reach three quarters of its programme is left out].
const worthStarting = 0.75

// enforceLimits ends the item in hand when time or the site's cap is up.
func (s *expedition) enforceLimits() {
	if !s.Constrained || s.Here == nil || s.Item == nil || s.Hole.Finished {
		return
	}
	if s.Item.Task != nil {
		if s.TimeUp {
			s.finishItem(true)
		}
		return
	}
	if !s.WorkLeft() {
		return
	}
	next := s.nextTakes()
	outOfTime := s.MustLeave(next)
	outOfCap := s.Here.Cap > 0 && s.Clock-s.Sites[s.SiteNumber()].Arrived+s.LeaveTime()+next > float64(s.Here.Cap)
	if !outOfTime && !outOfCap {
		return
	}
	s.fork()
	s.Items[s.Item.Number].Incomplete = true
	s.Hole.Finished, s.Hole.Lost = true, false
	if outOfTime {
		s.TimeUp = true
	}
}

// leaveOut reports whether an item of this site is dropped: because it doesn't fit any more, or
// because what ranks higher and is still ahead would not fit after it.
func (s *expedition) leaveOut(i *voyage.Item) bool {
	if !s.Constrained || s.fits(i) && s.Equipped(s.Here, i) {
		return false
	}
	s.fork()
	s.Items[i.Number].State = ship.Dropped
	return true
}

// fits reports whether there is time for an item at the site where the ship is.
func (s *expedition) fits(i *voyage.Item) bool {
	if s.TimeUp || s.Clock > s.Closes(s.SiteNumber()) {
		return false
	}
	needed := s.crewEstimate(i)
	left := s.Voyage.Deadline - s.Clock - s.HomeTime(s.At)
	if at := s.Here.Cap; at > 0 {
		left = min(left, float64(at)-(s.Clock-s.Sites[s.SiteNumber()].Arrived))
	}
	if left < needed*worth(i) {
		return false
	}
	return s.Voyage.Deadline-s.Clock-needed*worth(i) >= s.reserve(s.At, i.Rank)
}

// worth is the share of the estimate that must be left: a hole may be cut short, a task may not.
func worth(i *voyage.Item) float64 {
	if i.Hole != nil && len(i.Hole.Logging) == 0 {
		return worthStarting
	}
	return 1
}

// reserve is the time for all that ranks higher than a rank and lies ahead at primary sites, with
// the way there and home, s.
func (s *expedition) reserve(at voyage.Place, rank int) float64 {
	var total float64
	for _, n := range s.Voyage.Plan.Order {
		site := &s.Voyage.Sites[n]
		if site.Alternate || s.Sites[n].State == ship.Dropped {
			continue
		}
		var here float64
		for i := range site.Items {
			if item := &site.Items[i]; item.Rank < rank && s.Items[item.Number].State == ship.Ahead {
				here += s.crewEstimate(item)
			}
		}
		if here == 0 {
			continue
		}
		if to := voyage.SitePlace(n); to != at {
			total += s.Crew.Leg[at][to] * ship.Contingency
			at = to
		}
		total += here
	}
	return total + s.HomeTime(at)
}

// passOver reports whether a site is dropped because none of its items fits. What is wanted only as an
// earlier hole turns out is no reason to go there.
func (s *expedition) passOver(n int) bool {
	if !s.Constrained {
		return false
	}
	place := voyage.SitePlace(n)
	for i := range s.Voyage.Sites[n].Items {
		item := &s.Voyage.Sites[n].Items[i]
		if item.When == nil && s.Items[item.Number].State == ship.Ahead && !s.TimeUp && s.stillFits(n, item) && s.Equipped(&s.Voyage.Sites[n], item) &&
			s.Voyage.Deadline-s.mayBegin(n)-s.crewEstimate(item)*worth(item) >= s.reserve(place, item.Rank) {
			if s.Voyage.Sites[n].Alternate {
				s.fork()
			}
			return false
		}
	}
	s.fork()
	s.Sites[n].State = ship.Dropped
	return true
}

// giveUp drops what lies ahead at other primary sites and would not fit even if the ship went there now for it
// alone, so that nothing is kept waiting for it. What is wanted only as another hole turns out is judged
// when that is known.
func (s *expedition) giveUp() {
	for n := range s.Voyage.Sites {
		if s.Sites[n].State != ship.Ahead || s.Voyage.Sites[n].Alternate || voyage.SitePlace(n) == s.At {
			continue
		}
		for i := range s.Voyage.Sites[n].Items {
			if item := &s.Voyage.Sites[n].Items[i]; item.When == nil && s.Items[item.Number].State == ship.Ahead && !s.stillFits(n, item) {
				s.fork()
				s.Items[item.Number].State = ship.Dropped
			}
		}
	}
}

// stillFits reports whether there would be time for an item of a site, were the ship to go there now for
// it alone.
func (s *expedition) stillFits(n int, item *voyage.Item) bool {
	work, at, limit := s.crewEstimate(item)*worth(item), s.mayBegin(n), float64(s.Voyage.Sites[n].Cap)
	return at <= s.Closes(n) && (limit == 0 || work <= limit) && at+work+s.HomeTime(voyage.SitePlace(n)) <= s.Voyage.Deadline
}

// mayBegin is when work at a site may begin at the earliest, by the crew's estimate of the passage.
func (s *expedition) mayBegin(n int) float64 {
	at := s.Clock
	if to := voyage.SitePlace(n); to != s.At {
		at += s.passageTime(to)
	}
	return max(at, s.Opens(n))
}
