package sim

import (
	"coredays/model/chance"
	"coredays/model/sea"
	"coredays/model/voyage"
)

// weather is the sea around the ship. Its scores are those of the calendar, whatever the place:
// the ship meets the same sea at the same place and date in whatever order she comes there.
type weather struct {
	process *sea.Process
	luck    chance.Source
	firstAt float64 // s of the year at which step 0 begins
	scores  []float32
	state   sea.State
	waves   *sea.Table // of the place
	height  float64    // significant wave height now, m
	calm    bool       // no sea at all: the crew's estimates
	forced  []float64  // heights hour by hour in place of chance, the last for ever; nil for chance
}

// theSeasScore is the purpose of the sea's random numbers.
var theSeasScore = chance.KeyOf("sea")

// reset begins the sea of a replication.
func (w *weather) reset(luck chance.Source) {
	w.luck = luck.For(theSeasScore)
	w.state = w.process.Start(w.luck.Normal(0), w.luck.Normal(1))
	w.scores = append(w.scores[:0], float32(w.state.Score()))
}

// score is the standard normal score of a step, worked out on demand and remembered.
func (w *weather) score(step int) float64 {
	for n := len(w.scores); n <= step; n++ {
		w.state = w.process.Next(w.state, w.luck.Normal(2*n), w.luck.Normal(2*n+1))
		w.scores = append(w.scores, float32(w.state.Score()))
	}
	return float64(w.scores[step])
}

// at is the significant wave height at a step where the ship is, m.
func (w *weather) at(step int, score float64) float64 {
	if w.calm {
		return 0
	}
	if n := len(w.forced); n > 0 {
		return w.forced[min(step, n-1)]
	}
	return w.waves.Height(w.day(step), score)
}

// day is the day of the year of a step.
func (w *weather) day(step int) int {
	const day, year = 86400, 366
	return int((w.firstAt+float64(step)*float64(voyage.SeaStep))/day)%year + 1
}
