package learn

import (
	"sort"

	"coredays/model/spread"
)

// furthest is the score beyond which a value counts as outside the quantity's shape: one value in 30,000 lies
// further out on each side [spread.Score(1-3e-5), the size is judgement].
const furthest = 4.0

// scoreOf is the score at which the quantity has a value, how steeply the value rises there, and whether the value
// lies within what the shape allows. Values outside count as the furthest score on their side. A falling or flat
// stretch of the shape has no single score: the lowest is taken.
func scoreOf(d *spread.Drawn, value float64) (score, slope float64, inside bool) {
	const steps = 1 << 14
	at := func(i int) float64 { return furthest * (2*float64(i)/steps - 1) }
	i := sort.Search(steps+1, func(i int) bool { return d.At(at(i)) >= value })
	switch {
	case i == 0:
		return -furthest, slopeAt(d, -furthest), d.At(-furthest) == value
	case i > steps:
		return furthest, slopeAt(d, furthest), false
	}
	below, above := d.At(at(i-1)), d.At(at(i))
	score = at(i-1) + (at(i)-at(i-1))*(value-below)/(above-below)
	return score, slopeAt(d, score), true
}

// slopeAt is how much the value rises for each unit of score, taken over the span between two nodes of its table.
func slopeAt(d *spread.Drawn, score float64) float64 {
	const h = 0.05
	return (d.At(score+h) - d.At(score-h)) / (2 * h)
}
