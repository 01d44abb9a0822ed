package random

import (
	"math"
	"slices"

	"coredays/model/chance"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/voyage"
)

// Draws gives the values of the quantities of a voyage in one replication, at the place where the ship is.
type Draws struct {
	v      *voyage.Voyage
	Stream chance.Source // of the replication
	Place  Place
	Median bool // every draw is the median, and no trouble happens
	drawn  []drawn
	tally  tally
	Uses   *uses     // nil where nobody asks what is drawn where
	known  *Known    // what was learned of scores; nil for nothing
	scores []float64 // of what is known, in this replication
	tries  int       // of the operation in hand, before these draws
}

func New(v *voyage.Voyage) Draws {
	return Draws{v: v, drawn: make([]drawn, len(v.Quantities)), tally: newTally(v)}
}

// Begins forgets what was drawn and takes up a replication.
func (s *Draws) Begins(stream chance.Source) {
	*s = Draws{v: s.v, Stream: stream, drawn: s.drawn, tally: s.tally}
	clear(s.drawn)
	s.tally.reset()
}

// CopyFrom makes the draws those of another ship, which go their own way from here.
func (s *Draws) CopyFrom(o *Draws) {
	drawn, tally := s.drawn, s.tally
	*s = *o
	s.drawn, s.tally = append(drawn[:0], o.drawn...), tally
	s.tally.copyFrom(&o.tally)
}

// Place keys the random stream of where the ship works: a site, and a hole of it.
type Place struct {
	Site, Hole chance.Key
}

// drawn is what is known of a quantity at the present place.
type drawn struct {
	place   Place
	known   bool
	tallied int     // where its runs here are counted
	score   float64 // of the levels above the run
	last    float64 // score of the last run
	before  float64 // score of the run before the first that is drawn
	follows bool    // that is known
	source  chance.Source
}

// Keys of the factors that are not of one quantity at one place.
var (
	CommonFactor = chance.KeyOf("common to the expedition")
	everywhere   = chance.KeyOf("expedition")
	wholeSite    = chance.KeyOf("site") // apart from the hole, whose key is the site's on arrival
	happening    = chance.KeyOf("whether it happens")
)

// Draw is the value of a quantity for the next run at the present place.
func (s *Draws) Draw(id voyage.Quantity) float64 {
	q := &s.v.Quantities[id]
	if q.Fixed || s.Median {
		return q.Median
	}
	d := &s.drawn[id]
	if !d.known || d.place != s.Place {
		s.settle(d, q, s.v.Purposes[id], s.v.Above[id])
		d.tallied = s.tally.row(s.Place) + int(id)
		s.takeUp(d, q)
	}
	score := d.score
	if w := q.Weight[spread.Run]; w > 0 {
		score += w * s.run(d, q)
	}
	if s.Uses != nil {
		s.Uses.note(id, d.place, int(s.tally.times[d.tallied]))
	}
	return q.At(score)
}

// settle works out the score of the levels above the run, which may be those of other quantities too.
func (s *Draws) settle(d *drawn, q *spread.Drawn, purpose, above chance.Key) {
	*d = drawn{place: s.Place, known: true, source: s.again(s.Stream.For(purpose)).For(s.Place.Hole)}
	if q.Persistence != 0 {
		d.before, d.follows = s.lastRun(purpose)
	}
	stream := s.Stream.For(above)
	if w := q.Weight[spread.Expedition]; w > 0 {
		own := stream.For(everywhere).Normal(0)
		if c := q.Common; c != 0 {
			own = c*s.level(CommonFactor, spread.Expedition, 0, s.Stream.For(CommonFactor).Normal(0)) + math.Sqrt(1-c*c)*own
		}
		d.score += w * s.level(above, spread.Expedition, 0, own)
	}
	if w := q.Weight[spread.Site]; w > 0 {
		d.score += w * s.level(above, spread.Site, s.Place.Site, stream.For(s.Place.Site).For(wholeSite).Normal(0))
	}
	if w := q.Weight[spread.Hole]; w > 0 {
		d.score += w * s.level(above, spread.Hole, s.Place.Hole, stream.For(s.Place.Hole).Normal(0))
	}
}

// run is the score of the next run.
func (s *Draws) run(d *drawn, q *spread.Drawn) float64 {
	s.tally.times[d.tallied]++
	return d.next(q, s.tally.times[d.tallied])
}

// next is the score of the n-th run here, tied to the last one by the quantity's persistence.
func (d *drawn) next(q *spread.Drawn, n int32) float64 {
	score := d.source.Normal(int(n))
	if n == 1 {
		d.last = d.before
	}
	if p := q.Persistence; p != 0 && (n > 1 || d.follows) {
		score = p*d.last + math.Sqrt(1-p*p)*score
	}
	d.last = score
	return score
}

// takeUp finds the last run again where the ship comes back to a place.
func (s *Draws) takeUp(d *drawn, q *spread.Drawn) {
	if q.Persistence == 0 {
		return
	}
	for n := int32(1); n <= s.tally.times[d.tallied]; n++ {
		d.next(q, n)
	}
}

// OfSite draws what happens to the site or to the ship on it, whichever hole is in hand.
func (s *Draws) OfSite(id voyage.Quantity) float64 {
	hole := s.Place.Hole
	s.Place.Hole = s.Place.Site
	value := s.Draw(id)
	s.Place.Hole = hole
	return value
}

// Rate draws one of the ship's rates.
func (s *Draws) Rate(r rig.Rate) float64 { return s.Draw(voyage.Quantity(r)) }

// Happens draws whether something happens whose chance is one of the ship's rates.
func (s *Draws) Happens(r rig.Rate) bool { return s.HappensMore(r, 1) }

// HappensMore draws whether something happens whose chance is so many times one of the ship's rates.
func (s *Draws) HappensMore(r rig.Rate, times float64) bool {
	if s.Median {
		return false
	}
	chance := s.Rate(r) * times
	if chance <= 0 {
		return false
	}
	taken := &s.tally.times[s.tally.row(s.Place)+len(s.drawn)+int(r)]
	*taken++
	return s.again(s.Stream.For(s.v.Purposes[r])).For(happening).For(s.Place.Hole).Uniform(int(*taken)) < chance
}

// tally counts, for each place where the ship was, how often each quantity was drawn there and how often each
// chance was taken. A hole goes on with its own random stream when the ship comes back to it after another.
type tally struct {
	width  int     // counts of a place: of the quantities, then of the chances among the rates
	places []Place // in the order in which the ship came to them
	times  []int32 // place after place
	at     int     // index of the place asked for last
}

// newTally has room for what most replications come to: the ports, passages, sites, and most holes once more.
func newTally(v *voyage.Voyage) tally {
	t := tally{width: len(v.Quantities) + int(rig.Rates)}
	room := 2 + 2*len(v.Sites) + 2*v.Items
	t.places, t.times = make([]Place, 0, room), make([]int32, 0, room*t.width)
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
func (t *tally) row(p Place) int {
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
