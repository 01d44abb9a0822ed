package sim

import (
	"math"
	"time"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/model/state"
	"coredays/model/voyage"
	"coredays/sim/random"
)

// Start is a state of a ship made ready for a voyage: replications go on from it.
type Start struct {
	State  *state.State
	At     float64 // s after sailing
	Known  bool    // the operation in hand was told from the log
	v      *voyage.Voyage
	ship   state.Ship // when the operation in hand began
	begins float64    // s after sailing, when that was
	past   past       // what the log has of it
	spent  [activity.Kinds]float64
	known  *random.Known
	sea    *seaKnown
}

// TakeUp makes a state ready for a voyage.
func TakeUp(v *voyage.Voyage, st *state.State) *Start {
	x := &Start{State: st, v: v, At: st.At.Sub(v.Plan.Sails).Seconds()}
	s := newShip(v)
	s.crew = EstimateByCrew(v)
	for k := len(st.Steps) - 1; k >= 0; k-- {
		if x.from(k); x.fits(s) {
			x.Known = true
			x.account()
			return x
		}
	}
	x.ship, x.begins, x.past = st.Now, x.At, past{}
	if n := len(st.Cores); n > 0 && st.Now.Item == st.Cores[n-1].Item && x.coring() { // a log that has many cores in one line
		if since := st.At.Sub(st.Cores[n-1].OnDeck).Seconds(); since > 0 && since < 12*3600 && !st.Cores[n-1].OnDeck.IsZero() {
			x.past.credit, x.begins = since, x.At-since
			x.Known = true
		}
	}
	x.account()
	return x
}

// coring tells whether the last thing that the log has is part of a core's cycle.
func (x *Start) coring() bool {
	n := len(x.State.Steps)
	return n > 0 && x.State.Steps[n-1].Kind.Of().Class == activity.Coring && x.State.Steps[n-1].Kind != activity.DrillAhead
}

// from takes the steps from one on for what is done of the operation in hand.
func (x *Start) from(k int) {
	steps := x.State.Steps
	x.ship, x.past = steps[k].Before, past{}
	total := 0.0
	for i := k; i < len(steps); i++ {
		p := pastStep{steps[i].Kind, float64(steps[i].Worked), float64(steps[i].Idle)}
		x.past.steps = append(x.past.steps, p)
		total += p.worked + p.idle
	}
	x.begins = x.At - total
	x.past.lasts = float64(x.State.Over)
}

// fits tells whether the rules of the ship, from where she was, do what the log has.
func (x *Start) fits(s *ship) bool {
	s.beginsEvenly()
	s.takesUp(x)
	s.past.watched = true
	s.redoes()
	return s.past.over() && !s.past.amiss
}

// redoes does the operation in hand again, after those that take no time, such as the end of a hole.
func (s *ship) redoes() {
	const timeless = 4
	for range timeless {
		before := s.clock
		s.enforceLimits()
		s.nextItem()
		s.stepInHand().do(s)
		if s.clock > before || s.past.over() || s.ended != goingOn {
			return
		}
	}
}

// account takes the operation in hand out of the time spent: it is spent again.
func (x *Start) account() {
	for k, t := range x.State.Spent {
		x.spent[k] = float64(t)
	}
	for _, p := range x.past.steps {
		x.spent[p.kind] = max(0, x.spent[p.kind]-p.worked)
		x.spent[activity.WaitOnWeather] = max(0, x.spent[activity.WaitOnWeather]-p.idle)
	}
	if x.past.credit > 0 {
		x.spent[activity.CutCore] = max(0, x.spent[activity.CutCore]-x.past.credit)
	}
}

// since is a moment as s after sailing.
func (x *Start) since(t time.Time) float64 { return t.Sub(x.v.Plan.Sails).Seconds() }

// takesUp puts a ship that has just begun where the start has her. What is behind her is on her books.
func (s *ship) takesUp(x *Start) {
	s.Learns(x.known)
	s.sea.known = x.sea
	s.beenTo(x)
	s.broughtUp(x)
	s.doneWith(x)
	s.spent = x.spent
	s.clock = x.begins
	s.past = x.past
	s.standsAt(x)
}

// beenTo fills in the sites.
func (s *ship) beenTo(x *Start) {
	for i := range x.State.Sites {
		from, to := &x.State.Sites[i], &s.sites[i]
		to.floorKnown = from.FloorKnown
		switch from.State {
		case state.ToCome:
			continue
		case state.InHand:
			to.state = underWay
		case state.Done:
			to.state = done
			to.left = x.since(from.Left)
		case state.Dropped:
			to.state = dropped
			continue
		}
		to.arrived, to.waited = x.since(from.Arrived), float64(from.Waited)
	}
}

