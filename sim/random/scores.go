package random

import (
	"slices"

	"coredays/model/chance"
	"coredays/model/spread"
	"coredays/model/voyage"
)

// Score is one of the normal scores that a quantity is made of, which is known for any replication since
// draws are keyed.
type Score struct {
	Of      spread.Drawn // with the weight of one level alone
	purpose chance.Key
	above   chance.Key
	at      UsedAt
	Powers  int     // of the score that are let count: 1, or 3 where it is one of few
	Share   float64 // of its effect that is this quantity's: others may draw with the same score
}

// fewScores is up to how many scores of a level a curve is fitted to each rather than a line, since many
// small effects add up to nearly a line. Our choice.
const fewScores = 3

// ScoresOf lists the scores of a quantity above the run, one each for the expedition, the sites and the holes
// where it is drawn, and its mean score of the runs in each hole.
func ScoresOf(v *voyage.Voyage, id voyage.Quantity, places []UsedAt, sharing Sharing) (list []Score) {
	q := &v.Quantities[id]
	for level := range spread.Levels {
		if q.Weight[level] == 0 {
			continue
		}
		one := *q
		one.Weight = spread.Shares{}
		one.Weight[level] = 1
		distinct := apart(places, level)
		powers := 1
		if len(distinct) <= fewScores {
			powers = 3
		}
		for _, at := range distinct {
			share := 1.0
			if n := sharing[sharedBy(v, id, level, at)]; level != spread.Run && n > 1 {
				share = 1 / float64(n)
			}
			list = append(list, Score{one, v.Purposes[id], v.Above[id], at, powers, share})
		}
	}
	return list
}

// Sharing counts the quantities that draw with the same score.
type Sharing map[shared]int

// shared names a score: at the level of the expedition without a place.
type shared struct {
	above chance.Key
	level spread.Level
	at    chance.Key
}

func sharedBy(v *voyage.Voyage, id voyage.Quantity, level spread.Level, at UsedAt) shared {
	switch level {
	case spread.Expedition:
		return shared{v.Above[id], level, 0}
	case spread.Site:
		return shared{v.Above[id], level, at.Site}
	default:
		return shared{v.Above[id], level, at.Hole}
	}
}

// SharingOf counts for the places where each quantity is drawn.
func SharingOf(v *voyage.Voyage, places [][]UsedAt) Sharing {
	count := Sharing{}
	for id := range places {
		for level := range spread.Levels {
			for _, at := range apart(places[id], level) {
				count[sharedBy(v, voyage.Quantity(id), level, at)]++
			}
		}
	}
	return count
}

// apart are places that have scores of their own at a level.
func apart(places []UsedAt, level spread.Level) (list []UsedAt) {
	for _, p := range places {
		if !slices.ContainsFunc(list, func(o UsedAt) bool {
			return level == spread.Expedition || level == spread.Site && o.Site == p.Site || o.Hole == p.Hole
		}) {
			list = append(list, p)
		}
	}
	return list
}

// Score is the value of a score in the replication whose random stream the ship has; the mean of runs has the deviation
// that so many leave it.
func (s *Draws) Score(x *Score) float64 {
	s.Place = x.at.Place
	var d drawn
	s.settle(&d, &x.Of, x.purpose, x.above)
	if x.Of.Weight[spread.Run] == 0 {
		return d.score
	}
	var sum float64
	for n := range x.at.runs {
		sum += d.next(&x.Of, int32(n+1))
	}
	return sum / float64(max(1, x.at.runs))
}

// PowersOf are so many powers of a score.
func PowersOf(z float64, powers int) []float64 { return []float64{z, z * z, z * z * z}[:powers] }
