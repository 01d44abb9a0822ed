package sim

import (
	"context"
	"math"

	"coredays/model/activity"
	"coredays/model/workers"
	"coredays/sim/ship"
	"coredays/sim/statistics"
)

// Choice is something that the people on the ship may decide now. The zero value is to go on as planned.
type Choice struct {
	Home      bool  // pull out now and sail to port
	EndHole   bool  // stop the hole in hand and leave it
	NoLogging bool  // run no more tool strings in the hole in hand
	Drop      []int // items, by their numbers, that are not begun
}

// Horizons are how far ahead the next days are told, s.
var Horizons = [...]float64{24 * 3600, 48 * 3600, 72 * 3600}

// Shifts is how many shifts of twelve hours are told of one by one.
const Shifts = 6

// Onward is what came of a start, replication by replication.
type Onward struct {
	*statistics.Results
	Metres   [len(Horizons)][]float64 // recovered by then, m
	Deepened [len(Horizons)][]float64 // cored by then, m
	Cores    [Shifts][]float64        // cores on deck in each shift from now on
	Finished [][]float64              // of each item, when it was done, s after sailing; not a number where it never was
	UnderWay []float64                // when the ship left the site where she is, s after sailing; not a number at sea
	Secured  []float64                // s of securing for sea from now on
}

// GoOn sails on from a start again and again, after a choice. Replications of the same numbers meet the same random
// numbers whatever is chosen.
func GoOn(ctx context.Context, x *Start, choice Choice, run Run) *Onward {
	x = x.choosing(choice)
	r := statistics.NewResults(x.v, run.Seed, run.First)
	r.Workers = run.Workers
	n := max(1, run.Replications)
	r.Reserve(n)
	r.Grow(n)
	o := &Onward{Results: r, UnderWay: make([]float64, n), Secured: make([]float64, n)}
	for i := range Horizons {
		o.Metres[i], o.Deepened[i] = make([]float64, n), make([]float64, n)
	}
	for i := range Shifts {
		o.Cores[i] = make([]float64, n)
	}
	for range x.v.Items {
		o.Finished = append(o.Finished, make([]float64, n))
	}
	crew := EstimateByCrew(x.v)
	tries := x.fitted.of(run, n)
	workers.Share(ctx, run.Workers, 0, n, func() func(int) {
		bound := newExpedition(x.v).until(ctx)
		bound.Crew, bound.unconstrained = crew, newExpedition(x.v).until(ctx)
		cores := &ship.CoreLog{}
		return func(i int) {
			cores.Cores = cores.Cores[:0]
			free := bound.goesOnTwice(x, choice, cores, run.Seed, r.First+i, &tries[i])
			writeRow(r.Layout, r.Row(r.Unconstrained, i), free)
			writeRow(r.Layout, r.Row(r.Constrained, i), bound)
			r.Done[i] = true
			o.note(x, bound, cores, i)
		}
	})
	r.Stopped = ctx.Err() != nil
	return o
}

// note keeps what came of a replication.
func (o *Onward) note(x *Start, s *expedition, cores *ship.CoreLog, n int) {
	for i := range cores.Cores {
		c := &cores.Cores[i]
		after := c.OnDeck - x.At
		if after <= 0 {
			continue
		}
		for h, until := range Horizons {
			if after <= until {
				o.Metres[h][n] += c.Recovered
				o.Deepened[h][n] += c.Cored
			}
		}
		if shift := int(after / (12 * 3600)); shift < Shifts {
			o.Cores[shift][n]++
		}
	}
	for i := range s.Items {
		if log := &s.Items[i]; log.State == ship.Done && !log.Incomplete {
			o.Finished[i][n] = log.Began + log.Took - log.Leaving
		} else {
			o.Finished[i][n] = math.NaN()
		}
	}
	o.UnderWay[n] = math.NaN()
	if at := x.State.Now.Site; at >= 0 {
		o.UnderWay[n] = s.Sites[at].Left
	}
	o.Secured[n] = s.Spent[activity.Secure] - x.spent[activity.Secure]
}

// choose lets a choice count, once what is in hand is done.
func (s *expedition) choose() {
	c := s.choice
	for _, n := range c.Drop {
		if s.Items[n].State == ship.Ahead {
			s.Items[n].State = ship.Dropped
		}
	}
	if s.Item != nil && s.Item.Hole != nil {
		log := &s.Items[s.Item.Number]
		if c.NoLogging && s.Hole.Logged < len(s.Planned().Logging) {
			s.Hole.Logged, log.Incomplete = len(s.Planned().Logging), true
		}
		if (c.EndHole || c.Home) && s.WorkLeft() {
			log.Incomplete, s.Hole.Finished, s.Hole.Lost = true, true, false
		}
	}
	if c.Home {
		s.TimeUp = true
		if s.Item != nil && s.Item.Task != nil {
			s.finishItem(true)
		}
		for i := range s.Items {
			if s.Items[i].State == ship.Ahead {
				s.Items[i].State = ship.Dropped
			}
		}
		for i := range s.Sites {
			if s.Sites[i].State == ship.Ahead {
				s.Sites[i].State = ship.Dropped
			}
		}
	}
}

// goesOnTwice does one replication from a start, as sailsTwice does from port. try is that of the operation in hand, or
// notTried, and is found out then.
func (s *expedition) goesOnTwice(x *Start, choice Choice, cores *ship.CoreLog, seed uint64, n int, try *int) (free *expedition) {
	if *try == notTried {
		*try = s.fitting(x, seed, n)
	}
	s.resumes(x, choice, seed, n, *try)
	s.Constrained, s.Cores = true, cores
	s.goesOn()
	free = s.unconstrained
	switch {
	case s.Rewind && !s.Forked:
		free.resumes(x, choice, seed, n, *try)
		free.goesOn()
	case s.Forked:
		free.Cores = nil
		free.sails()
	default:
		return s
	}
	return free
}

// resumes puts the ship at the start of a replication, the operation in hand drawn the try-th time.
func (s *expedition) resumes(x *Start, choice Choice, seed uint64, n, try int) {
	s.begins(seed, n)
	s.takesUp(x)
	if try > 0 {
		s.Try(try)
	}
	s.choice = choice
}
