package random

import (
	"coredays/model/chance"
	"coredays/model/learn"
	"coredays/model/spread"
	"coredays/model/voyage"
)

// Known is what was learned of the scores of some quantities: all of them together are Gaussian, and each replication
// has its own values of them. Scores of which nothing was learned are drawn as always.
type Known struct {
	posterior *learn.Posterior
	index     map[knownScore]int
}

// knownScore names a score: of a quantity, or of the factor common to all (NoQuantity).
type knownScore struct {
	of    voyage.Quantity
	level spread.Level
	at    chance.Key // of the site or the hole
}

// NewKnown names what was learned: of is the quantity of each evidence, site and hole the keys of its places.
func NewKnown(p *learn.Posterior, of []voyage.Quantity, site, hole func(learn.Place) chance.Key) *Known {
	k := &Known{p, map[knownScore]int{}}
	for i, f := range p.Factors {
		x := knownScore{of: voyage.NoQuantity, level: f.Level}
		if f.Of != learn.Common {
			x.of = of[f.Of]
		}
		switch f.Level {
		case spread.Site:
			x.at = site(f.At)
		case spread.Hole, spread.Run:
			x.at = hole(f.At)
		}
		k.index[x] = i
	}
	return k
}

// theLearned is the purpose of the scores of what was learned.
var theLearned = chance.KeyOf("learned")

// Learns has the draws of this replication go by what is known. It comes after Begins.
func (s *Draws) Learns(k *Known) {
	if s.known = k; k == nil {
		return
	}
	stream := s.Stream.For(theLearned)
	s.scores = k.posterior.Draw(stream.Normal)
}

// level is a score, from what was learned or else as drawn.
func (s *Draws) level(id voyage.Quantity, level spread.Level, at chance.Key, drawn float64) float64 {
	if s.known != nil {
		if i, found := s.known.index[knownScore{id, level, at}]; found {
			return s.scores[i]
		}
	}
	return drawn
}
