package sim

import (
	"coredays/model/activity"
	"coredays/model/rig"
	"coredays/model/voyage"
)

// sail takes the ship to where she is heading.
func (s *ship) sail() {
	to := s.towards
	leg := s.v.Leg(s.at, to)
	s.leaveSite()
	s.place = place{site: leg.Key, hole: leg.Key}
	if s.at == voyage.FromPort {
		s.do(activity.Pilotage, s.rate(rig.Pilotage))
	}
	s.sea.waves, s.sea.course = leg.Waves, 0
	s.meetSea()
	if s.bit > 0 {
		s.sailFor(activity.HangingPassage, leg.Distance, s.rate(rig.HangingSpeed), 0)
	} else {
		s.sailFor(activity.Passage, leg.Distance, s.rate(rig.SailingSpeed), s.rateMedian(rig.SlowdownPerMetre))
	}
	s.here = nil
	s.at = to
	if to == voyage.ToPort {
		s.do(activity.Pilotage, s.rate(rig.Pilotage))
		s.home = true
		return
	}
	s.reachSite()
}

// slowest is the least share of her speed at which a ship still makes way in a high sea: gales
// of the handbook's passages left 2 to 4 of 11 knots.
const slowest = 0.25

// sailFor sails a distance, slower in waves: in each step of the sea at the speed that it allows.
func (s *ship) sailFor(k activity.Kind, distance, speed, slowdown float64) {
	from := s.rateMedian(rig.SlowdownFrom)
	for distance > 1e-6 {
		now := speed * max(slowest, 1-slowdown*max(0, s.sea.height-from))
		takes := distance / now
		if untilChange := s.agenda.at[theSea] - s.clock; takes > untilChange && untilChange > 0 {
			takes = untilChange
		}
		s.do(k, takes)
		distance -= takes * now
	}
}

// leaveSite closes the log of the site that is left.
func (s *ship) leaveSite() {
	if s.here == nil {
		return
	}
	s.closeItem()
	log := &s.sites[s.siteNumber()]
	log.left = s.clock
	log.waited += s.spent[activity.WaitOnWeather]
	if log.state == underWay {
		log.state = done
	}
	s.positioned = false
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
	s.place = place{site: s.here.Key, hole: s.here.Key}
	s.sea.waves, s.sea.course = s.here.Waves, s.here.Course
	s.meetSea()
}

// takeStation gets the ship to hold her position.
func (s *ship) takeStation() {
	if s.bit == 0 {
		s.do(activity.Position, s.rate(rig.Positioning))
	}
	if s.ended == goingOn {
		s.positioned = true
		s.lastService = s.clock
	}
}

// secure makes the ship ready for sea.
func (s *ship) secure() {
	s.do(activity.Secure, s.rate(rig.Securing))
	s.positioned = false
}

// serviceRig greases and inspects.
func (s *ship) serviceRig() {
	s.do(activity.RigService, s.rate(rig.RigService))
	s.lastService = s.clock
}

// slipAndCut renews the worn part of the drilling line.
func (s *ship) slipAndCut() {
	s.do(activity.SlipAndCut, s.rate(rig.SlipAndCut))
	s.lineWork = 0
}

// doTask does work that is no hole.
func (s *ship) doTask() {
	s.place.hole = s.item.Key
	kind := activity.Task
	if !s.item.Task.Interruptible {
		kind = activity.WholeTask
	}
	s.do(kind, s.draw(s.item.Takes))
	if s.ended == goingOn {
		s.finishItem(false)
	}
}
