package sim

import (
	"slices"

	"coredays/model/activity"
	"coredays/sim/ship"
)

// mostTries is how often an operation is drawn again before it is taken to end now: one that lasts longer than 39 in 40 do
// is found in 19 of 20 replications.
const mostTries = 120

// fitting is the first try in which the operation in hand is not shorter than it has lasted by now.
func (s *expedition) fitting(x *Start, seed uint64, n int) int {
	if len(x.past.Steps) == 0 && x.past.Credit <= 0 {
		return 0
	}
	diary := s.Diary
	defer func() { s.Diary = diary }()
	s.Diary = nil
	for try := range mostTries {
		s.resumes(x, Choice{}, seed, n, try)
		s.Past.Trouble = ship.Trouble{}
		s.redoes()
		if !s.Past.Short && s.Past.Credit <= 0 {
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

// troubleInHand is the trouble or the wait that the log has last.
func (x *Start) troubleInHand() ship.Trouble {
	st := x.State
	switch c := st.Doing.Of().Class; {
	case c == activity.Repair, st.Doing == activity.WaitOnWeather:
		return ship.Trouble{Began: true, Kind: st.Doing, Since: float64(st.Held), Left: float64(st.Over)}
	}
	return ship.Trouble{}
}

// redoes does the operation in hand again, after those that take no time, such as the end of a hole.
func (s *expedition) redoes() {
	const timeless = 4
	for range timeless {
		before := s.Clock
		s.enforceLimits()
		s.nextItem()
		s.stepInHand().do(s)
		if s.Clock > before || s.Past.Over() || s.Ended != ship.GoingOn {
			return
		}
	}
}

// betweenOperations is what is done about the rig between operations.
var betweenOperations = map[string]activity.Kind{"do other work": activity.OtherWork, "service the rig": activity.RigService, "slip and cut": activity.SlipAndCut}

// stepInHand is the rule that applies. In the midst of an operation the rig is not serviced: what is due comes after it.
func (s *expedition) stepInHand() *step {
	first := activity.Kinds
	if s.Past.At < len(s.Past.Steps) {
		first = s.Past.Steps[s.Past.At].Kind
	}
	for _, part := range s.parts() {
		for i := range part {
			if does, rig := betweenOperations[part[i].name]; rig {
				if first == does && s.Here != nil {
					return &part[i] // it was, whatever was due
				}
				continue
			}
			if part[i].when(s) {
				return &part[i]
			}
		}
	}
	return s.nextStep()
}

// goesOn does the operation in hand to its end, and sails on.
func (s *expedition) goesOn() {
	if !s.Past.Over() {
		s.redoes()
		s.PassesAll()
		s.Try(0)
	}
	s.EndsTrouble()
	if s.Ended != ship.GoingOn {
		s.MakeSafe()
	}
	s.choose()
	if s.Forked { // in what was in hand
		s.unconstrained.choose()
	}
	s.sails()
}
