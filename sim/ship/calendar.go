package ship

import (
	"math"
	"time"

	"coredays/model/chance"
)

// theClosings is the purpose of when sites close, whichCloses that of what closes them.
var (
	theClosings = chance.KeyOf("site closed")
	whichCloses = chance.KeyOf("what closes the site")
)

// PlanClosing sets when the site closes next: after an exponential time, as such things come without a memory of the last. What
// comes of several is as likely as it is frequent.
func (s *Ship) PlanClosing() {
	if len(s.Here.Closes) == 0 || s.Median {
		return
	}
	stream, log := s.Stream.For(theClosings).For(s.Here.Key), &s.Sites[s.SiteNumber()]
	often := 0.0
	for i := range s.Here.Closes {
		often += 1 / s.OfSite(s.Here.Closes[i].Every)
	}
	s.Agenda.Plan(TheSite, s.Clock-math.Log(stream.Uniform(log.Closings))/often)
	at := often * s.Stream.For(whichCloses).For(s.Here.Key).Uniform(log.Closings)
	s.closing = len(s.Here.Closes) - 1
	for i := range s.closing {
		if at -= 1 / s.OfSite(s.Here.Closes[i].Every); at < 0 {
			s.closing = i
			break
		}
	}
	log.Closings++
}

// closeOrOpen closes the site for as long as it lasts, or opens it again.
func (s *Ship) closeOrOpen() {
	s.Closed = !s.Closed
	if s.Closed {
		s.Agenda.Plan(TheSite, s.Clock+s.OfSite(s.Here.Closes[s.closing].Lasts))
		return
	}
	s.Agenda.Plan(TheSite, math.Inf(1))
	s.PlanClosing()
}

// Opens is when work may begin at a site, s after sailing.
func (s *Ship) Opens(site int) float64 {
	return s.sinceSailing(s.Voyage.Sites[site].NotBefore, math.Inf(-1))
}

// Closes is when nothing more may be begun at a site, s after sailing.
func (s *Ship) Closes(site int) float64 {
	return s.sinceSailing(s.Voyage.Sites[site].NotAfter, math.Inf(1))
}

// sinceSailing is a date as s after sailing, or what is said where there is none.
func (s *Ship) sinceSailing(date time.Time, none float64) float64 {
	if date.IsZero() {
		return none
	}
	return date.Sub(s.Voyage.Plan.Sails).Seconds()
}

// MeetPlace closes or opens the site as cyclones and ice of the known place have it now, and plans when that
// changes. The spells hang on the calendar and the random stream of the replication alone, so that every alternative
// meets the same ones at the same place and date.
func (s *Ship) MeetPlace() {
	s.Agenda.Plan(ThePlace, math.Inf(1))
	if s.Here == nil || s.Here.Known == nil || s.Median {
		return
	}
	const rounding = time.Millisecond // so that a spell that ends now has ended
	now := s.Voyage.Plan.Sails.Add(time.Duration(s.Clock*float64(time.Second)) + rounding)
	shut, until, found := s.Here.Known.At(s.Stream, now)
	s.Shut = shut
	if found {
		s.Agenda.Plan(ThePlace, s.Clock+until.Sub(now).Seconds()+rounding.Seconds())
	}
}
