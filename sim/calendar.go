package sim

import (
	"math"
	"time"

	"coredays/model/activity"
	"coredays/model/chance"
)

// theClosings is the purpose of when sites close, whichCloses that of what closes them.
var (
	theClosings = chance.KeyOf("site closed")
	whichCloses = chance.KeyOf("what closes the site")
)

// planClosing sets when the site closes next: after an exponential time, as such things come without a memory of the last. What
// comes of several is as likely as it is frequent.
func (s *ship) planClosing() {
	if len(s.here.Closes) == 0 || s.Median {
		return
	}
	stream, log := s.Stream.For(theClosings).For(s.here.Key), &s.sites[s.siteNumber()]
	often := 0.0
	for i := range s.here.Closes {
		often += 1 / s.OfSite(s.here.Closes[i].Every)
	}
	s.agenda.plan(theSite, s.clock-math.Log(stream.Uniform(log.closings))/often)
	at := often * s.Stream.For(whichCloses).For(s.here.Key).Uniform(log.closings)
	s.closing = len(s.here.Closes) - 1
	for i := range s.closing {
		if at -= 1 / s.OfSite(s.here.Closes[i].Every); at < 0 {
			s.closing = i
			break
		}
	}
	log.closings++
}

// closeOrOpen closes the site for as long as it lasts, or opens it again.
func (s *ship) closeOrOpen() {
	s.closed = !s.closed
	if s.closed {
		s.agenda.plan(theSite, s.clock+s.OfSite(s.here.Closes[s.closing].Lasts))
		return
	}
	s.agenda.plan(theSite, math.Inf(1))
	s.planClosing()
}

// opens is when work may begin at a site, s after sailing.
func (s *ship) opens(site int) float64 {
	return s.sinceSailing(s.v.Sites[site].NotBefore, math.Inf(-1))
}

// closes is when nothing more may be begun at a site, s after sailing.
func (s *ship) closes(site int) float64 {
	return s.sinceSailing(s.v.Sites[site].NotAfter, math.Inf(1))
}

// sinceSailing is a date as s after sailing, or what is said where there is none.
func (s *ship) sinceSailing(date time.Time, none float64) float64 {
	if date.IsZero() {
		return none
	}
	return date.Sub(s.v.Plan.Sails).Seconds()
}

// tooEarly reports whether the ship must wait for the site's first date. The crew's estimates leave that
// out: it depends on when she comes.
func (s *ship) tooEarly() bool {
	return s.here != nil && !s.Median && !s.positioned && s.clock < s.opens(s.siteNumber())-1
}

// awaitDate waits off the site for its first date; a bound ship no longer than she has time.
func (s *ship) awaitDate() {
	wait := s.opens(s.siteNumber()) - s.clock
	if s.constrained && s.mustLeave(wait) {
		s.fork()
		s.timeUp = true
		s.finishItem(true)
		return
	}
	s.do(activity.WaitForDate, wait)
}

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
