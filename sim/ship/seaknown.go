package ship

import (
	"math"

	"coredays/model/learn"
	"coredays/model/sea"
)

// What is known of the sea to come: the waves now, and a forecast. A height stated for a moment is the best estimate of
// it, and its skill, the correlation of stated and true score, says how much is left to chance: the score then is normal
// about the stated one with a variance of 1 less the skill squared (conditional distribution of two normals, textbook;
// sea.Forecast). So the path drawn is shrunk by that and set on the stated one. Between the moments stated both are
// interpolated, and after the last one what is known is forgotten as the process forgets: heights stay continuous and
// run into the climate.

// SeaKnown bends the sea of each replication.
type SeaKnown struct {
	from int       // step of the first moment
	mean []float64 // of the score, step by step from there on
	free []float64 // by what the path drawn is shrunk
}

// SeaPoint is a height known or forecast.
type SeaPoint struct {
	At     float64 // s after sailing
	Height float64 // m
}

const (
	readSkill  = 0.99 // of a height read off a buoy or the bridge now: 5 to 10 % of the height [judgement]
	leastSkill = 0.05 // a forecast with less says nothing any more
	knownAhead = 30 * 24
)

// stated is a moment of which something is known.
type stated struct {
	step         int
	score, skill float64
}

// KnowSea works out what is known: waves is the height now, so many seconds after sailing, or not a number, forecast the
// heights stated for later through a channel of so much skill, in the order of time.
//
// Where the waves are not stated and the ship waits on weather, they are above the height for which she waits: the score
// now is a normal one of which a bound is known, and its mean and variance are kept.
func KnowSea(now float64, channel sea.Forecast, waves, waitsFor float64, forecast []SeaPoint, table *sea.Table, day func(step int) int) *SeaKnown {
	var known []stated
	add := func(at, height, skill float64) {
		step := int(math.Round(at / SeaStep))
		if n := len(known); height > 0 && skill >= leastSkill && (n == 0 || step > known[n-1].step) {
			known = append(known, stated{step, table.Score(day(step), height), skill})
		}
	}
	if waitsFor > 0 && !(waves > 0) {
		step := int(math.Round(now / SeaStep))
		mean, variance := learn.Above(table.Score(day(step), waitsFor))
		known = append(known, stated{step, mean, math.Sqrt(1 - variance)})
	}
	add(now, waves, readSkill)
	for _, f := range forecast {
		if lead := f.At - now; lead >= -SeaStep {
			add(f.At, f.Height, math.Min(readSkill, channel.Correlation(seconds(lead))))
		}
	}
	if len(known) == 0 {
		return nil
	}
	return newSeaKnown(known, sea.NewProcess(sea.LongMemory, sea.ShortMemory, seconds(SeaStep)))
}

func newSeaKnown(known []stated, p *sea.Process) *SeaKnown {
	k := &SeaKnown{from: known[0].step}
	next := 0
	for step := k.from; step < k.from+knownAhead; step++ {
		for next < len(known)-1 && known[next+1].step <= step {
			next++
		}
		a := known[next]
		mean, skill := a.score, a.skill
		if next < len(known)-1 {
			b := known[next+1]
			f := float64(step-a.step) / float64(b.step-a.step)
			mean, skill = mean+f*(b.score-mean), skill+f*(b.skill-skill)
		} else {
			kept := math.Max(0, p.Correlation(seconds(float64(step-a.step)*SeaStep)))
			mean, skill = mean*kept, skill*kept
		}
		k.mean = append(k.mean, mean)
		k.free = append(k.free, math.Sqrt(1-skill*skill))
	}
	return k
}

// bent is the score of a step of which the path drawn has another.
func (k *SeaKnown) bent(step int, drawn float64) float64 {
	i := max(0, step-k.from)
	if i >= len(k.mean) {
		return drawn
	}
	return k.mean[i] + k.free[i]*drawn
}
