package lookahead

import (
	"math"

	"coredays/model/ground"
	"coredays/model/learn"
	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/model/voyage"
)

const (
	leastRecovery = 0.05 // quantile at and below which a barrel counts as nearly empty: how empty says little [judgement]
	deepenings    = 8    // the last piston cores of a hole that are asked for the strength of the sediment: each bound costs time
	partialOff    = 0.1  // by which an incomplete stroke is off, as a share of the strength [judgement: advance by recovery]
	passageOff    = 0.05 // of the speed over a passage, for waves met that the log does not tell [judgement]
	leastPassage  = 6 * 3600.0
)

// ground takes in what cores tell of recovery and of the strength of the sediment.
func (l *learner) ground() {
	st := l.x.State
	runs := map[[2]int]int{}
	for i := range st.Cores {
		c := &st.Cores[i]
		at := &st.Items[c.Item]
		site := &l.v.Sites[at.Site]
		place := learn.Place{Site: at.Site, Hole: at.Number}
		n := layerAt(site, float64(c.Top))
		layer, lithology := &site.Layers[n], site.Site.Layers[n].Lithology.Name
		if c.Cored <= 0 {
			continue
		}
		if q := layer.Recovery[c.Tool]; q != voyage.NoQuantity {
			runs[[2]int{c.Item, int(q)}]++
			o, tells := l.recovery(site, &l.v.Quantities[q], i)
			o.At, o.Run = place, runs[[2]int{c.Item, int(q)}]
			if low := l.v.Quantities[q].At(spread.Score(leastRecovery)); tells && o.Bound == learn.Exactly && o.Value < low {
				o.Value, o.Bound = low, learn.AtMost
			}
			l.names[q] = "recovery, " + c.Tool.String() + " in " + lithology
			if tells && l.bounds(q, place, o.Bound) < deepenings {
				l.add(q, o)
			}
		}
		if c.Tool.Piston() && c.Number > 1 && l.later(i) < deepenings {
			l.strength(site, n, place, i)
		}
	}
}

// bounds is how many bounds there are of a quantity at a place; none where the next is none.
func (l *learner) bounds(q voyage.Quantity, at learn.Place, next learn.Bound) (n int) {
	if next == learn.Exactly {
		return 0
	}
	for _, o := range l.seen[q] {
		if o.At == at && o.Bound != learn.Exactly {
			n++
		}
	}
	return n
}

// later is how many piston cores came up from the same hole after the i-th core.
func (l *learner) later(i int) (n int) {
	list := l.x.State.Cores
	for j := i + 1; j < len(list); j++ {
		if list[j].Item == list[i].Item && list[j].Tool.Piston() {
			n++
		}
	}
	return n
}

func layerAt(site *voyage.Site, depth float64) int {
	for i := range site.Layers {
		if depth < site.Layers[i].Bottom {
			return i
		}
	}
	return len(site.Layers) - 1
}

// strength takes in what a stroke tells: a whole one that the sediment was no stronger than what lets it be whole, one that
// the sediment stopped how strong it was. A burst liner leaves nothing by which to tell how far that went.
func (l *learner) strength(site *voyage.Site, n int, place learn.Place, i int) {
	layer, c := &site.Layers[n], &l.x.State.Cores[i]
	if layer.Strength == voyage.NoQuantity {
		return
	}
	corer := l.v.Corer()
	full := l.fullStroke(site, c)
	stroke, bound := ground.Whole*full, learn.AtMost
	if float64(c.Cored) < stroke {
		if l.stopped(i) != yes || burst(c) {
			return
		}
		stroke, bound = wentIn(site, c, full), learn.Exactly
	}
	low, high := 1e-3, 1e7 // Pa/m: between water and rock
	for range 60 {         // the stroke gets shorter as the sediment gets stronger
		middle := math.Sqrt(low * high)
		if float64(corer.Stroke(unit.Pressure(middle*(float64(c.Top)+full/2)))) > stroke {
			low = middle
		} else {
			high = middle
		}
	}
	l.names[layer.Strength] = "side shear per metre in " + site.Site.Layers[n].Lithology.Name
	l.add(layer.Strength, learn.Observation{At: place, Run: c.Number, Value: low, Bound: bound, Error: partialOff * low})
}
