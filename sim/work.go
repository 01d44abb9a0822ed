package sim

import (
	"math"

	"coredays/model/activity"
)

// An operation is made of activities, and each is done: do waits for the sea and stops for it, doInUnits does so after
// the unit in hand, doUnstopped heeds no sea. All of them spend time and let happen what is due on the way.

// do performs an activity that takes so many seconds and returns the seconds of work put in:
// all of them unless the script has ended or the activity was given up.
func (s *ship) do(k activity.Kind, takes float64) float64 { return s.doInUnits(k, takes, 0) }

// doInUnits performs an activity made of units, such as stands of pipe, that take so many seconds each.
func (s *ship) doInUnits(k activity.Kind, takes, unit float64) float64 {
	if takes <= 0 {
		return 0
	}
	var before float64
	if !s.past.over() {
		left := s.relives(k, takes)
		before, takes = takes-left, left
	}
	worked := before
	if takes > 0 {
		worked += s.doAsTheSeaAllows(k, takes, unit)
	}
	if bringsOther(k) {
		s.handled += worked
	}
	return worked
}

// doAsTheSeaAllows does an activity in the sea as it comes, with what happens on the way.
func (s *ship) doAsTheSeaAllows(k activity.Kind, takes, unit float64) float64 {
	if s.ended != goingOn {
		return 0
	}
	traits := k.Of()
	most := s.waveLimitOf(traits.Limit)
	for s.rough(most) {
		if traits.Stop == activity.Forfeit || !s.standBy(k, most) {
			return 0
		}
	}
	left := takes
	for s.agenda.next <= s.clock+left {
		step := s.agenda.next - s.clock
		s.spend(k, step)
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
		case activity.Restart, activity.RestartAtSea:
			left = takes
		}
		for left > 0 && s.rough(most) {
			if !s.standBy(k, most) {
				return takes - left
			}
		}
	}
	s.spend(k, left)
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
	s.doUnstopped(k, rest)
	return rest
}

// doUnstopped does an activity whatever the sea, with what happens on the way.
func (s *ship) doUnstopped(k activity.Kind, takes float64) {
	if !s.past.over() {
		takes = s.relives(k, takes)
	}
	for s.agenda.next <= s.clock+takes {
		step := s.agenda.next - s.clock
		s.spend(k, step)
		takes -= step
		s.happen()
	}
	s.spend(k, takes)
}

// spend lets time pass on a kind of activity.
func (s *ship) spend(k activity.Kind, seconds float64) {
	if s.diary != nil {
		s.diary.activity(s, k, seconds)
	}
	s.clock += seconds
	s.spent[k] += seconds
	s.mayBeHalted()
}

// happen lets the actor whose turn it is act, and reports whether the rig broke down.
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

// waveLimitOf is the significant wave height above which a class of work stops here.
func (s *ship) waveLimitOf(l activity.Limit) float64 {
	if l == activity.AnySea || s.here == nil {
		return math.Inf(1)
	}
	if l == activity.FreeTask {
		if limit := float64(s.taskStep().SeaLimit); limit > 0 {
			return s.waveLimit(limit)
		}
		return s.waveLimit(math.Inf(1))
	}
	return s.waveLimit(s.here.Most[l])
}

// waveLimit is a limit with what the pipe in the water bears: above that the storm ladder begins,
// whatever the work.
func (s *ship) waveLimit(limit float64) float64 {
	if s.inHole() {
		limit = min(limit, s.v.ClearFloor)
	}
	if s.bit > 0 {
		limit = min(limit, s.v.Recover)
	}
	return limit
}
