package sim

import (
	"math"

	"coredays/model/activity"
)

// do performs an activity that takes so many seconds and returns the seconds of work put in:
// all of them unless the script has ended or the activity was given up.
func (s *ship) do(k activity.Kind, takes float64) float64 { return s.doBy(k, takes, 0) }

// doBy performs an activity made of units, such as stands of pipe, that take so many seconds each.
func (s *ship) doBy(k activity.Kind, takes, unit float64) float64 {
	if takes <= 0 {
		return 0
	}
	worked := s.perform(k, takes, unit)
	if bringsOther(k) {
		s.handled += worked
	}
	return worked
}

// perform does an activity in the sea as it comes, with what happens on the way.
func (s *ship) perform(k activity.Kind, takes, unit float64) float64 {
	if s.ended != goingOn {
		return 0
	}
	traits := k.Of()
	most := s.most(traits.Limit)
	for s.rough(most) {
		if traits.Stop == activity.Forfeit || !s.standBy(k, most) {
			return 0
		}
	}
	left := takes
	for s.agenda.next <= s.clock+left {
		step := s.agenda.next - s.clock
		s.book(k, step)
		left -= step
		if s.happen() {
			if s.heldUp(traits.Stop) {
				return takes - left
			}
			if traits.Stop == activity.Restart {
				left = takes
			}
		}
		if !s.rough(most) || traits.Stop == activity.FinishFirst {
			continue
		}
		switch traits.Stop {
		case activity.Forfeit:
			return takes - left
		case activity.NextUnit:
			left -= s.finishUnit(k, takes-left, left, unit)
		case activity.Restart:
			left = takes
		}
		for left > 0 && s.rough(most) {
			if !s.standBy(k, most) {
				return takes - left
			}
		}
	}
	s.book(k, left)
	return takes
}

// finishUnit completes the stand in hand and returns the time that it took.
func (s *ship) finishUnit(k activity.Kind, worked, left, unit float64) float64 {
	if unit <= 0 {
		return 0
	}
	rest := min(math.Ceil(worked/unit-1e-9)*unit-worked, left)
	if rest <= 0 {
		return 0
	}
	s.pass(k, rest)
	return rest
}

// book lets time pass on a kind of activity.
func (s *ship) book(k activity.Kind, seconds float64) {
	if s.diary != nil {
		s.diary.book(s, k, seconds)
	}
	s.clock += seconds
	s.spent[k] += seconds
	s.mayBeHalted()
}

// happen lets the actor whose turn it is act, and tells whether the rig broke down.
func (s *ship) happen() (broke bool) {
	switch s.agenda.who {
	case theSea:
		s.seaChanges()
	case theRig:
		s.breakDown()
		return true
	case theSite:
		s.closeOrOpen()
	case thePlace:
		s.meetPlace()
	}
	return false
}

// most is the significant wave height above which a class of work stops here.
func (s *ship) most(l activity.Limit) float64 {
	if l == activity.AnySea || s.here == nil {
		return math.Inf(1)
	}
	if l == activity.FreeTask {
		if limit := float64(s.item.Task.SeaLimit); limit > 0 {
			return s.bearable(limit)
		}
		return s.bearable(math.Inf(1))
	}
	return s.bearable(s.here.Most[l])
}

// bearable is a limit with what the pipe in the water bears: above that the storm ladder begins,
// whatever the work.
func (s *ship) bearable(limit float64) float64 {
	if s.inHole() {
		limit = min(limit, s.v.ClearFloor)
	}
	if s.bit > 0 {
		limit = min(limit, s.v.Recover)
	}
	return limit
}
