package ship

import (
	"math"

	"coredays/model/activity"
)

// An operation is made of activities, and each is done: Do waits for the sea and stops for it, DoInUnits does so after
// the unit in hand, doUnstopped heeds no sea. All of them spend time and let happen what is due on the way.

// Do performs an activity that takes so many seconds and returns the seconds of work put in:
// all of them unless the script has ended or the activity was given up.
func (s *Ship) Do(k activity.Kind, takes float64) float64 { return s.DoInUnits(k, takes, 0) }

// DoInUnits performs an activity made of units, such as stands of pipe, that take so many seconds each.
func (s *Ship) DoInUnits(k activity.Kind, takes, unit float64) float64 {
	if takes <= 0 {
		return 0
	}
	var before float64
	if !s.Past.Over() {
		left := s.relives(k, takes)
		before, takes = takes-left, left
	}
	worked := before
	if takes > 0 {
		worked += s.doAsTheSeaAllows(k, takes, unit)
	}
	if BringsOther(k) {
		s.Handled += worked
	}
	return worked
}

// doAsTheSeaAllows does an activity in the sea as it comes, with what happens on the way.
func (s *Ship) doAsTheSeaAllows(k activity.Kind, takes, unit float64) float64 {
	if s.Ended != GoingOn {
		return 0
	}
	traits := k.Of()
	most := s.WaveLimitOf(traits.Limit)
	for s.rough(most) {
		if traits.Stop == activity.Forfeit || !s.standBy(k, most) {
			return 0
		}
	}
	left := takes
	for s.Agenda.Next <= s.Clock+left {
		step := s.Agenda.Next - s.Clock
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
func (s *Ship) finishUnit(k activity.Kind, worked, left, unit float64) float64 {
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
func (s *Ship) doUnstopped(k activity.Kind, takes float64) {
	if !s.Past.Over() {
		takes = s.relives(k, takes)
	}
	for s.Agenda.Next <= s.Clock+takes {
		step := s.Agenda.Next - s.Clock
		s.spend(k, step)
		takes -= step
		s.happen()
	}
	s.spend(k, takes)
}

// spend lets time pass on a kind of activity.
func (s *Ship) spend(k activity.Kind, seconds float64) {
	if s.Diary != nil {
		s.Diary.activity(s, k, seconds)
	}
	s.Clock += seconds
	s.Spent[k] += seconds
	s.mayBeHalted()
}

// happen lets the actor whose turn it is act, and reports whether the rig broke down.
func (s *Ship) happen() (broke bool) {
	switch s.Agenda.who {
	case TheSea:
		s.SeaChanges()
	case TheRig:
		s.breakDown()
		return true
	case TheSite:
		s.closeOrOpen()
	case ThePlace:
		s.MeetPlace()
	}
	return false
}

// WaveLimitOf is the significant wave height above which a class of work stops here.
func (s *Ship) WaveLimitOf(l activity.Limit) float64 {
	if l == activity.AnySea || s.Here == nil {
		return math.Inf(1)
	}
	if l == activity.FreeTask {
		if limit := float64(s.TaskStep().SeaLimit); limit > 0 {
			return s.waveLimit(limit)
		}
		return s.waveLimit(math.Inf(1))
	}
	return s.waveLimit(s.Here.Most[l])
}

// waveLimit is a limit with what the pipe in the water bears: above that the storm ladder begins,
// whatever the work.
func (s *Ship) waveLimit(limit float64) float64 {
	if s.InHole() {
		limit = min(limit, s.Voyage.ClearFloor)
	}
	if s.Bit > 0 {
		limit = min(limit, s.Voyage.Recover)
	}
	return limit
}

// BringsOther reports whether other work comes with a kind of activity.
func BringsOther(k activity.Kind) bool {
	switch k {
	case activity.Position, activity.Secure:
		return false // all pipe is on deck
	case activity.DrillAhead, activity.CentreBit:
		return true
	}
	return k.Of().Class == activity.Trips
}
