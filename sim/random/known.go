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

// knownScore names a score by its random stream: that of the levels above the run, that of a quantity's runs, or that of
// the factor common to all.
type knownScore struct {
	of    chance.Key
	level spread.Level
	at    chance.Key // of the site or the hole
}

// NewKnown names what was learned: of is the quantity of each evidence, site and hole the keys of its places.
func NewKnown(v *voyage.Voyage, p *learn.Posterior, of []voyage.Quantity, site, hole func(learn.Place) chance.Key) *Known {
	k := &Known{p, map[knownScore]int{}}
	for i, f := range p.Factors {
		x := knownScore{of: CommonFactor, level: f.Level}
		switch {
		case f.Of == learn.Common:
		case f.Level == spread.Run:
			x.of = v.Purposes[of[f.Of]]
		default:
			x.of = v.Above[of[f.Of]]
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
func (s *Draws) level(of chance.Key, level spread.Level, at chance.Key, drawn float64) float64 {
	if s.known != nil {
		if i, found := s.known.index[knownScore{of, level, at}]; found {
			return s.scores[i]
		}
	}
	return drawn
}

// lastRun is the score of the last run that the log has of a quantity here, which the next one hangs on.
func (s *Draws) lastRun(purpose chance.Key) (score float64, known bool) {
	if s.known == nil {
		return 0, false
	}
	i, known := s.known.index[knownScore{purpose, spread.Run, s.Place.Hole}]
	if !known {
		return 0, false
	}
	return s.scores[i], true
}
