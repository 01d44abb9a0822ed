package sim

import (
	"math"

	"coredays/model/chance"
	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/model/voyage"
)

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
func (s *ship) draw(id voyage.Quantity) float64 {
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
func (s *ship) settle(d *drawn, q *spread.Drawn, purpose chance.Key) {
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
func (s *ship) run(d *drawn, q *spread.Drawn) float64 {
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
func (s *ship) takeUp(d *drawn, q *spread.Drawn) {
	if q.Persistence == 0 {
		return
	}
	for n := int32(1); n <= s.tally.times[d.tallied]; n++ {
		d.next(q, n)
	}
}

// ofSite draws what happens to the site or to the ship on it, whichever hole is in hand.
func (s *ship) ofSite(id voyage.Quantity) float64 {
	hole := s.place.hole
	s.place.hole = s.place.site
	value := s.draw(id)
	s.place.hole = hole
	return value
}

// rate draws one of the ship's rates.
func (s *ship) rate(r rig.Rate) float64 { return s.draw(voyage.Quantity(r)) }

// happens draws whether something happens whose chance is one of the ship's rates.
func (s *ship) happens(r rig.Rate) bool {
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
