package random

import (
	"math"

	"coredays/model/chance"
	"coredays/model/spread"
	"coredays/model/voyage"
)

// What is in hand has lasted so long already: draws that make it shorter are not possible. An operation that the ship
// does again is drawn again until it fits; what is one draw is drawn from what lies above.

// another is the purpose of draws that come after draws that did not fit.
var another = chance.KeyOf("another try")

// Try takes other runs and other chances, of the same levels above the run, for what is drawn from here on. The zeroth
// are those of the replication.
func (s *Draws) Try(n int) {
	s.tries = n
	for i := range s.drawn {
		s.drawn[i].known = false
	}
}

// again is the random stream of the try.
func (s *Draws) again(stream chance.Source) chance.Source {
	if s.tries == 0 {
		return stream
	}
	return stream.For(another).For(chance.Key(s.tries))
}

// Beyond draws a value of which it is known that it is more than the least: its run comes from the part of the normal
// distribution that lies above (truncated normal by inversion, Devroye 1986, ch. II.2, from memory). Where the run has no
// share in it, or nothing lies above, it is the least itself or what the levels make it.
func (s *Draws) Beyond(id voyage.Quantity, least float64) float64 {
	q := &s.v.Quantities[id]
	if q.Fixed || s.Median {
		return math.Max(q.Median, least)
	}
	d := &s.drawn[id]
	s.settle(d, q, s.v.Purposes[id], s.v.Above[id])
	d.known = false
	w := q.Weight[spread.Run]
	if w == 0 {
		return math.Max(q.At(d.score), least)
	}
	low, high := -far, far
	for range 60 { // values rise with the score
		if middle := (low + high) / 2; q.At(d.score+w*middle) < least {
			low = middle
		} else {
			high = middle
		}
	}
	below := spread.Probability(low)
	if low <= -far {
		below = 0
	}
	p := below + (1-below)*d.source.For(another).Uniform(0)
	return math.Max(least, q.At(d.score+w*spread.Score(math.Min(p, 1-1e-12))))
}

// far is a score beyond all that is drawn.
const far = 7.0
