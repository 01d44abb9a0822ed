package lookahead

import (
	"math"

	"coredays/model/chance"
	"coredays/model/coring"
	"coredays/model/learn"
	"coredays/model/morning"
	"coredays/model/rates"
	"coredays/model/rig"
	"coredays/model/riglog"
	"coredays/model/spread"
	"coredays/model/state"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/random"
)

// learner gathers what was seen, quantity by quantity.
type learner struct {
	v     *voyage.Voyage
	x     *sim.Start
	seen  map[voyage.Quantity][]learn.Observation
	order []voyage.Quantity
	names map[voyage.Quantity]string
}

// Learn conditions the spreads of the voyage on what the papers tell of rates, passages, recovery and the strength of
// the sediment: all that is drawn from here on goes by it.
func Learn(v *voyage.Voyage, x *sim.Start, papers *riglog.Papers) ([]morning.Learned, error) {
	l := &learner{v: v, x: x, seen: map[voyage.Quantity][]learn.Observation{}, names: map[voyage.Quantity]string{}}
	water := map[string]float64{}
	for i := range v.Sites {
		water[v.Sites[i].Name] = v.Sites[i].Floor
	}
	for _, o := range rates.Observe(v.Plan.Ship.Rates, l.upTo(papers), water) {
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
			site := &l.v.Sites[at.Site]
			p.Cores = append(p.Cores, riglog.Core{Site: site.Name, Hole: site.Items[at.Number].Name, Number: c.Number, Type: c.Tool.Letter(), Top: c.Top, Cored: c.Cored,
				Recovered: c.Recovered, OnDeck: c.OnDeck, Water: unit.Length(math.NaN())})
		}
	}
	return p
}

func (l *learner) add(of voyage.Quantity, o learn.Observation) {
	if q := &l.v.Quantities[of]; q.Fixed || math.IsNaN(o.Value) {
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
	for i := range l.v.Sites {
		if s := &l.v.Sites[i]; s.Name == site {
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
	return l.v.Sites[p.Site].Key
}

func (l *learner) holeKey(p learn.Place) chance.Key {
	if p.Site < 0 || p.Hole < 0 {
		return l.siteKey(p)
	}
	return l.v.Sites[p.Site].Items[p.Hole].Key
}

// condition makes one Gaussian of it all.
func (l *learner) condition() (list []morning.Learned, err error) {
	if len(l.order) == 0 {
		return nil, nil
	}
	var evidence []learn.Evidence
	for _, of := range l.order {
		evidence = append(evidence, learn.Evidence{Of: l.quantity(of), Seen: l.seen[of], Above: uint64(l.v.Above[of])})
	}
	p, err := learn.From(evidence...)
	if err != nil {
		return nil, err
	}
	l.x.Knows(random.NewKnown(l.v, p, l.order, l.siteKey, l.holeKey))
	here := learn.Place{Site: elsewhere, Hole: elsewhere}
	if at := l.x.State.Now.Site; at != state.None {
		here.Site = at
	}
	for n, of := range l.order {
		q := &l.v.Quantities[of]
		now := p.Total(n, here)
		x := morning.Learned{Rate: rig.Rates, Name: l.names[of], Seen: len(l.seen[of])}
		if of < voyage.Quantity(rig.Rates) {
			x.Rate = rig.Rate(of)
		}
		for i, share := range []float64{0.1, 0.5, 0.9} {
			x.Plan[i], x.Now[i] = q.At(spread.Score(share)), q.At(now.Mean+now.SD*spread.Score(share))
		}
		list = learnedTogether(list, x)
	}
	return list, nil
}

// learnedTogether adds what was learned; of layers that are alike and have their levels in common it is one thing.
func learnedTogether(list []morning.Learned, x morning.Learned) []morning.Learned {
	for i := range list {
		if y := &list[i]; x.Rate == rig.Rates && y.Name == x.Name && y.Plan == x.Plan && y.Now == x.Now {
			y.Seen += x.Seen
			return list
		}
	}
	return append(list, x)
}

// quantity is the plan's quantity of which one is compiled.
func (l *learner) quantity(of voyage.Quantity) spread.Quantity {
	if of < voyage.Quantity(rig.Rates) {
		return l.v.Plan.Ship.Rates[of]
	}
	for i := range l.v.Sites {
		site := &l.v.Sites[i]
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
