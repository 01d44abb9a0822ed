package learn

import (
	"math"

	"coredays/model/spread"
)

// observed is a value as a score, with the item that it belongs to.
type observed struct {
	item
	score float64
	bound Bound
}

// observe turns values into scores. Values of the same place that are known alike and hang together by nothing but
// their levels are put together as their mean, which loses nothing and saves time.
func observe(of, above int, q *spread.Drawn, seen []Observation) (exact, bounded []observed, outside int) {
	type alike struct {
		at  Place
		own float64
	}
	together := map[alike]int{}
	count := map[int]int{}
	for _, o := range seen {
		score, slope, inside := scoreOf(q, o.Value)
		if !inside && beyondReading(q, &o) {
			outside++
		}
		x := observed{item: item{of: of, above: above, at: o.At, weight: q.Weight, common: q.Common, persist: q.Persistence, run: o.Run}, score: score, bound: o.Bound}
		run := q.Weight[spread.Run] * q.Weight[spread.Run]
		if o.Mean > 1 { // a mean of several runs scatters less, and which of them it hangs on is not known
			x.alone, run = true, run/float64(o.Mean)
		}
		if q.Persistence == 0 {
			x.alone = true
		}
		if x.alone {
			x.own = run
		}
		if slope > 0 {
			x.own += o.Error * o.Error / (slope * slope)
		}
		if o.Bound != Exactly {
			bounded = append(bounded, x)
			continue
		}
		key := alike{o.At, x.own}
		i, known := together[key]
		if !x.alone || !known {
			together[key], count[len(exact)] = len(exact), 1
			exact = append(exact, x)
			continue
		}
		n := float64(count[i])
		exact[i].score = (exact[i].score*n + score) / (n + 1)
		count[i]++
	}
	for i, n := range count {
		exact[i].own /= float64(n)
	}
	return exact, bounded, outside
}

// readingErrors is how many standard errors of its reading a value may lie beyond what the shape allows and still be of it
// [judgement]: quarter hours make a trip at the fastest rate look a little faster.
const readingErrors = 2

// beyondReading reports whether a value lies so far outside that its reading does not explain it.
func beyondReading(q *spread.Drawn, o *Observation) bool {
	return o.Value > q.At(furthest)+readingErrors*o.Error || o.Value < q.At(-furthest)-readingErrors*o.Error
}

// Total is what is known of the score of the next run at a place, of the evidence with that number: the sum of its
// levels, each with its weight. A place without observations may be asked for too: with an unknown hole of a
// known site, or an unknown site, less is known.
func (p *Posterior) Total(of int, at Place) Score {
	q := &p.drawn[of]
	type part struct {
		factor int
		weight float64
	}
	var load []part // in order: sums of the same numbers in another order differ in the last digit
	var mean, variance float64
	for _, f := range []Factor{{p.above[of], spread.Expedition, Place{}}, {p.above[of], spread.Site, Place{Site: at.Site}}, {p.above[of], spread.Hole, at}, {of, spread.Run, at}} {
		w := q.Weight[f.Level]
		i, known := p.index[f]
		if f.Level == spread.Run && known {
			variance += w * w * (1 - q.Persistence*q.Persistence)
			w *= q.Persistence
		}
		if !known {
			variance += w * w
			continue
		}
		load = append(load, part{i, w})
	}
	for _, a := range load {
		mean += a.weight * p.Mean.AtVec(a.factor)
		for _, b := range load {
			variance += a.weight * b.weight * p.Cov.At(a.factor, b.factor)
		}
	}
	return Score{mean, math.Sqrt(math.Max(0, variance))}
}

// Reading is an observation as a score.
type Reading struct {
	At           Place
	Score, Error float64 // Error is the standard deviation of the reading, in units of the score
}

// Readings are the scores of the values that are known themselves; those outside of what the shape allows have the
// furthest score on their side.
func Readings(q spread.Quantity, seen []Observation) (list []Reading) {
	d := q.Compile()
	for _, o := range seen {
		score, slope, _ := scoreOf(&d, o.Value)
		if o.Bound != Exactly || slope <= 0 {
			continue
		}
		list = append(list, Reading{o.At, score, o.Error / slope})
	}
	return list
}
