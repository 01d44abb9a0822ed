package sim

import "math"

// actor is somebody or something other than the ship that acts by itself.
type actor int

// The actors.
const (
	theSea   actor = iota // changes every hour
	theRig                // breaks down
	theSite               // can't be used for a while: ice, current, a cyclone
	thePlace              // closes and opens as the tables of known places have it
	actors
)

// agenda holds when each actor acts next. There are few actors and each has one next act, so a
// slot for each is faster than a heap. At the same instant the first actor of the list goes first.
type agenda struct {
	at   [actors]float64 // s after sailing; infinite where nothing is due
	next float64
	who  actor
}

// newAgenda has nothing due.
func newAgenda() agenda {
	a := agenda{next: math.Inf(1)}
	for i := range a.at {
		a.at[i] = math.Inf(1)
	}
	return a
}

// plan sets when an actor acts next.
func (a *agenda) plan(who actor, at float64) {
	a.at[who] = at
	a.who, a.next = 0, a.at[0]
	for i := 1; i < len(a.at); i++ {
		if a.at[i] < a.next {
			a.who, a.next = actor(i), a.at[i]
		}
	}
}
