package ship

import "math"

// actor is somebody or something other than the ship that acts by itself.
type actor int

// The actors.
const (
	TheSea   actor = iota // changes every hour
	TheRig                // breaks down
	TheSite               // can't be used for a while: ice, current, a cyclone
	ThePlace              // closes and opens as the tables of known places have it
	actors
)

// agenda holds when each actor acts next. There are few actors and each has one next act, so a
// slot for each is faster than a heap. At the same instant the first actor of the list goes first.
type agenda struct {
	At   [actors]float64 // s after sailing; infinite where nothing is due
	Next float64
	who  actor
}

// newAgenda has nothing due.
func newAgenda() agenda {
	a := agenda{Next: math.Inf(1)}
	for i := range a.At {
		a.At[i] = math.Inf(1)
	}
	return a
}

// Plan sets when an actor acts next.
func (a *agenda) Plan(who actor, at float64) {
	a.At[who] = at
	a.who, a.Next = 0, a.At[0]
	for i := 1; i < len(a.At); i++ {
		if a.At[i] < a.Next {
			a.who, a.Next = actor(i), a.At[i]
		}
	}
}
