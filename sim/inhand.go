package sim

import (
	"math"
	"slices"

	"coredays/model/activity"
	"coredays/model/rig"
	"coredays/model/voyage"
)

// What is in hand when the log ends has lasted so long already. An operation drawn shorter than that is not possible, so
// it is drawn again (rejection; von Neumann 1951, from memory), and a trouble is drawn from what lies beyond its time.

// mostTries is how often an operation is drawn again before it is taken to end now: one that lasts longer than 39 in 40 do
// is found in 19 of 20 replications.
const mostTries = 120

// fitting is the first try in which the operation in hand is not shorter than it has lasted by now.
func (s *ship) fitting(x *Start, seed uint64, n int) int {
	if len(x.past.steps) == 0 && x.past.credit <= 0 {
		return 0
	}
	diary := s.diary
	defer func() { s.diary = diary }()
	s.diary = nil
	for try := range mostTries {
		s.resumes(x, Choice{}, seed, n, try)
		s.past.trouble = trouble{}
		s.redoes()
		if !s.past.short && s.past.credit <= 0 {
			return try
		}
	}
	return 0
}

// fitted are the tries that fit, of the replications of a run: they are the same whatever is chosen.
type fitted struct {
	run   Run
	tries []int
}

const notTried = -1

// of are the tries of a run, those that were found before among them.
func (f *fitted) of(run Run, n int) []int {
	if f.run.Seed != run.Seed || f.run.First != run.First || len(f.tries) < n {
		f.run, f.tries = run, slices.Repeat([]int{notTried}, n)
	}
	return f.tries
}

// trouble is a repair or a trouble with barrel, wire or pipe that is in hand.
type trouble struct {
	began bool
	kind  activity.Kind
	since float64 // s that it has lasted
	left  float64 // s that it still lasts by the crew's own estimate; 0 where they did not say
}

// troubleInHand is the trouble or the wait that the log has last.
func (x *Start) troubleInHand() trouble {
	st := x.State
	switch c := st.Doing.Of().Class; {
	case c == activity.Repair, st.Doing == activity.WaitOnWeather:
		return trouble{true, st.Doing, float64(st.Held), float64(st.Over)}
	}
	return trouble{}
}

// troubleRate is the quantity that says how long a trouble lasts, where one does.
func (s *ship) troubleRate(k activity.Kind) (of rig.Rate, known bool) {
	switch k {
	case activity.Breakdown:
		return rig.RepairTime, true
	case activity.StuckPipe:
		return rig.StuckTime, true
	case activity.SeverPipe:
		return rig.Severing, true
	case activity.FailedRetrieval, activity.BlownLiner, activity.PartedLine:
		if s.item != nil && s.item.Hole != nil && s.hole.stage < len(s.stages()) {
			return s.tool().Of().TroubleTime, true
		}
	}
	return 0, false
}

// endsTrouble carries the trouble in hand on to its end, and reports whether there was one that takes time.
func (s *ship) endsTrouble() bool {
	x := s.past.trouble
	if !x.began {
		return false
	}
	s.past.trouble = trouble{}
	of, known := s.troubleRate(x.kind)
	if !known || s.Median {
		return false
	}
	left := x.left
	if left <= 0 {
		left = s.Beyond(voyage.Quantity(of), x.since) - x.since
	}
	until := s.agenda.at[theRig]
	s.agenda.plan(theRig, math.Inf(1)) // what is stopped does not wear
	s.doUnstopped(x.kind, left)
	s.agenda.plan(theRig, until+left)
	switch x.kind {
	case activity.StuckPipe:
		if s.Happens(rig.LostBHA) {
			s.do(activity.SeverPipe, s.Rate(rig.Severing))
			s.losesString()
		}
	case activity.SeverPipe:
		s.losesString()
	}
	return true
}

// waitsOn goes on with a wait on weather in hand: who waits for a sea to begin again in does not begin in one that would
// merely not have stopped the work.
func (s *ship) waitsOn(k activity.Kind) {
	most := s.waveLimitOf(k.Of().Limit)
	if s.ended == goingOn && k.Of().Stop != activity.Forfeit && s.rough(most*s.rateMedian(rig.ResumeAt)) {
		s.standBy(k, most)
	}
}

// losesString ends the operation: the string was severed.
func (s *ship) losesString() {
	if s.ended == goingOn {
		s.ended = stringLost
		s.writesOff()
	}
}
