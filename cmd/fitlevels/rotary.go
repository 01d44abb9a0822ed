package main

import (
	"math"
	"slices"

	"golang.org/x/exp/stats"
)

// wireSlopes are two readings of the share of a rotary cycle that grows with the length of pipe, in
// minutes per km: the median line of the extended barrel in these records (three traverses of the wire
// at about 270 m/min), and the slope of the fastest cores of any tool, which crews run on good days.
var wireSlopes = []float64{11, 8}

// fastest bounds the cutting time of a full core from below, in minutes: times on deck are
// rounded to 5 minutes, so a smaller remainder is only known to be small (judgement).
const fastest = 5

// RateClass is the spread of rotary cutting rates in a class of depth.
type RateClass struct {
	From      float64   `json:"from_km"`
	To        float64   `json:"to_km"`
	Holes     int       `json:"holes"`
	Cores     Spread    `json:"cores_m_per_h"`
	Quantiles []float64 `json:"p5_p25_p75_p95_m_per_h"`
	HoleMed   Spread    `json:"hole_medians_m_per_h"`
	Fast      float64   `json:"share_above_20_m_per_h"`
}

// handlingOf is the part of the rotary cycle that is neither wire nor cutting, in minutes: the 5 %
// quantile of (cycle - wire) over full-length cores in each 0.5-km class of pipe length, the median of
// the classes, less a full core at the fastest cutting. The median keeps out classes of hard rock alone.
func handlingOf(cycles []Cycle, wire float64) float64 {
	rest := map[int][]float64{}
	for _, c := range cycles {
		if c.Cored >= 8 {
			pipe := c.Water + c.Depth
			rest[int(pipe*2)] = append(rest[int(pipe*2)], c.Minutes-wire*pipe)
		}
	}
	var low []float64
	for _, members := range rest {
		if len(members) >= 30 {
			low = append(low, stats.Quantiles(members, 0.05)[0])
		}
	}
	if len(low) == 0 {
		return math.NaN()
	}
	return stats.Median(low) - fastest
}

// cuttingRate is in m/h: length cored over what is left of the cycle.
func (r Rotary) cuttingRate(c Cycle) float64 {
	cutting := c.Minutes - r.Handling - r.Wire*(c.Water+c.Depth)
	return c.Cored / math.Max(cutting, fastest) * 60
}

func (r Rotary) classes(cycles []Cycle, edges []float64, of func(Cycle) float64) []RateClass {
	var classes []RateClass
	for i := 1; i < len(edges); i++ {
		var members []Cycle
		for _, c := range cycles {
			if of(c) >= edges[i-1] && of(c) < edges[i] {
				members = append(members, c)
			}
		}
		if len(members) > 0 {
			classes = append(classes, r.class(members, edges[i-1], edges[i]))
		}
	}
	return classes
}

func (r Rotary) class(members []Cycle, from, to float64) RateClass {
	var medians []float64
	for _, hole := range byHole(members, 1) {
		medians = append(medians, stats.Median(column(hole, r.cuttingRate)))
	}
	all := column(members, r.cuttingRate)
	return RateClass{From: from, To: to, Holes: len(medians), Cores: spread(all), HoleMed: spread(medians),
		Quantiles: stats.Quantiles(all, 0.05, 0.25, 0.75, 0.95), Fast: above(all, 20)}
}

func above(x []float64, limit float64) float64 {
	n := 0
	for _, v := range x {
		if v > limit {
			n++
		}
	}
	return float64(n) / float64(len(x))
}

// Rotary is the study of cutting rates.
type Rotary struct {
	Handling float64     `json:"handling_min"`
	Wire     float64     `json:"wire_min_per_km"`
	All      RateClass   `json:"all"`
	ByWater  []RateClass `json:"by_water_depth"`
	ByDepth  []RateClass `json:"by_depth_below_sea_floor"`
	SD       []float64   `json:"sd_log_rate_leg_hole_core"`
	Lag1     float64     `json:"lag1_correlation_log_rate"`
}

func rotaryOf(holes [][]Cycle, wire float64) Rotary {
	cycles := slices.Concat(holes...)
	r := Rotary{Handling: handlingOf(cycles, wire), Wire: wire}
	r.All = r.class(cycles, 0, 12)
	r.ByWater = r.classes(cycles, []float64{0, 1, 2, 3, 4, 5, 7}, func(c Cycle) float64 { return c.Water })
	r.ByDepth = r.classes(cycles, []float64{0, 0.1, 0.2, 0.4, 0.6, 0.8, 1, 2}, func(c Cycle) float64 { return c.Depth })
	var y []float64
	lag := lagPairs{}
	for _, hole := range holes {
		logs := column(hole, func(c Cycle) float64 { return math.Log(r.cuttingRate(c)) })
		y = append(y, logs...)
		lag.add(logs)
	}
	legs := column(cycles, func(c Cycle) string { return c.Leg })
	names := column(cycles, func(c Cycle) string { return c.Hole })
	r.SD = column(nestedVariances(y, legs, names), math.Sqrt)
	r.Lag1 = lag.correlation()
	return r
}
