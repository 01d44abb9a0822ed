package sim

import (
	"math"
	"time"

	"coredays/model/activity"
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
	fitted fitted // what GoOn found out of the operation in hand
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
			x.past.trouble = x.troubleInHand()
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
	if x.past.trouble = x.troubleInHand(); x.past.trouble.kind.Of().Class == activity.Repair && x.past.trouble.began {
		x.Known = true
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
	x.past.lasts, x.past.toGo = float64(x.State.Over), -1
	if x.State.ToGo {
		x.past.toGo = float64(x.State.Way)
	}
}

// fits tells whether the rules of the ship, from where she was, do what the log has.
func (x *Start) fits(s *ship) bool {
	s.beginsEvenly()
	s.takesUp(x)
	s.past.watched = true
	s.redoes()
	return s.past.over() && !s.past.amiss
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

// Later is the start with the ship as she stands, so many seconds later: what the log has in hand is no longer, but
// trouble is not over at once.
func (x *Start) Later(seconds float64) *Start {
	y := *x
	y.ship, y.past, y.fitted = x.State.Now, past{}, fitted{}
	if seconds <= 0 {
		seconds, y.past.trouble = 0, x.past.trouble
	}
	y.At += seconds
	y.begins = y.At
	for k, t := range x.State.Spent {
		y.spent[k] = float64(t)
	}
	return &y
}

// choosing is the start for a choice. Who stops the hole or goes home leaves off what is in hand, but a core is brought up first.
func (x *Start) choosing(c Choice) *Start {
	if (c.Home || c.EndHole) && !x.past.over() && !x.coring() {
		return x.Later(0)
	}
	return x
}

// Knows conditions the start on what was learned of scores.
func (x *Start) Knows(known *random.Known) { x.known, x.fitted = known, fitted{} }

// waitsFor is the wave height for which the ship waits by the log; 0 where she does not, or where it is not known for what.
func (x *Start) waitsFor(s *ship) float64 {
	n := len(x.State.Steps)
	if x.State.Doing != activity.WaitOnWeather || n == 0 {
		return 0
	}
	most := s.waveLimitOf(x.State.Steps[n-1].Kind.Of().Limit)
	if math.IsInf(most, 1) {
		return 0
	}
	return most * s.rateMedian(rig.ResumeAt)
}

// KnowSea conditions the sea on the waves now, which may be not a number, and on a forecast.
func (x *Start) KnowSea(waves float64, forecast []SeaPoint) {
	x.fitted = fitted{}
	s := newShip(x.v)
	s.begins(0, 0)
	s.takesUp(x)
	x.knowSea(waves, x.waitsFor(s), forecast, s.sea.waves, func(step int) int { return s.sea.series[s.sea.course].Day(step + s.sea.ahead) })
}
