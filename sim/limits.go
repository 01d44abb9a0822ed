package sim

import (
	"coredays/model/activity"
	"coredays/model/voyage"
)

// The limits of the expedition: leave in time for port, keep caps, give up what ranks lower first.
// They look at the crew's estimates and at nothing that the replication has yet to draw.

// worthStarting is the share of a hole's estimated time that must be left for it to be begun
// [common practice: a hole that can't reach three quarters of its programme is left out].
const worthStarting = 0.75

// enforceLimits ends the item in hand when time or the site's cap is up.
func (s *ship) enforceLimits() {
	if !s.constrained || s.here == nil || s.item == nil || s.hole.finished {
		return
	}
	if s.item.Task != nil {
		if s.timeUp {
			s.finishItem(true)
		}
		return
	}
	if !s.workLeft() {
		return
	}
	next := s.nextTakes()
	outOfTime := s.mustLeave(next)
	outOfCap := s.here.Cap > 0 && s.clock-s.sites[s.siteNumber()].arrived+s.leaveTime()+next > float64(s.here.Cap)
	if !outOfTime && !outOfCap {
		return
	}
	s.fork()
	s.items[s.item.Number].incomplete = true
	s.hole.finished, s.hole.lost = true, false
	if outOfTime {
		s.timeUp = true
	}
}

// workLeft reports whether anything of the hole in hand is left to do.
func (s *ship) workLeft() bool {
	return s.aheadLeft() || s.coringLeft() || s.loggingDue()
}

// mustLeave reports whether there is no time any more for work of so many seconds here.
// Near the end the crew adds the hours for which the forecast has a sea too high to handle the
// assembly on the rig floor.
func (s *ship) mustLeave(work float64) bool {
	spare := s.v.Deadline - (s.clock + work + s.leaveTime() + s.homeTime(s.at))
	return spare < 0 || spare < lookAhead && spare < s.forecastAbove(s.waveLimitOf(activity.PipeHandling))
}

// leaveOut reports whether an item of this site is dropped: because it doesn't fit any more, or
// because what ranks higher and is still ahead would not fit after it.
func (s *ship) leaveOut(i *voyage.Item) bool {
	if !s.constrained || s.fits(i) && s.equipped(s.here, i) {
		return false
	}
	s.fork()
	s.items[i.Number].state = dropped
	return true
}

// fits reports whether there is time for an item at the site where the ship is.
func (s *ship) fits(i *voyage.Item) bool {
	if s.timeUp || s.clock > s.closes(s.siteNumber()) {
		return false
	}
	needed := s.crewEstimate(i)
	left := s.v.Deadline - s.clock - s.homeTime(s.at)
	if at := s.here.Cap; at > 0 {
		left = min(left, float64(at)-(s.clock-s.sites[s.siteNumber()].arrived))
	}
	if left < needed*worth(i) {
		return false
	}
	return s.v.Deadline-s.clock-needed*worth(i) >= s.reserve(s.at, i.Rank)
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
func (s *ship) reserve(at voyage.Place, rank int) float64 {
	var total float64
	for _, n := range s.v.Plan.Order {
		site := &s.v.Sites[n]
		if site.Alternate || s.sites[n].state == dropped {
			continue
		}
		var here float64
		for i := range site.Items {
			if item := &site.Items[i]; item.Rank < rank && s.items[item.Number].state == ahead {
				here += s.crewEstimate(item)
			}
		}
		if here == 0 {
			continue
		}
		if to := voyage.SitePlace(n); to != at {
			total += s.crew.Leg[at][to] * Contingency
			at = to
		}
		total += here
	}
	return total + s.homeTime(at)
}

// passOver reports whether a site is dropped because none of its items fits. What is wanted only as an
// earlier hole turns out is no reason to go there.
func (s *ship) passOver(n int) bool {
	if !s.constrained {
		return false
	}
	place := voyage.SitePlace(n)
	for i := range s.v.Sites[n].Items {
		item := &s.v.Sites[n].Items[i]
		if item.When == nil && s.items[item.Number].state == ahead && !s.timeUp && s.stillFits(n, item) && s.equipped(&s.v.Sites[n], item) &&
			s.v.Deadline-s.mayBegin(n)-s.crewEstimate(item)*worth(item) >= s.reserve(place, item.Rank) {
			if s.v.Sites[n].Alternate {
				s.fork()
			}
			return false
		}
	}
	s.fork()
	s.sites[n].state = dropped
	return true
}

// giveUp drops what lies ahead at other primary sites and would not fit even if the ship went there now for it
// alone, so that nothing is kept waiting for it. What is wanted only as another hole turns out is judged
// when that is known.
func (s *ship) giveUp() {
	for n := range s.v.Sites {
		if s.sites[n].state != ahead || s.v.Sites[n].Alternate || voyage.SitePlace(n) == s.at {
			continue
		}
		for i := range s.v.Sites[n].Items {
			if item := &s.v.Sites[n].Items[i]; item.When == nil && s.items[item.Number].state == ahead && !s.stillFits(n, item) {
				s.fork()
				s.items[item.Number].state = dropped
			}
		}
	}
}

// stillFits reports whether there would be time for an item of a site, were the ship to go there now for
// it alone.
func (s *ship) stillFits(n int, item *voyage.Item) bool {
	work, at, limit := s.crewEstimate(item)*worth(item), s.mayBegin(n), float64(s.v.Sites[n].Cap)
	return at <= s.closes(n) && (limit == 0 || work <= limit) && at+work+s.homeTime(voyage.SitePlace(n)) <= s.v.Deadline
}

// mayBegin is when work at a site may begin at the earliest, by the crew's estimate of the passage.
func (s *ship) mayBegin(n int) float64 {
	at := s.clock
	if to := voyage.SitePlace(n); to != s.at {
		at += s.passageTime(to)
	}
	return max(at, s.opens(n))
}
