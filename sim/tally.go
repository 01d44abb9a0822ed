package sim

import (
	"slices"

	"coredays/model/rig"
	"coredays/model/voyage"
)

// tally counts, for each place where the ship was, how often each quantity was drawn there and how often each
// chance was taken. A hole goes on with its own luck when the ship comes back to it after another.
type tally struct {
	width  int     // counts of a place: of the quantities, then of the chances among the rates
	places []place // in the order in which the ship came to them
	times  []int32 // place after place
	at     int     // index of the place asked for last
}

// newTally has room for what most replications come to: the ports, passages, sites, and most holes once more.
func newTally(v *voyage.Voyage) tally {
	t := tally{width: len(v.Quantities) + int(rig.Rates)}
	room := 2 + 2*len(v.Sites) + 2*v.Items
	t.places, t.times = make([]place, 0, room), make([]int32, 0, room*t.width)
	return t
}

// reset forgets all.
func (t *tally) reset() { t.places, t.times, t.at = t.places[:0], t.times[:0], 0 }

// copyFrom makes the counts those of another ship.
func (t *tally) copyFrom(o *tally) {
	t.width, t.at = o.width, o.at
	t.places = append(t.places[:0], o.places...)
	t.times = append(t.times[:0], o.times...)
}

// row is where the counts of a place begin.
func (t *tally) row(p place) int {
	if t.at < len(t.places) && t.places[t.at] == p {
		return t.at * t.width
	}
	if t.at = slices.Index(t.places, p); t.at < 0 {
		t.at = len(t.places)
		t.places = append(t.places, p)
		t.times = slices.Grow(t.times, t.width)[:len(t.times)+t.width]
		clear(t.times[t.at*t.width:])
	}
	return t.at * t.width
}
