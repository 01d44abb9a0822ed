package sim

import (
	"math"

	"coredays/model/activity"
	"coredays/model/chance"
	"coredays/model/coring"
	"coredays/model/learn"
	"coredays/model/rates"
	"coredays/model/rig"
	"coredays/model/riglog"
	"coredays/model/spread"
	"coredays/model/state"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/sim/random"
)

// Learnt is what was seen of one quantity, and what is expected of it now.
type Learnt struct {
	Of        voyage.Quantity
	Rate      rig.Rate // rig.Rates for what is the ground's
	Name      string   // of the ground's quantities
	Plan, Now [3]float64
	Seen      int
}

// learner gathers what was seen, quantity by quantity.
type learner struct {
	x     *Start
	seen  map[voyage.Quantity][]learn.Observation
	order []voyage.Quantity
	names map[voyage.Quantity]string
}

// Learn conditions the spreads of the voyage on what the papers tell of rates, passages, recovery and the strength of
// the sediment: all that is drawn from here on goes by it.
func (x *Start) Learn(papers *riglog.Papers) ([]Learnt, error) {
	l := &learner{x: x, seen: map[voyage.Quantity][]learn.Observation{}, names: map[voyage.Quantity]string{}}
	water := map[string]float64{}
	for i := range x.v.Sites {
		water[x.v.Sites[i].Name] = x.v.Sites[i].Floor
	}
	for _, o := range rates.Observe(x.v.Plan.Ship.Rates, l.upTo(papers), water) {
		o.At = l.place(o.Site, o.Hole)
		l.add(voyage.Quantity(o.Of), o.Observation)
	}
	l.ground()
	l.passages(papers)
	return l.condition()
}

// upTo are the papers as they were at the moment of the state.
func (l *learner) upTo(papers *riglog.Papers) *riglog.Papers {
	p := &riglog.Papers{Files: papers.Files}
	at := l.x.State.At
	for _, line := range papers.Lines {
		if !line.From.Before(at) {
			break
		}
		if line.To.After(at) {
			line.To = at
		}
		p.Lines = append(p.Lines, line)
	}
	for i := range papers.Cores {
		if c := &papers.Cores[i]; !c.OnDeck.IsZero() && !c.OnDeck.After(at) {
			p.Cores = append(p.Cores, *c)
		}
	}
	if len(p.Cores) == 0 { // as the notes of the log have them
		for i := range l.x.State.Cores {
			c := &l.x.State.Cores[i]
			at := &l.x.State.Items[c.Item]
			site := &l.x.v.Sites[at.Site]
			p.Cores = append(p.Cores, riglog.Core{Site: site.Name, Hole: site.Items[at.Number].Name, Number: c.Number, Type: c.Tool.Letter(), Top: c.Top, Cored: c.Cored,
				Recovered: c.Recovered, OnDeck: c.OnDeck, Water: unit.Length(math.NaN())})
		}
	}
	return p
}

func (l *learner) add(of voyage.Quantity, o learn.Observation) {
	if q := &l.x.v.Quantities[of]; q.Fixed || math.IsNaN(o.Value) {
		return
	}
	if _, known := l.seen[of]; !known {
		l.order = append(l.order, of)
	}
	l.seen[of] = append(l.seen[of], o)
}

// elsewhere is no place of the plan.
const elsewhere = -1

// place numbers sites and holes as the plan does.
func (l *learner) place(site, hole string) learn.Place {
	for i := range l.x.v.Sites {
		if s := &l.x.v.Sites[i]; s.Name == site {
			for n := range s.Items {
				if s.Items[n].Name == hole {
					return learn.Place{Site: i, Hole: n}
				}
			}
			return learn.Place{Site: i, Hole: elsewhere}
		}
	}
	return learn.Place{Site: elsewhere, Hole: elsewhere}
}

func (l *learner) siteKey(p learn.Place) chance.Key {
	if p.Site < 0 {
		return chance.KeyOf("no site of the plan")
	}
	return l.x.v.Sites[p.Site].Key
}

func (l *learner) holeKey(p learn.Place) chance.Key {
	if p.Site < 0 || p.Hole < 0 {
		return l.siteKey(p)
	}
	return l.x.v.Sites[p.Site].Items[p.Hole].Key
}