// itemOf is an item by its number among all.
func (s *ship) itemOf(x *Start, number int) (site int, item *voyage.Item) {
	i := &x.State.Items[number]
	return i.Site, &s.v.Sites[i.Site].Items[i.Number]
}

// broughtUp fills in the cores.
func (s *ship) broughtUp(x *Start) {
	last := state.None
	for i := range x.State.Cores {
		c := &x.State.Cores[i]
		if c.Cored <= 0 || x.since(c.OnDeck) > x.begins+1 {
			continue // the operation in hand brings it up
		}
		if c.Item != last {
			s.worksAt(s.itemOf(x, c.Item))
			last = c.Item
		}
		if s.clock = x.At; !c.OnDeck.IsZero() {
			s.clock = x.since(c.OnDeck)
		}
		s.hole.cores = c.Number - 1
		s.recordCore(c.Tool, float64(c.Top), float64(c.Cored), float64(c.Recovered/c.Cored))
	}
}

// worksAt puts an item of a site in hand.
func (s *ship) worksAt(site int, item *voyage.Item) {
	s.at, s.here, s.item = voyage.SitePlace(site), &s.v.Sites[site], item
	s.Place = random.Place{Site: s.here.Key, Hole: item.Key}
	if item.Hole != nil {
		s.meetGround()
	}
}

// doneWith fills in holes and tasks.
func (s *ship) doneWith(x *Start) {
	for n := range x.State.Items {
		i, log := &x.State.Items[n], &s.items[n]
		switch i.State {
		case state.ToCome:
			continue
		case state.Dropped:
			log.state = dropped
			continue
		}
		log.state = underWay
		log.began = max(1, x.since(i.Began))
		log.depth, log.refused = float64(i.Depth), float64(i.Refused)
		log.holes, log.attempts = i.Spudded, max(0, i.Spudded-1)
		if i.State == state.Done {
			log.state, log.incomplete = done, i.Incomplete
			log.took = x.since(i.Ended) - x.since(i.Began)
			_, s.item = s.itemOf(x, n)
			log.covered = s.covered(i.Site)
			s.learn(log)
			s.lastItem = 0
		}
	}
	s.item, s.here = nil, nil
}

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
		s.bitLife = s.Rate(rig.BitLife)
		if s.bitLife <= s.rotating { // it holds still
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
	s.hole = hole{open: h.Open, depth: float64(h.Depth), aim: float64(s.item.Hole.DrillAheadTo), stage: h.Stage, half: h.Half, cores: h.Cores,
		partials: h.Partials, probes: h.Probes, funnel: h.Funnel, stabs: h.Stabs, conditioned: h.Conditioned, released: h.Released,
		hungLogging: h.Hung, logged: h.Logged, sweeps: h.Unswept, filled: h.Filled, finished: h.Finished, lost: h.Lost}
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
		if last := s.task.step == len(s.item.Takes)-1; last || done < takes {
			s.task.left = max(1, takes-done)
			return
		}
		done -= takes
		s.task = task{step: s.task.step + 1}
	}
}

// betweenOperations is what is done about the rig between operations.
var betweenOperations = map[string]activity.Kind{"do other work": activity.OtherWork, "service the rig": activity.RigService, "slip and cut": activity.SlipAndCut}

// stepInHand is the rule that applies. In the midst of an operation the rig is not serviced: what is due comes after it.
func (s *ship) stepInHand() *step {
	first := activity.Kinds
	if s.past.at < len(s.past.steps) {
		first = s.past.steps[s.past.at].kind
	}
	for i := range steps {
		if does, rig := betweenOperations[steps[i].name]; rig {
			if first == does && s.here != nil {
				return &steps[i] // it was, whatever was due
			}
			continue
		}
		if steps[i].when(s) {
			return &steps[i]
		}
	}
	return s.nextStep()
}

// goesOn does the operation in hand to its end, and sails on.
func (s *ship) goesOn() {
	if !s.past.over() {
		s.redoes()
		s.passesAll()
		if s.ended != goingOn {
			s.makeSafe()
		}
	}
	s.sails()
}

// Later is the start with the ship as she stands, so many seconds later: what the log has in hand is no longer.
func (x *Start) Later(seconds float64) *Start {
	if seconds <= 0 {
		return x
	}
	y := *x
	y.ship, y.past = x.State.Now, past{}
	y.At += seconds
	y.begins = y.At
	return &y
}

// KnowSea conditions the sea on the waves now, which may be not a number, and on a forecast.
func (x *Start) KnowSea(waves float64, forecast []SeaPoint) {
	s := newShip(x.v)
	s.begins(0, 0)
	s.takesUp(x)
	x.knowSea(waves, forecast, s.sea.waves, func(step int) int { return s.sea.series[s.sea.course].Day(step + s.sea.ahead) })
}
