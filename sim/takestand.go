package sim

import (
	"math"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/state"
	"coredays/model/voyage"
	"coredays/sim/random"
)

// standsAt puts the ship where she was when the operation in hand began.
func (s *ship) standsAt(x *Start) {
	now := &x.ship
	s.at, s.here, s.item = voyage.FromPort, nil, nil
	if now.LastSite != state.None {
		s.at = voyage.SitePlace(now.LastSite)
		s.sea.waves, s.sea.course = s.v.Sites[now.LastSite].Waves, s.v.Sites[now.LastSite].Course
	}
	s.towards = s.at
	s.bit, s.bha, s.rotating = float64(now.Bit), now.Assembly, float64(now.Rotated)
	s.drifted, s.triedOut, s.lastService = max(s.drifted, float64(now.Longest)), s.triedOut || now.TriedOut, x.since(now.LastService)
	if now.LastService.IsZero() {
		s.lastService = s.clock
	}
	for _, t := range now.Trips[:now.NumberOf] {
		s.lineWork += s.lineWorkOf(float64(t[0]), float64(t[1]))
	}
	if now.Site != state.None {
		s.standsAtSite(x)
	}
	s.seaChanges()
	if s.positioned = now.OnStation; s.positioned {
		s.runRig()
		if at := s.agenda.at[theRig]; !math.IsInf(at, 1) { // what the log has in hand is not broken off
			s.agenda.plan(theRig, at+x.At-x.begins)
		}
	}
}

// standsAtSite puts her over a site, with what she has in hand there.
func (s *ship) standsAtSite(x *Start) {
	now := &x.ship
	s.here = &s.v.Sites[now.Site]
	log := &s.sites[now.Site]
	log.state = underWay
	log.waited -= s.spent[activity.WaitOnWeather]
	s.Place = random.Place{Site: s.here.Key, Hole: s.here.Key}
	if now.Item != state.None {
		_, item := s.itemOf(x, now.Item)
		s.worksAt(now.Site, item)
		s.takesHole(x)
		s.items[item.Number].state = underWay
	}
	for k, t := range now.SinceOther {
		if bringsOther(activity.Kind(k)) {
			s.handled += float64(t)
		}
	}
	if now.TryOut {
		s.otherLeft += s.Rate(rig.FirstSiteWork)
	}
	if s.bha.Of().Bit && s.bha != coring.NoBHA {
		s.bitLife = s.Beyond(voyage.Quantity(rig.BitLife), s.rotating)
		if s.bitLife <= s.rotating { // where its life has no spread
			s.bitLife = s.rotating * holdsStill
		}
	}
	s.planClosing()
	s.meetPlace()
}

// holdsStill is how many times the hours of a bit in use are taken for its life, where it outlasted what was drawn
// [judgement].
const holdsStill = 1.1

// takesHole takes up the hole or task in hand.
func (s *ship) takesHole(x *Start) {
	now := &x.ship
	if s.item.Hole == nil {
		s.takesTask(float64(now.TaskDone))
		return
	}
	h := &now.Hole
	s.hole = hole{open: h.Open, depth: float64(h.Depth), stage: h.Stage, half: h.Half, cores: h.Cores,
		partials: h.Partials, probes: h.Probes, funnel: h.Funnel, stabs: h.Stabs, conditioned: h.Conditioned, released: h.Released,
		hungLogging: h.Hung, logged: h.Logged, sweeps: h.Unswept, filled: h.Filled, finished: h.Finished, lost: h.Lost}
	s.takesCasing(x)
	if s.hole.rule = s.ruleAt(); s.hole.rule <= s.hole.depth { // it was gone on with
		s.hole.rule = 0
	}
	if opened := h.Opened; opened.IsZero() {
		s.hole.openedAt = x.since(x.State.Items[now.Item].Began)
	} else {
		s.hole.openedAt = x.since(opened)
	}
	s.offset = !h.Open && !now.Clear
	if n := s.items[s.item.Number].attempts; n > 0 {
		s.Place.Hole = attemptKey(s.item, n)
		s.meetGround()
	}
}

// takesTask takes up the task in hand, of which so many seconds are done: step after step, as far as they reach.
func (s *ship) takesTask(done float64) {
	for done > 0 {
		takes := s.Draw(s.item.Takes[s.task.step])
		last := s.task.step == len(s.item.Takes)-1
		if last && takes <= done {
			takes = s.Beyond(s.item.Takes[s.task.step], done)
		}
		if last || done < takes {
			s.task.left = max(1, takes-done)
			return
		}
		done -= takes
		s.task = task{step: s.task.step + 1}
	}
}