const (
	leastRecovery = 0.05 // quantile at and below which a barrel counts as nearly empty: how empty says little [judgement]
	deepenings    = 8    // the last piston cores of a hole that are asked for the strength of the sediment: each bound costs time
	partialOff    = 0.1  // by which an incomplete stroke is off, as a share of the strength [judgement: advance by recovery]
	shareOff      = 0.02 // by which a recovery is off: lengths are measured to a few centimetres
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
		site := &l.x.v.Sites[at.Site]
		place := learn.Place{Site: at.Site, Hole: at.Number}
		layer := layerAt(site, float64(c.Top))
		if c.Cored <= 0 {
			continue
		}
		q := layer.Recovery[c.Tool]
		if q != voyage.NoQuantity {
			runs[[2]int{c.Item, int(q)}]++
			o := learn.Observation{At: place, Run: runs[[2]int{c.Item, int(q)}], Value: float64(c.Recovered / c.Cored), Error: shareOff}
			if low := l.x.v.Quantities[q].At(spread.Score(leastRecovery)); o.Value < low {
				o.Value, o.Bound = low, learn.AtMost
			}
			l.names[q] = "recovery, " + c.Tool.String() + " at " + site.Name
			if l.bounds(q, place, o.Bound) < deepenings {
				l.add(q, o)
			}
		}
		if c.Tool.Piston() && c.Number > 1 && l.later(i) < deepenings {
			l.strength(site, layer, place, c)
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

func layerAt(site *voyage.Site, depth float64) *voyage.Layer {
	for i := range site.Layers {
		if depth < site.Layers[i].Bottom {
			return &site.Layers[i]
		}
	}
	return &site.Layers[len(site.Layers)-1]
}

// strength takes in what a stroke tells: a whole one that the sediment was no stronger than what lets it be whole, an
// incomplete one how strong it was.
func (l *learner) strength(site *voyage.Site, layer *voyage.Layer, place learn.Place, c *state.Core) {
	if layer.Strength == voyage.NoQuantity {
		return
	}
	corer := corerOf(l.x.v)
	full := float64(c.Tool.Stroke())
	stroke := math.Min(full, float64(c.Cored))
	bound := learn.Exactly
	if stroke >= partial*full {
		stroke, bound = partial*full, learn.AtMost
	}
	low, high := 1e-3, 1e7 // Pa/m: between water and rock
	for range 60 {         // the stroke gets shorter as the sediment gets stronger
		middle := math.Sqrt(low * high)
		if float64(corer.Stroke(unit.Pressure(middle*(float64(c.Top)+stroke/2)))) > stroke {
			low = middle
		} else {
			high = middle
		}
	}
	l.names[layer.Strength] = "side shear per metre at " + site.Name
	l.add(layer.Strength, learn.Observation{At: place, Run: c.Number, Value: low, Bound: bound, Error: partialOff * low})
}

// passages takes in the speed of passages that are over.
func (l *learner) passages(papers *riglog.Papers) {
	v := l.x.v
	var worked float64
	at, sailed := voyage.FromPort, false
	for i := range papers.Lines {
		line := &papers.Lines[i]
		if !line.From.Before(l.x.State.At) {
			return
		}
		if line.Site == "" {
			for _, k := range line.Doing {
				if k == activity.Passage {
					worked += line.Hours() * 3600 / float64(len(line.Doing))
					sailed = true
				}
			}
			continue
		}
		place := l.place(line.Site, line.Hole)
		if place.Site < 0 {
			continue
		}
		to := voyage.SitePlace(place.Site)
		if sailed && to != at && worked > leastPassage {
			leg := v.Leg(at, to)
			speed := leg.Distance / worked
			if leg.Waves != nil {
				speed /= inWaves(v, leg.Waves.Height(line.From.YearDay(), 0))
			}
			l.add(voyage.Quantity(rig.SailingSpeed), learn.Observation{At: learn.Place{Site: elsewhere - 1 - i, Hole: elsewhere}, Value: speed, Error: passageOff * speed})
		}
		at, worked, sailed = to, 0, false
	}
}

// condition makes one Gaussian of it all.
func (l *learner) condition() (list []Learnt, err error) {
	if len(l.order) == 0 {
		return nil, nil
	}
	var evidence []learn.Evidence
	for _, of := range l.order {
		evidence = append(evidence, learn.Evidence{Of: l.quantity(of), Seen: l.seen[of]})
	}
	p, err := learn.From(evidence...)
	if err != nil {
		return nil, err
	}
	l.x.known = random.NewKnown(p, l.order, l.siteKey, l.holeKey)
	here := learn.Place{Site: elsewhere, Hole: elsewhere}
	if at := l.x.State.Now.Site; at != state.None {
		here.Site = at
	}
	for n, of := range l.order {
		q := &l.x.v.Quantities[of]
		now := p.Total(n, here)
		x := Learnt{Of: of, Rate: rig.Rates, Name: l.names[of], Seen: len(l.seen[of])}
		if of < voyage.Quantity(rig.Rates) {
			x.Rate = rig.Rate(of)
		}
		for i, share := range []float64{0.1, 0.5, 0.9} {
			x.Plan[i], x.Now[i] = q.At(spread.Score(share)), q.At(now.Mean+now.SD*spread.Score(share))
		}
		list = append(list, x)
	}
	return list, nil
}

// quantity is the plan's quantity of which one is compiled.
func (l *learner) quantity(of voyage.Quantity) spread.Quantity {
	if of < voyage.Quantity(rig.Rates) {
		return l.x.v.Plan.Ship.Rates[of]
	}
	for i := range l.x.v.Sites {
		site := &l.x.v.Sites[i]
		for n := range site.Layers {
			stated := &site.Site.Layers[n].Lithology
			if site.Layers[n].Strength == of {
				return stated.Strength
			}
			for t := range coring.Tools {
				if site.Layers[n].Recovery[t] == of {
					return stated.Recovery[t]
				}
			}
		}
	}
	return spread.Quantity{}
}
