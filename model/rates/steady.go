package rates

import (
	"math"

	"golang.org/x/exp/stats"

	"coredays/model/learn"
	"coredays/model/rig"
	"coredays/model/spread"
)

// Cycles of a core table hold what the table does not tell: temperature stops, drilling over, mud. They are no pace, so
// that values far from their hole's median count as so far from it and no farther: Huber's estimator of location with
// its usual constant, and the median absolute deviation for scale (Huber 1981, from memory).
const (
	huber   = 1.5
	normal  = 1.4826 // sd of a normal sample over its median absolute deviation
	leastSD = 0.05   // of the logarithm: times are written to five minutes
	fewest  = 5      // values that tell what is usual in a hole
)

// paced are the rates that come from cycles.
var paced = map[rig.Rate]bool{rig.PistonDurationFactor: true, rig.ExtendedDurationFactor: true, rig.RotaryDurationFactor: true}

// steadied pulls in what is far from the median of its hole.
func (g *gatherer) steadied(of rig.Rate, samples []sample) []sample {
	if !paced[of] {
		return samples
	}
	holes := map[[2]string][]float64{}
	for _, s := range samples {
		if s.bound == learn.Exactly {
			k := [2]string{s.site, s.hole}
			holes[k] = append(holes[k], math.Log(s.value))
		}
	}
	out := append([]sample(nil), samples...)
	for i := range out {
		s := &out[i]
		logs := holes[[2]string{s.site, s.hole}]
		if s.bound != learn.Exactly || len(logs) < fewest {
			continue
		}
		middle := stats.Median(logs)
		var off []float64
		for _, x := range logs {
			off = append(off, math.Abs(x-middle))
		}
		reach := huber * math.Max(leastSD, normal*stats.Median(off))
		s.value = math.Exp(math.Max(middle-reach, math.Min(middle+reach, math.Log(s.value))))
	}
	return out
}

// hidden is the variance, in the score, of what is alike for all cores of a hole and not the pace: how long the extended
// barrel cuts there, which no core table tells.
func (g *gatherer) hidden(of rig.Rate, q *spread.Quantity, samples []sample) float64 {
	if of != rig.ExtendedDurationFactor {
		return 0
	}
	var errors []float64
	for _, s := range samples {
		errors = append(errors, s.err)
	}
	each := stats.Median(errors) / deviation(q) // in units of the score
	return each * each
}
