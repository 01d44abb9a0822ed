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
	place  place
	known  bool
	runs   int
	score  float64 // of the levels above the run
	last   float64 // score of the last run
	source chance.Source
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
	}
	score := d.score
	if w := q.Weight[spread.Run]; w > 0 {
		score += w * s.run(d, q)
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

// run is the score of the next run, tied to the last one by the quantity's persistence.
func (s *ship) run(d *drawn, q *spread.Drawn) float64 {
	d.runs++
	score := d.source.Normal(d.runs)
	if p := q.Persistence; p != 0 && d.runs > 1 {
		score = p*d.last + math.Sqrt(1-p*p)*score
	}
	d.last = score
	return score
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
	t := &s.tried[r]
	if t.place != s.place {
		*t = tried{place: s.place}
	}
	t.times++
	return s.luck.For(s.v.Purposes[r]).For(happening).For(s.place.hole).Uniform(t.times) < chance
}

// tried counts how often something could have happened at the present place.
type tried struct {
	place place
	times int
}
