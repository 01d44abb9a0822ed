package ship

import (
	"math"

	"coredays/model/activity"
	"coredays/model/rig"
	"coredays/model/voyage"
)

// What is in hand when the log ends has lasted so long already. An operation drawn shorter than that is not possible, so
// it is drawn again (rejection; von Neumann 1951, from memory), and a trouble is drawn from what lies beyond its time.

// Trouble is a repair or a trouble with barrel, wire or pipe that is in hand.
type Trouble struct {
	Began bool
	Kind  activity.Kind
	Since float64 // s that it has lasted
	Left  float64 // s that it still lasts by the crew's own estimate; 0 where they did not say
}

// troubleRate is the quantity that says how long a trouble lasts, where one does.
func (s *Ship) troubleRate(k activity.Kind) (of rig.Rate, known bool) {
	switch k {
	case activity.Breakdown:
		return rig.RepairTime, true
	case activity.StuckPipe:
		return rig.StuckTime, true
	case activity.SeverPipe:
		return rig.Severing, true
	case activity.FailedRetrieval, activity.BlownLiner, activity.PartedLine:
		if s.Item != nil && s.Item.Hole != nil && s.Hole.Stage < len(s.Stages()) {
			return s.Tool().Of().TroubleTime, true
		}
	}
	return 0, false
}

// EndsTrouble carries the trouble in hand on to its end, and reports whether there was one that takes time.
func (s *Ship) EndsTrouble() bool {
	x := s.Past.Trouble
	if !x.Began {
		return false
	}
	s.Past.Trouble = Trouble{}
	of, known := s.troubleRate(x.Kind)
	if !known || s.Median {
		return false
	}
	left := x.Left
	if left <= 0 {
		left = s.Beyond(voyage.Quantity(of), x.Since) - x.Since
	}
	until := s.Agenda.At[TheRig]
	s.Agenda.Plan(TheRig, math.Inf(1)) // what is stopped does not wear
	s.doUnstopped(x.Kind, left)
	s.Agenda.Plan(TheRig, until+left)
	switch x.Kind {
	case activity.StuckPipe:
		if s.Happens(rig.LostBHA) {
			s.Do(activity.SeverPipe, s.Rate(rig.Severing))
			s.losesString()
		}
	case activity.SeverPipe:
		s.losesString()
	}
	return true
}

// waitsOn goes on with a wait on weather in hand: who waits for a sea to begin again in does not begin in one that would
// merely not have stopped the work.
func (s *Ship) waitsOn(k activity.Kind) {
	most := s.WaveLimitOf(k.Of().Limit)
	if s.Ended == GoingOn && k.Of().Stop != activity.Forfeit && s.rough(most*s.RateMedian(rig.ResumeAt)) {
		s.standBy(k, most)
	}
}

// losesString ends the operation: the string was severed.
func (s *Ship) losesString() {
	if s.Ended == GoingOn {
		s.Ended = stringLost
		s.WritesOff()
	}
}
