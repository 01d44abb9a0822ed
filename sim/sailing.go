package sim

import (
	"context"
	"math"
	"time"

	"coredays/model/chance"
	"coredays/model/sea"
	"coredays/model/voyage"
	"coredays/model/workers"
	"coredays/sim/random"
	"coredays/sim/statistics"
)

// newShip readies a ship for replications of a voyage.
func newShip(v *voyage.Voyage) *ship {
	s := &ship{v: v, Draws: random.New(v)}
	var words int
	s.coverage, words = newCoverage(v)
	s.sea.series = make([]sea.Series, len(v.Courses))
	s.sites = make([]siteRecord, len(v.Sites))
	s.items = make([]itemRecord, v.Items)
	s.bits = make([]uint64, words)
	s.depths, s.slices = newDepths(v), statistics.NewSlices(v)
	return s
}

// begins puts the ship at the start of one replication, in port, ready to sail.
func (s *ship) begins(seed uint64, replication int) {
	*s = ship{v: s.v, coverage: s.coverage, crew: s.crew, unconstrained: s.unconstrained, diary: s.diary, halt: s.halt, ticks: s.ticks,
		sea: weather{series: s.sea.series}, sites: s.sites, items: s.items, Draws: s.Draws, bits: s.bits,
		depths: s.depths, slices: s.slices, forecast: forecast{issue: -1, skill: s.forecast.skill}}
	clear(s.sites)
	clear(s.items)
	clear(s.bits)
	s.depths.reset()
	if s.v.Plan.Begun {
		s.drifted, s.triedOut = math.Inf(1), true
	}
	s.Draws.Begins(chance.Replication(seed, replication))
	s.sea.firstAt = secondsIntoYear(s.v.Plan.Sails)
	s.sea.begin(s.v, s.Stream)
	s.at, s.towards = voyage.FromPort, voyage.FromPort
	s.inPort = s.Draw(s.v.InPort)
	s.agenda = newAgenda()
	s.sea.waves = s.v.Leg(voyage.FromPort, voyage.SitePlace(s.v.Plan.Order[0])).Waves
	s.seaChanges()
}

// beginsEvenly puts the ship at the start of a run in which every draw is the median, the sea is calm and nothing
// goes wrong.
func (s *ship) beginsEvenly() {
	s.begins(0, 0)
	s.Median, s.sea.calm = true, true
	s.meetSea()
	s.agenda.plan(theSea, math.Inf(1)) // it is calm for good, however long a thing takes
}

// mostSteps bounds a replication: more operations than any expedition has.
const mostSteps = 200_000

// sails carries the expedition on, from whatever state it is in, until the ship is in the last
// port.
func (s *ship) sails() {
	for range mostSteps {
		if s.home || s.clock > s.longest() {
			break
		}
		s.enforceLimits()
		s.nextItem()
		s.nextStep().do(s)
		if s.ended != goingOn {
			s.makeSafe()
		}
	}
	if s.stuck = !s.home; s.stuck {
		s.leaveSite() // its days and its waiting count as they stand
	}
}

// longest is when an expedition is given up, s. The crew's own estimates know no deadline.
func (s *ship) longest() float64 {
	if s.Median {
		return math.Inf(1)
	}
	return max(s.v.Deadline, leastDays) * statistics.MostTimes
}

// leastDays keeps a short deadline from cutting the days needed short, s.
const leastDays = 50 * 86400

// fork lets the ship that knows no deadline go her own way from here: a rule of the expedition is
// about to bind for the first time.
func (s *ship) fork() {
	if s.unconstrained == nil || s.forked || s.rewind {
		return
	}
	s.forked = true
	s.unconstrained.copyFrom(s)
	s.unconstrained.constrained, s.unconstrained.forked, s.unconstrained.unconstrained = false, false, nil
}

// secondsIntoYear is how far into its year a moment is, s.
func secondsIntoYear(t time.Time) float64 {
	t = t.UTC()
	return t.Sub(time.Date(t.Year(), 1, 1, 0, 0, 0, 0, time.UTC)).Seconds()
}

// until lets the ship's replications end with a context.
func (s *ship) until(ctx context.Context) *ship {
	s.halt = ctx.Done()
	return s
}

// lookUp is how many activities pass between two looks at the context.
const lookUp = 4096

// mayBeHalted looks at the context now and then, and drops the replication where it has ended: one may take long, and
// whoever pressed Ctrl-C waits.
func (s *ship) mayBeHalted() {
	if s.ticks++; s.ticks%lookUp != 0 {
		return
	}
	select {
	case <-s.halt: // none where nobody asked: that blocks for ever, and the default is taken
		workers.Drop()
	default:
	}
}
