package sim

import (
	"time"

	"coredays/model/activity"
	"coredays/model/state"
	"coredays/model/voyage"
	"coredays/sim/random"
	"coredays/sim/ship"
)

// Start is a state of a ship made ready for a voyage: replications go on from it.
type Start struct {
	State  *state.State
	At     float64 // s after sailing
	Known  bool    // the operation in hand was told from the log
	v      *voyage.Voyage
	ship   state.Ship // when the operation in hand began
	begins float64    // s after sailing, when that was
	past   ship.Past  // what the log has of it
	spent  [activity.Kinds]float64
	known  *random.Known
	fitted fitted // what GoOn found out of the operation in hand
	sea    *ship.SeaKnown
}

// TakeUp makes a state ready for a voyage.
func TakeUp(v *voyage.Voyage, st *state.State) *Start {
	x := &Start{State: st, v: v, At: st.At.Sub(v.Plan.Sails).Seconds()}
	s := newExpedition(v)
	s.Crew = EstimateByCrew(v)
	for k := len(st.Steps) - 1; k >= 0; k-- {
		if x.from(k); x.fits(s) {
			x.Known = true
			x.past.Trouble = x.troubleInHand()
			x.account()
			return x
		}
	}
	x.ship, x.begins, x.past = st.Now, x.At, ship.Past{}
	if n := len(st.Cores); n > 0 && st.Now.Item == st.Cores[n-1].Item && x.coring() { // a log that has many cores in one line
		if since := st.At.Sub(st.Cores[n-1].OnDeck).Seconds(); since > 0 && since < 12*3600 && !st.Cores[n-1].OnDeck.IsZero() {
			x.past.Credit, x.begins = since, x.At-since
			x.Known = true
		}
	}
	if x.past.Trouble = x.troubleInHand(); x.past.Trouble.Kind.Of().Class == activity.Repair && x.past.Trouble.Began {
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
	x.ship, x.past = steps[k].Before, ship.Past{}
	total := 0.0
	for i := k; i < len(steps); i++ {
		p := ship.PastStep{Kind: steps[i].Kind, Worked: float64(steps[i].Worked), Idle: float64(steps[i].Idle)}
		x.past.Steps = append(x.past.Steps, p)
		total += p.Worked + p.Idle
	}
	x.begins = x.At - total
	x.past.Lasts, x.past.ToGo = float64(x.State.Over), -1
	if x.State.ToGo {
		x.past.ToGo = float64(x.State.Way)
	}
}

// fits tells whether the rules of the ship, from where she was, do what the log has.
func (x *Start) fits(s *expedition) bool {
	s.beginsEvenly()
	s.takesUp(x)
	s.Past.Watched = true
	s.redoes()
	return s.Past.Over() && !s.Past.Amiss
}

// since is a moment as s after sailing.
func (x *Start) since(t time.Time) float64 { return t.Sub(x.v.Plan.Sails).Seconds() }

// takesUp puts a ship that has just begun where the start has her. What is behind her is on her books.
func (s *expedition) takesUp(x *Start) {
	s.Learns(x.known)
	s.Sea.Known = x.sea
	s.beenTo(x)
	s.broughtUp(x)
	s.doneWith(x)
	s.Spent = x.spent
	s.Gone.Assemblies, s.Gone.Pipe = x.State.Gone.Assemblies, float64(x.State.Gone.Pipe)
	s.Clock = x.begins
	s.Past = x.past
	s.standsAt(x)
}

// Later is the start with the ship as she stands, so many seconds later: what the log has in hand is no longer, but
// trouble is not over at once.
func (x *Start) Later(seconds float64) *Start {
	y := *x
	y.ship, y.past, y.fitted = x.State.Now, ship.Past{}, fitted{}
	if seconds <= 0 {
		seconds, y.past.Trouble = 0, x.past.Trouble
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
	if (c.Home || c.EndHole) && !x.past.Over() && !x.coring() {
		return x.Later(0)
	}
	return x
}

// Knows conditions the start on what was learned of scores.
func (x *Start) Knows(known *random.Known) { x.known, x.fitted = known, fitted{} }
