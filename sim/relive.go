package sim

import (
	"slices"

	"coredays/model/activity"
)

// A look-ahead begins in the midst of an operation. The ship is put where she was when that began, and does it again:
// what the log has of it takes the time that it took, whatever is drawn, and what the log has in hand goes on from
// there. So no operation needs a second form that begins half way.

// past is what the log has of the operation in hand.
type past struct {
	steps   []pastStep
	at      int     // the next of them
	credit  float64 // s since it began, where the log does not say on what they were spent
	toGo    float64 // m still to sail; below 0 where that is not stated
	lasts   float64 // s that what is in hand still lasts by the crew's own estimate; 0 where they did not say
	trouble trouble // that is in hand beside it
	short   bool    // what is in hand was drawn shorter than it has lasted by now
	watched bool    // note what does not agree
	amiss   bool    // the operation does other things than the log has
}

// pastStep is one thing done. Those before the last are over.
type pastStep struct {
	kind   activity.Kind
	worked float64 // s
	idle   float64 // s of waiting and repairs
}

func (p *past) over() bool { return p.at >= len(p.steps) && p.credit <= 0 }

// relives takes an activity for what the log has of it, and says how long it still lasts. What the log does not have
// of the operation, though it has what comes after, did not happen. What it has besides took its time.
func (s *ship) relives(k activity.Kind, takes float64) (left float64) {
	p := &s.past
	if p.credit > 0 {
		part := min(takes, p.credit)
		p.credit -= part
		s.spend(k, part)
		if p.over() {
			s.endsTrouble()
		}
		s.catchesUp()
		return takes - part
	}
	if seldomWritten(k) && !slices.ContainsFunc(p.steps[p.at:], func(x pastStep) bool { return x.kind == k }) {
		return 0
	}
	for i := p.at; i < len(p.steps); i++ {
		if p.steps[i].kind != k {
			p.amiss = p.amiss || p.watched && !byTheWay(p.steps[i].kind)
			continue
		}
		worked := p.steps[i].worked
		for p.at <= i {
			s.passes()
		}
		if !p.over() {
			return 0
		}
		begunAgain := p.trouble.began && k.Of().Stop.BeginsAgain(p.trouble.kind == activity.WaitOnWeather)
		waits := p.trouble.began && p.trouble.kind == activity.WaitOnWeather
		stopped := s.endsTrouble()
		if waits {
			s.waitsOn(k)
		}
		switch {
		case p.lasts > 0 && !stopped:
			return p.lasts
		case begunAgain:
			return takes
		}
		p.short = worked > takes
		return max(0, takes-worked)
	}
	p.amiss = p.watched
	return 0
}

// byTheWay tells whether an activity may come in the midst of an operation without being part of it.
func byTheWay(k activity.Kind) bool {
	switch k {
	case activity.BenchWait, activity.CatwalkWait, activity.FailedStart, activity.WaterCore, activity.MudlineReset, activity.DrillOver, activity.Sweep:
		return true
	}
	return k.Of().Class == activity.Repair || k.Of().Class == activity.Waiting
}

// seldomWritten tells whether a log leaves an activity to the trip around it.
func seldomWritten(k activity.Kind) bool { return k == activity.WashDown || k == activity.WashBarrel }

// passes lets the time of the next step pass.
func (s *ship) passes() {
	x := s.past.steps[s.past.at]
	s.past.at++
	s.spend(x.kind, x.worked)
	s.spend(activity.WaitOnWeather, x.idle)
	s.catchesUp()
}

// catchesUp lets happen what was due meanwhile, once the past is over.
func (s *ship) catchesUp() {
	for s.past.over() && s.agenda.next <= s.clock {
		s.happen()
	}
}

// passesAll lets what is left of the past pass, where the operation in hand turned out to be another.
func (s *ship) passesAll() {
	for s.past.at < len(s.past.steps) {
		s.passes()
	}
	if left := s.past.credit; left > 0 {
		s.past.credit, s.past.short = 0, true
		s.spend(activity.CutCore, left)
		s.catchesUp()
	}
}

// sailed is how much of a passage is behind the ship by the log, at the speed that she makes.
func (s *ship) sailed(k activity.Kind, distance, speed float64) (left float64) {
	if s.past.at >= len(s.past.steps) || s.past.steps[s.past.at].kind != k {
		return distance
	}
	if k == activity.Passage {
		speed *= s.v.InWaves(s.sea.height)
	}
	way := s.past.steps[s.past.at].worked * speed
	s.passes()
	if left := s.past.toGo; left >= 0 && s.past.over() {
		return left
	}
	return max(0, distance-way)
}

// redoes does the operation in hand again, after those that take no time, such as the end of a hole.
func (s *ship) redoes() {
	const timeless = 4
	for range timeless {
		before := s.clock
		s.enforceLimits()
		s.nextItem()
		s.stepInHand().do(s)
		if s.clock > before || s.past.over() || s.ended != goingOn {
			return
		}
	}
}

// betweenOperations is what is done about the rig between operations.
var betweenOperations = map[string]activity.Kind{"do other work": activity.OtherWork, "service the rig": activity.RigService, "slip and cut": activity.SlipAndCut}

// stepInHand is the rule that applies. In the midst of an operation the rig is not serviced: what is due comes after it.
func (s *ship) stepInHand() *step {
	first := activity.Kinds
	if s.past.at < len(s.past.steps) {
		first = s.past.steps[s.past.at].kind
	}
	for i := range steps {
		if does, rig := betweenOperations[steps[i].name]; rig {
			if first == does && s.here != nil {
				return &steps[i] // it was, whatever was due
			}
			continue
		}
		if steps[i].when(s) {
			return &steps[i]
		}
	}
	return s.nextStep()
}

// goesOn does the operation in hand to its end, and sails on.
func (s *ship) goesOn() {
	if !s.past.over() {
		s.redoes()
		s.passesAll()
		s.Try(0)
	}
	s.endsTrouble()
	if s.ended != goingOn {
		s.makeSafe()
	}
	s.choose()
	if s.forked { // in what was in hand
		s.unconstrained.choose()
	}
	s.sails()
}
