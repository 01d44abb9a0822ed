package main

import (
	"math"
	"math/rand/v2"

	"gonum.org/v1/gonum/stat/distuv"
)

// holeMetres is the least length cored with a tool that makes a hole's recovery worth a percentage
// (judgement: two or three cores).
const holeMetres = 20

// Recovery is the share of the length cored that was recovered, by tool.
type Recovery struct {
	Cores      int        `json:"cores"`
	Holes      int        `json:"holes"`
	ByLength   float64    `json:"total_by_length"`
	LengthErr  float64    `json:"standard_error_total"`
	Holewise   Spread     `json:"holes_share"`
	Below80    float64    `json:"share_of_holes_below_80_percent"`
	Zero       float64    `json:"share_of_cores_zero"`
	Above100   float64    `json:"share_of_cores_above_100_percent"`
	Corewise   Spread     `json:"cores_share"`
	InHole     Spread     `json:"core_less_hole_share"`
	Shares     []float64  `json:"score_variance_leg_hole_core"`
	SharesSite []float64  `json:"score_variance_leg_site_hole_core"`
	Lag1       float64    `json:"lag1_correlation_of_scores_in_hole"`
	Marginals  []Marginal `json:"generators"`
}

// Marginal is a generator of recovery: the distribution of a core's share, and how much of its
// normal score the cores of a hole have in common.
type Marginal struct {
	Weight    string    `json:"weight"` // each core alike, or each hole alike
	At        []float64 `json:"at"`
	Quantiles []float64 `json:"quantiles"`
	HoleShare float64   `json:"share_of_hole"`
	Holewise  Spread    `json:"generated_holes_share"`
	Below80   float64   `json:"generated_share_of_holes_below_80_percent"`
	ByLength  float64   `json:"generated_total_by_length"`
}

// recovered is the core's share. A blank is a core that brought nothing: in every hole with blanks
// the hole's published total equals the sum of the cores without them.
func recovered(c Core) float64 {
	if math.IsNaN(c.Recovered) {
		return 0
	}
	return c.Recovered / c.Cored
}

// coredHoles groups one tool's cores by hole. Cores under a metre are left out: a short advance
// divides a rounding into a ratio of hundreds of percent.
func coredHoles(cores []Core, tool string) [][]Core {
	var holes [][]Core
	for _, c := range cores {
		if c.Tool != tool || c.Cored < 1 {
			continue
		}
		if n := len(holes); n > 0 && holes[n-1][0].Hole == c.Hole {
			holes[n-1] = append(holes[n-1], c)
			continue
		}
		holes = append(holes, []Core{c})
	}
	return holes
}

// lengthShare is recovered over cored metres, and the metres cored.
func lengthShare(hole []Core, share func(Core) float64) (part, cored float64) {
	up := 0.0
	for _, c := range hole {
		up += share(c) * c.Cored
		cored += c.Cored
	}
	return up / cored, cored
}

func holeShares(holes [][]Core, share func(Core) float64) []float64 {
	var parts []float64
	for _, hole := range holes {
		if part, cored := lengthShare(hole, share); cored >= holeMetres {
			parts = append(parts, part)
		}
	}
	return parts
}

// generate draws each hole of the records anew: per core the marginal at
// z = sqrt(share)·z_hole + sqrt(1-share)·z_core. A hole keeps its cores and their lengths.
func generate(holes [][]Core, table []float64, share float64, times int) (parts []float64, total float64) {
	random := rand.New(rand.NewPCG(3, 4))
	up, all := 0.0, 0.0
	for range times {
		for _, hole := range holes {
			common := math.Sqrt(share) * random.NormFloat64()
			part, cored := lengthShare(hole, func(Core) float64 {
				z := common + math.Sqrt(1-share)*random.NormFloat64()
				return fromTable(table, distuv.UnitNormal.CDF(z))
			})
			up, all = up+part*cored, all+cored
			if cored >= holeMetres {
				parts = append(parts, part)
			}
		}
	}
	return parts, up / all
}

// calibrate finds the hole share whose generated holes have the same P10, P50 and P90 as the records':
// least squares over shares of 0.02 to 0.98. Ties at zero and at full recovery flatten the scores,
// so the share by moments is too small for that.
func calibrate(holes [][]Core, table []float64, wanted Spread) float64 {
	best, least := 0.0, math.Inf(1)
	for share := 0.02; share < 0.99; share += 0.02 {
		parts, _ := generate(holes, table, share, 4)
		got := spread(parts)
		miss := math.Hypot(math.Hypot(got.P10-wanted.P10, got.P50-wanted.P50), got.P90-wanted.P90)
		if miss < least {
			best, least = share, miss
		}
	}
	return best
}
