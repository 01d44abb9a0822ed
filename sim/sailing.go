package sim

import (
	"context"
	"math"

	"coredays/sim/ship"
)

// beginsEvenly puts the ship at the start of a run in which every draw is the median, the sea is calm and nothing
// goes wrong.
func (s *expedition) beginsEvenly() {
	s.begins(0, 0)
	s.Median, s.Sea.Calm = true, true
	s.MeetSea()
	s.Agenda.Plan(ship.TheSea, math.Inf(1)) // it is calm for good, however long a thing takes
}

// mostSteps bounds a replication: more operations than any expedition has.
const mostSteps = 200_000

// sails carries the expedition on, from whatever state it is in, until the ship is in the last
// port.
func (s *expedition) sails() {
	for range mostSteps {
		if s.Home || s.Clock > s.Longest() {
			break
		}
		s.enforceLimits()
		s.nextItem()
		s.nextStep().do(s)
		if s.Ended != ship.GoingOn {
			s.MakeSafe()
		}
	}
	if s.Stuck = !s.Home; s.Stuck {
		s.leaveSite() // its days and its waiting count as they stand
	}
}

// fork lets the ship that knows no deadline go her own way from here: a rule of the expedition is
// about to bind for the first time.
func (s *expedition) fork() {
	if s.unconstrained == nil || s.Forked || s.Rewind {
		return
	}
	s.Forked = true
	s.unconstrained.copyFrom(s)
	s.unconstrained.Constrained, s.unconstrained.Forked, s.unconstrained.unconstrained = false, false, nil
}

// until lets the ship's replications end with a context.
func (s *expedition) until(ctx context.Context) *expedition {
	s.Halt = ctx.Done()
	return s
}
