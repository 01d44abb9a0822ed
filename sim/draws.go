package sim

import (
	"math"
	"slices"

	"coredays/model/chance"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/voyage"
)

// draws gives the values of the quantities of a voyage in one replication, at the place where the ship is.
type draws struct {
	v      *voyage.Voyage
	luck   chance.Source // of the replication
	place  place
	median bool // every draw is the median, and no trouble happens
	drawn  []drawn
	tally  tally
	uses   *uses // nil where nobody asks what is drawn where
}

func newDraws(v *voyage.Voyage) draws {
	return draws{v: v, drawn: make([]drawn, len(v.Quantities)), tally: newTally(v)}
}

// begins forgets what was drawn and takes up a replication.
func (s *draws) begins(luck chance.Source) {
	*s = draws{v: s.v, luck: luck, drawn: s.drawn, tally: s.tally}
	clear(s.drawn)
	s.tally.reset()
}

// copyFrom makes the draws those of another ship, which go their own way from here.
func (s *draws) copyFrom(o *draws) {
	drawn, tally := s.drawn, s.tally
	*s = *o
	s.drawn, s.tally = append(drawn[:0], o.drawn...), tally
	s.tally.copyFrom(&o.tally)
}

// place keys the luck of where the ship works: a site, and a hole of it.
type place struct {
	site, hole chance.Key
}

// drawn is what is known of a quantity at the present place.
type drawn struct {
	place   place
	known   bool
	tallied int     // where its runs here are counted
	score   float64 // of the levels above the run
	last    float64 // score of the last run
	source  chance.Source
}

// Keys of the factors that are not of one quantity at one place.
var (
	commonFactor = chance.KeyOf("common to the expedition")
	everywhere   = chance.KeyOf("expedition")
	wholeSite    = chance.KeyOf("site") // apart from the hole, whose key is the site's on arrival
	happening    = chance.KeyOf("whether it happens")
)

// draw is the value of a quantity for the next run at the present place.
func (s *draws) draw(id voyage.Quantity) float64 {
	q := &s.v.Quantities[id]
	if q.Fixed || s.median {
		return q.Median
	}
	d := &s.drawn[id]
	if !d.known || d.place != s.place {
		s.settle(d, q, s.v.Purposes[id])
		d.tallied = s.tally.row(s.place) + int(id)
		s.takeUp(d, q)
	}
	score := d.score
	if w := q.Weight[spread.Run]; w > 0 {
		score += w * s.run(d, q)
	}
	if s.uses != nil {
		s.uses.note(id, d.place, int(s.tally.times[d.tallied]))
	}
	return q.At(score)
}

// settle works out the score of the levels above the run.
func (s *draws) settle(d *drawn, q *spread.Drawn, purpose chance.Key) {
	luck := s.luck.For(purpose)
	*d = drawn{place: s.place, known: true, source: luck.For(s.place.hole)}
	if w := q.Weight[spread.Expedition]; w > 0 {
		own := luck.For(everywhere).Normal(0)
		if c := q.Common; c != 0 {
			own = c*s.luck.For(commonFactor).Normal(0) + math.Sqrt(1-c*c)*own
		}
		d.score += w * own
	}
	if w := q.Weight[spread.Site]; w > 0 {
		d.score += w * luck.For(s.place.site).For(wholeSite).Normal(0)
	}
	if w := q.Weight[spread.Hole]; w > 0 {
		d.score += w * d.source.Normal(0)
	}
}

// run is the score of the next run.
func (s *draws) run(d *drawn, q *spread.Drawn) float64 {
	s.tally.times[d.tallied]++
	return d.next(q, s.tally.times[d.tallied])
}

// next is the score of the n-th run here, tied to the last one by the quantity's persistence.
func (d *drawn) next(q *spread.Drawn, n int32) float64 {
	score := d.source.Normal(int(n))
	if p := q.Persistence; p != 0 && n > 1 {
		score = p*d.last + math.Sqrt(1-p*p)*score
	}
	d.last = score
	return score
}

// takeUp finds the last run again where the ship comes back to a place.
func (s *draws) takeUp(d *drawn, q *spread.Drawn) {
	if q.Persistence == 0 {
		return
	}
	for n := int32(1); n <= s.tally.times[d.tallied]; n++ {
		d.next(q, n)
	}
}

// ofSite draws what happens to the site or to the ship on it, whichever hole is in hand.
func (s *draws) ofSite(id voyage.Quantity) float64 {
	hole := s.place.hole
	s.place.hole = s.place.site
	value := s.draw(id)
	s.place.hole = hole
	return value
}

// rate draws one of the ship's rates.
func (s *draws) rate(r rig.Rate) float64 { return s.draw(voyage.Quantity(r)) }

// happens draws whether something happens whose chance is one of the ship's rates.
func (s *draws) happens(r rig.Rate) bool {
	if s.median {
		return false
	}
	chance := s.rate(r)
	if chance <= 0 {
		return false
	}
	times := &s.tally.times[s.tally.row(s.place)+len(s.drawn)+int(r)]
	*times++
	return s.luck.For(s.v.Purposes[r]).For(happening).For(s.place.hole).Uniform(int(*times)) < chance
}

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
