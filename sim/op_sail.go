package sim

import (
	"math"

	"coredays/model/activity"
	"coredays/model/rig"
	"coredays/model/voyage"
	"coredays/sim/random"
)

// sail takes the ship to where she is heading.
func (s *ship) sail() {
	to := s.towards
	leg := s.v.Leg(s.at, to)
	if s.bit > 0 {
		s.move(activity.PullPipe, min(s.bit, clearOf(s.v.Sites[to-voyage.FirstSite].Floor)))
	}
	if s.ended != goingOn {
		return
	}
	s.leaveSite()
	s.Place = random.Place{Site: leg.Key, Hole: leg.Key}
	if s.at == voyage.FromPort {
		s.do(activity.Pilotage, s.Rate(rig.Pilotage))
	}
	s.sea.waves, s.sea.course = leg.Waves, 0
	s.meetSea()
	left := leg.Distance
	if s.bit > 0 {
		left = s.sailFor(activity.HangingPassage, left, s.Rate(rig.HangingSpeed))
		if s.ended == stormPipe { // on with the pipe on deck
			s.ended = goingOn
			s.pullAnyhow(0)
		}
	}
	if left > 0 && s.ended == goingOn {
		s.here = nil
		s.sailFor(activity.Passage, left, s.Rate(rig.SailingSpeed))
	}
	if s.ended != goingOn {
		return
	}
	if leg.Call != voyage.NoQuantity {
		s.do(activity.Call, s.Draw(leg.Call))
	}
	s.here = nil
	s.at = to
	if to == voyage.ToPort {
		s.do(activity.Pilotage, s.Rate(rig.Pilotage))
		s.home = true
		return
	}
	s.reachSite()
}

// sailFor sails a distance, slower in waves: in each step of the sea at the speed that it allows. It
// returns what is left of the way when the sea ends the passage.
func (s *ship) sailFor(k activity.Kind, distance, speed float64) (left float64) {
	distance = s.sailed(k, distance, speed)
	for distance > 1e-6 && s.ended == goingOn {
		now := speed
		if k == activity.Passage {
			now *= s.v.InWaves(s.sea.height)
		}
		takes := distance / now
		if untilChange := s.agenda.at[theSea] - s.clock; takes > untilChange && untilChange > 0 {
			takes = untilChange
		}
		distance -= s.do(k, takes) * now
	}
	if distance <= 1e-6 {
		return 0
	}
	return distance
}

// leaveSite closes the log of the site that is left.
func (s *ship) leaveSite() {
	if s.here == nil {
		return
	}
	s.closeItem()
	s.closed, s.shut = false, false
	s.agenda.plan(theSite, math.Inf(1))
	s.agenda.plan(thePlace, math.Inf(1))
	log := &s.sites[s.siteNumber()]
	log.left = s.clock
	log.waited += s.spent[activity.WaitOnWeather]
	if log.state == underWay {
		log.state = done
	}
	s.leaveStation()
	if s.bit == 0 {
		s.here = nil
	}
}

// reachSite opens the log of a site.
func (s *ship) reachSite() {
	site := int(s.at - voyage.FirstSite)
	s.here = &s.v.Sites[site]
	log := &s.sites[site]
	log.state, log.arrived = underWay, s.clock
	log.waited = -s.spent[activity.WaitOnWeather]
	s.Place = random.Place{Site: s.here.Key, Hole: s.here.Key}
	s.sea.waves, s.sea.course = s.here.Waves, s.here.Course
	s.meetSea()
	s.planClosing()
	s.meetPlace()
}

// takeStation gets the ship to hold her position.
func (s *ship) takeStation() {
	if s.bit == 0 {
		s.do(activity.Position, s.Rate(rig.Positioning))
	}
	if s.ended == goingOn {
		s.positioned = true
		s.runRig()
		s.lastService = s.clock
	}
}

// secure makes the ship ready for sea.
func (s *ship) secure() {
	s.do(activity.Secure, s.Rate(rig.Securing))
	s.leaveStation()
}

// leaveStation: the ship holds her position no longer.
func (s *ship) leaveStation() {
	s.positioned = false
	s.restRig()
}

// serviceRig greases and inspects.
func (s *ship) serviceRig() {
	s.do(activity.RigService, s.Rate(rig.RigService))
	s.lastService = s.clock
}

// slipAndCut renews the worn part of the drilling line.
func (s *ship) slipAndCut() {
	s.do(activity.SlipAndCut, s.Rate(rig.SlipAndCut))
	s.lineWork = 0
}
