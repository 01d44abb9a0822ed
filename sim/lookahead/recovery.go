package lookahead

import (
	"math"

	"coredays/model/coring"
	"coredays/model/ground"
	"coredays/model/learn"
	"coredays/model/rig"
	"coredays/model/sea"
	"coredays/model/spread"
	"coredays/model/state"
	"coredays/model/unit"
	"coredays/model/voyage"
)

// What a core table says of recovery is not the recovery that is drawn: the sea took some of it, a burst liner all of it, and
// where a piston corer did not go in whole, what came up is also what it is taken to have cut.

const (
	lengthOff  = 0.04 // m by which the length of a core is off: it is measured to a few centimetres
	partOfWhat = 0.93 // of an incomplete stroke came up where not all of it did, in the mean [judgement: the built-in piston recoveries below 100 %]
	seaNodes   = 40   // heights by which a climate is summed
)

// burst tells whether a core is one of which the liner burst: it comes up empty. Of piston cores that are whole, less than
// one in a hundred has next to nothing.
func burst(c *state.Core) bool { return c.Tool.Piston() && c.Recovered < 0.05 }

// recovery is what the i-th core tells of the recovery drawn for it; tells is false where that is nothing.
func (l *learner) recovery(site *voyage.Site, q *spread.Drawn, i int) (o learn.Observation, tells bool) {
	c := &l.x.State.Cores[i]
	if burst(c) && !l.v.Plan.NoTrouble {
		return o, false
	}
	share := float64(c.Recovered / c.Cored)
	off := lengthOff / float64(c.Cored)
	o.Value, o.Error = share, off
	if c.Tool.Piston() && !site.Refusal.AdvanceByStroke && share <= 1+2*off {
		if whole := float64(c.Cored) >= ground.Whole*l.fullStroke(site, c); !whole && l.stopped(i) != no { // as much as came up is taken to have been cut, and that is all it tells
			o.Value, o.Bound = 1+2*off, learn.AtMost
		}
	}
	lost, varies := l.lostToSea(site, c)
	o.Value /= 1 - lost
	if varies > 0 {
		o.Error = math.Hypot(o.Error, asScores(q, o.Value, varies)*math.Sqrt(l.inSameSea(i)))
	}
	return o, true
}

// lostToSea is the share of recovery that the sea takes from a core, by the climate of the site in the waves in which the tool
// is used: mean and standard deviation. Logs do not have the waves of each core.
func (l *learner) lostToSea(site *voyage.Site, c *state.Core) (mean, sd float64) {
	most, all := site.Most[c.Tool.Of().Limit], l.v.Quantities[rig.HeaveLoss].Median
	if site.Waves == nil || math.IsInf(most, 1) || all <= 0 {
		return 0, 0
	}
	at := c.OnDeck
	if at.IsZero() {
		at = l.x.State.At
	}
	var n, sum, squares float64
	for k := range seaNodes {
		height := site.Waves.Height(at.UTC().YearDay(), spread.Score((float64(k)+0.5)/seaNodes))
		if height > most && n > 0 {
			break // heights rise
		}
		x := all * math.Min(1, math.Max(0, 2*height/most-1)) // as where a core is simulated
		n, sum, squares = n+1, sum+x, squares+x*x
	}
	mean = sum / n
	return mean, math.Sqrt(math.Max(0, squares/n-mean*mean))
}

// inSameSea is how many cores of its site meet the same sea as the i-th, as far as the sea hangs together, itself among them.
// What the sea took is one error of all of them: that of the mean of n values whose errors hang together is as large as with errors
// apart, each with so many times the variance (variance of a sum, textbook).
func (l *learner) inSameSea(i int) (n float64) {
	list := l.x.State.Cores
	site := func(i int) int { return l.x.State.Items[list[i].Item].Site }
	p := sea.NewProcess(sea.LongMemory, sea.ShortMemory, unit.Hour)
	for j := range list {
		if site(j) == site(i) {
			n += math.Max(0, p.Correlation(unit.Duration(list[j].OnDeck.Sub(list[i].OnDeck).Seconds())))
		}
	}
	return n
}

// asScores is an error of a value, such that all values have the same error of their scores: that which a share by which values
// are off makes in the mean. A share taken from high values, which lie close together, moves the score much more than one taken from
// low ones; were each core to have its own, the low ones alone would count.
func asScores(q *spread.Drawn, value, share float64) float64 {
	slope := func(score float64) float64 { return (q.At(score+0.05) - q.At(score-0.05)) / 0.1 }
	var moved, n float64
	for p := 0.05; p < 0.96; p += 0.05 {
		z := spread.Score(p)
		moved, n = moved+share*q.At(z)/math.Max(slope(z), 1e-3), n+1
	}
	low, high := -4.0, 4.0
	for range 40 {
		if middle := (low + high) / 2; q.At(middle) < value {
			low = middle
		} else {
			high = middle
		}
	}
	return moved / n * slope(high)
}

// fullStroke is how far a piston corer could go in for a core, m: no further than the stage goes.
func (l *learner) fullStroke(site *voyage.Site, c *state.Core) float64 {
	full := float64(c.Tool.Stroke())
	hole := site.Items[l.x.State.Items[c.Item].Number].Hole
	for k := range hole.Stages {
		if s := &hole.Stages[k]; s.With == c.Tool || s.With.Piston() && c.Tool.Piston() {
			if s.Advance > 0 {
				full = float64(s.Advance)
			}
			if to := float64(s.To - c.Top); to > float64(coring.Shortest) {
				return math.Min(full, to)
			}
		}
	}
	return full
}

// answer is one that may not be known.
type answer int

const (
	no answer = iota
	yes
	unsure
)

// stopped tells whether a short core of a piston corer is so because the sediment stopped it: a stroke may also be short by
// itself. Crews that go on with the same tool were not stopped; what comes next of the last core is not known, but two
// in a row are seldom short by themselves.
func (l *learner) stopped(i int) answer {
	list := l.x.State.Cores
	c := &list[i]
	if q := c.Tool.Of().Advance; q == coring.NoRate || l.v.Quantities[q].Fixed {
		return yes
	}
	site := &l.v.Sites[l.x.State.Items[c.Item].Site]
	short := func(c *state.Core) bool { return float64(c.Cored) < ground.Whole*l.fullStroke(site, c) }
	for j := i + 1; j < len(list); j++ {
		switch next := &list[j]; {
		case next.Item != c.Item:
		case next.Tool != c.Tool:
			return yes
		case short(next):
			return l.stopped(j)
		default:
			return no
		}
	}
	for j := i - 1; j >= 0; j-- {
		if list[j].Item == c.Item {
			if list[j].Tool == c.Tool && short(&list[j]) {
				return yes
			}
			break
		}
	}
	return unsure
}

// wentIn is how far a piston corer that the sediment stopped went in for a core, m. Nobody knows: the core that came up is
// taken for it, and where that is less than the stroke, the stroke was longer.
func wentIn(site *voyage.Site, c *state.Core, full float64) float64 {
	stroke := float64(c.Cored)
	if !site.Refusal.AdvanceByStroke && float64(c.Recovered-c.Cored) <= 2*lengthOff {
		stroke /= partOfWhat
	}
	return math.Min(stroke, ground.Whole*full)
}
