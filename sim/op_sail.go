package sim

import (
	"math"

	"coredays/model/activity"
	"coredays/model/rig"
	"coredays/model/voyage"
	"coredays/sim/random"
	"coredays/sim/ship"
)

// sail takes the ship to where she is heading.
func (s *expedition) sail() {
	to := s.Towards
	leg := s.Voyage.Leg(s.At, to)
	if s.Bit > 0 {
		s.Move(activity.PullPipe, min(s.Bit, ship.ClearOf(s.Voyage.Sites[to-voyage.FirstSite].Floor)))
	}
	if s.Ended != ship.GoingOn {
		return
	}
	s.leaveSite()
	s.Place = random.Place{Site: leg.Key, Hole: leg.Key}
	if s.At == voyage.FromPort {
		s.Do(activity.Pilotage, s.Rate(rig.Pilotage))
	}
	s.Sea.Waves, s.Sea.Course = leg.Waves, 0
	s.MeetSea()
	left := leg.Distance
	if s.Bit > 0 {
		left = s.sailFor(activity.HangingPassage, left, s.Rate(rig.HangingSpeed))
		if s.Ended == ship.StormPipe { // on with the pipe on deck
			s.Ended = ship.GoingOn
			s.PullAnyhow(0)
		}
	}
	if left > 0 && s.Ended == ship.GoingOn {
		s.Here = nil
		s.sailFor(activity.Passage, left, s.Rate(rig.SailingSpeed))
	}
	if s.Ended != ship.GoingOn {
		return
	}
	if to != voyage.ToPort && s.Bit == 0 {
		s.Do(activity.Approach, s.Rate(rig.Approach))
	}
	if leg.Call != voyage.NoQuantity {
		s.Do(activity.Call, s.Draw(leg.Call))
	}
	s.Here = nil
	s.At = to
	if to == voyage.ToPort {
		s.Do(activity.Pilotage, s.Rate(rig.Pilotage))
		s.Home = true
		return
	}
	s.reachSite()
}

// sailFor sails a distance, slower in waves: in each step of the sea at the speed that it allows. It
// returns what is left of the way when the sea ends the passage.
func (s *expedition) sailFor(k activity.Kind, distance, speed float64) (left float64) {
	distance = s.Sailed(k, distance, speed)
	for distance > 1e-6 && s.Ended == ship.GoingOn {
		now := speed
		if k == activity.Passage {
			now *= s.Voyage.InWaves(s.Sea.Height)
		}
		takes := distance / now
		if untilChange := s.Agenda.At[ship.TheSea] - s.Clock; takes > untilChange && untilChange > 0 {
			takes = untilChange
		}
		distance -= s.Do(k, takes) * now
	}
	if distance <= 1e-6 {
		return 0
	}
	return distance
}

// leaveSite closes the log of the site that is left.
func (s *expedition) leaveSite() {
	if s.Here == nil {
		return
	}
	s.closeItem()
	s.Closed, s.Shut = false, false
	s.Agenda.Plan(ship.TheSite, math.Inf(1))
	s.Agenda.Plan(ship.ThePlace, math.Inf(1))
	log := &s.Sites[s.SiteNumber()]
	log.Left = s.Clock
	log.Waited += s.Spent[activity.WaitOnWeather]
	if log.State == ship.UnderWay {
		log.State = ship.Done
	}
	s.LeaveStation()
	if s.Bit == 0 {
		s.Here = nil
	}
}

// reachSite opens the log of a site.
func (s *expedition) reachSite() {
	site := int(s.At - voyage.FirstSite)
	s.Here = &s.Voyage.Sites[site]
	log := &s.Sites[site]
	log.State, log.Arrived = ship.UnderWay, s.Clock
	log.Waited = -s.Spent[activity.WaitOnWeather]
	s.Place = random.Place{Site: s.Here.Key, Hole: s.Here.Key}
	s.Sea.Waves, s.Sea.Course = s.Here.Waves, s.Here.Course
	s.MeetSea()
	s.PlanClosing()
	s.MeetPlace()
}

// takeStation gets the ship to hold her position.
func (s *expedition) takeStation() {
	if s.Bit == 0 {
		s.Do(activity.Position, s.Rate(rig.Positioning))
	}
	if s.Ended == ship.GoingOn {
		s.Positioned = true
		s.RunRig()
		s.LastService = s.Clock
	}
}

// secure makes the ship ready for sea.
func (s *expedition) secure() {
	s.Do(activity.Secure, s.Rate(rig.Securing))
	s.LeaveStation()
}

// serviceRig greases and inspects.
func (s *expedition) serviceRig() {
	s.Do(activity.RigService, s.Rate(rig.RigService))
	s.LastService = s.Clock
}

// slipAndCut renews the worn part of the drilling line.
func (s *expedition) slipAndCut() {
	s.Do(activity.SlipAndCut, s.Rate(rig.SlipAndCut))
	s.LineWork = 0
}

// awaitDate waits off the site for its first date; a bound ship no longer than she has time.
func (s *expedition) awaitDate() {
	wait := s.Opens(s.SiteNumber()) - s.Clock
	if s.Constrained && s.MustLeave(wait) {
		s.fork()
		s.TimeUp = true
		s.finishItem(true)
		return
	}
	s.Do(activity.WaitForDate, wait)
}
