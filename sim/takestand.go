package sim

import (
	"math"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/state"
	"coredays/model/voyage"
	"coredays/sim/random"
	"coredays/sim/ship"
)

// standsAt puts the ship where she was when the operation in hand began.
func (s *expedition) standsAt(x *Start) {
	now := &x.ship
	s.At, s.Here, s.Item = voyage.FromPort, nil, nil
	if now.LastSite != state.None {
		s.At = voyage.SitePlace(now.LastSite)
		s.Sea.Waves, s.Sea.Course = s.Voyage.Sites[now.LastSite].Waves, s.Voyage.Sites[now.LastSite].Course
	}
	s.Towards = s.At
	s.Bit, s.BHA, s.Rotating = float64(now.Bit), now.Assembly, float64(now.Rotated)
	s.Drifted, s.TriedOut, s.LastService = max(s.Drifted, float64(now.Longest)), s.TriedOut || now.TriedOut, x.since(now.LastService)
	if now.LastService.IsZero() {
		s.LastService = s.Clock
	}
	for _, t := range now.Trips[:now.NumberOf] {
		s.LineWork += s.LineWorkOf(float64(t[0]), float64(t[1]))
	}
	if now.Site != state.None {
		s.standsAtSite(x)
	}
	s.SeaChanges()
	if s.Positioned = now.OnStation; s.Positioned {
		s.RunRig()
		if at := s.Agenda.At[ship.TheRig]; !math.IsInf(at, 1) { // what the log has in hand is not broken off
			s.Agenda.Plan(ship.TheRig, at+x.At-x.begins)
		}
	}
}

// standsAtSite puts her over a site, with what she has in hand there.
func (s *expedition) standsAtSite(x *Start) {
	now := &x.ship
	s.Here = &s.Voyage.Sites[now.Site]
	log := &s.Sites[now.Site]
	log.State = ship.UnderWay
	log.Waited -= s.Spent[activity.WaitOnWeather]
	s.Place = random.Place{Site: s.Here.Key, Hole: s.Here.Key}
	if now.Item != state.None {
		_, item := s.itemOf(x, now.Item)
		s.worksAt(now.Site, item)
		s.takesHole(x)
		s.Items[item.Number].State = ship.UnderWay
	}
	for k, t := range now.SinceOther {
		if ship.BringsOther(activity.Kind(k)) {
			s.Handled += float64(t)
		}
	}
	if now.TryOut {
		s.OtherLeft += s.Rate(rig.FirstSiteWork)
	}
	if s.BHA.Of().Bit && s.BHA != coring.NoBHA {
		s.BitLife = s.Beyond(voyage.Quantity(rig.BitLife), s.Rotating)
		if s.BitLife <= s.Rotating { // where its life has no spread
			s.BitLife = s.Rotating * holdsStill
		}
	}
	s.PlanClosing()
	s.MeetPlace()
}

// holdsStill is how many times the hours of a bit in use are taken for its life, where it outlasted what was drawn
// [judgement].
const holdsStill = 1.1

// takesHole takes up the hole or task in hand.
func (s *expedition) takesHole(x *Start) {
	now := &x.ship
	if s.Item.Hole == nil {
		s.takesTask(float64(now.TaskDone))
		return
	}
	h := &now.Hole
	s.Hole = ship.Hole{Open: h.Open, Depth: float64(h.Depth), Stage: h.Stage, Half: h.Half, Cores: h.Cores,
		Partials: h.Partials, Probes: h.Probes, Funnel: h.Funnel, Stabs: h.Stabs, Conditioned: h.Conditioned, Released: h.Released,
		HungLogging: h.Hung, Logged: h.Logged, Sweeps: h.Unswept, Filled: h.Filled, Finished: h.Finished, Lost: h.Lost}
	s.takesCasing(x)
	if s.Hole.Rule = s.ruleAt(); s.Hole.Rule <= s.Hole.Depth { // it was gone on with
		s.Hole.Rule = 0
	}
	if opened := h.Opened; opened.IsZero() {
		s.Hole.OpenedAt = x.since(x.State.Items[now.Item].Began)
	} else {
		s.Hole.OpenedAt = x.since(opened)
	}
	s.Offset = !h.Open && !now.Clear
	if n := s.Items[s.Item.Number].Attempts; n > 0 {
		s.Place.Hole = attemptKey(s.Item, n)
		s.meetGround()
	}
}

// takesTask takes up the task in hand, of which so many seconds are done: step after step, as far as they reach.
func (s *expedition) takesTask(done float64) {
	for done > 0 {
		takes := s.Draw(s.Item.Takes[s.Task.Step])
		last := s.Task.Step == len(s.Item.Takes)-1
		if last && takes <= done {
			takes = s.Beyond(s.Item.Takes[s.Task.Step], done)
		}
		if last || done < takes {
			s.Task.Left = max(1, takes-done)
			return
		}
		done -= takes
		s.Task = ship.Task{Step: s.Task.Step + 1}
	}
}
