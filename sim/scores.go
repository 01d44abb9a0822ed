package sim

import (
	"slices"

	"coredays/model/chance"
	"coredays/model/spread"
	"coredays/model/voyage"
)

// score is one of the normal scores that a quantity is made of, which is known for any replication since
// draws are keyed.
type score struct {
	of      spread.Drawn // with the weight of one level alone
	purpose chance.Key
	at      usedAt
	powers  int     // of the score that are let count: 1, or 3 where it is one of few
	share   float64 // of its effect that is this quantity's: others may draw with the same score
}

// fewScores is up to how many scores of a level a curve is fitted to each rather than a line, since many
// small effects add up to nearly a line. Our choice.
const fewScores = 3

// scoresOf lists the scores of a quantity above the run, one each for the expedition, the sites and the holes
// where it is drawn, and its mean score of the runs in each hole.
func scoresOf(v *voyage.Voyage, id voyage.Quantity, places []usedAt, sharing int) (list []score) {
	q := &v.Quantities[id]
	for level := range spread.Levels {
		if q.Weight[level] == 0 {
			continue
		}
		one := *q
		one.Weight = spread.Shares{}
		one.Weight[level] = 1
		distinct := apart(places, level)
		powers, share := 1, 1.0
		if len(distinct) <= fewScores {
			powers = 3
		}
		if level == spread.Expedition {
			share = 1 / float64(sharing)
		}
		for _, at := range distinct {
			list = append(list, score{one, v.Purposes[id], at, powers, share})
		}
	}
	return list
}

// apart are places that have scores of their own at a level.
func apart(places []usedAt, level spread.Level) (list []usedAt) {
	for _, p := range places {
		if !slices.ContainsFunc(list, func(o usedAt) bool {
			return level == spread.Expedition || level == spread.Site && o.site == p.site || o.hole == p.hole
		}) {
			list = append(list, p)
		}
	}
	return list
}

// score is the value of a score in the replication whose luck the ship has; the mean of runs has the deviation
// that so many leave it.
func (s *draws) score(x *score) float64 {
	s.place = x.at.place
	var d drawn
	s.settle(&d, &x.of, x.purpose)
	if x.of.Weight[spread.Run] == 0 {
		return d.score
	}
	var sum float64
	for n := range x.at.runs {
		sum += d.next(&x.of, int32(n+1))
	}
	return sum / float64(max(1, x.at.runs))
}

// powersOf are so many powers of a score.
func powersOf(z float64, powers int) []float64 { return []float64{z, z * z, z * z * z}[:powers] }
