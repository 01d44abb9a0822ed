package main

import (
	"math"

	"golang.org/x/exp/stats"
	"gonum.org/v1/gonum/stat"
)

// leastCycles is the fewest cycles that make a hole's median worth comparing with (judgement).
const leastCycles = 5

// Levels is the spread of the logarithm of cycle time about the tool's line. Trouble is left out:
// it is counted as a hazard there and only there.
type Levels struct {
	Cycles     int       `json:"cycles"`
	Holes      int       `json:"holes"`
	Legs       int       `json:"legs"`
	SD         []float64 `json:"sd_log_leg_hole_run"`
	StdErr     []float64 `json:"standard_error_sd"`
	Shares     []float64 `json:"share_leg_hole_run"`
	SharesSite []float64 `json:"share_leg_site_hole_run"`
	Robust     []float64 `json:"robust_sd_legs_all_holes_run"` // leg medians, hole medians over all legs, cycles in their hole; trouble left in
	Lag1       float64   `json:"lag1_correlation_in_hole"`
	Lag1Raw    float64   `json:"lag1_correlation_not_corrected_for_hole_mean"`
	MeanRatio  float64   `json:"mean_of_ordinary_cycle_over_hole_median"`
}

type residual struct {
	Cycle
	log     float64 // ln(time / line)
	ratio   float64 // time / hole median
	trouble bool
}

// residualsOf compares each cycle with the line and with its hole's median.
func residualsOf(holes [][]Cycle, line func(Cycle) float64) [][]residual {
	all := make([][]residual, len(holes))
	for h, hole := range holes {
		median := stats.Median(minutes(hole))
		for _, c := range hole {
			all[h] = append(all[h], residual{Cycle: c, log: math.Log(c.Minutes / line(c)), ratio: c.Minutes / median})
		}
	}
	return all
}

func ordinary(hole []residual) []residual {
	var kept []residual
	for _, r := range hole {
		if !r.trouble {
			kept = append(kept, r)
		}
	}
	return kept
}

func levelsOf(holes [][]residual) Levels {
	var rows []residual
	lag := lagPairs{}
	for _, hole := range holes {
		kept := ordinary(hole)
		rows = append(rows, kept...)
		lag.add(column(kept, logOf))
	}
	legs := column(rows, func(r residual) string { return r.Leg })
	sites := column(rows, func(r residual) string { return r.Site })
	names := column(rows, func(r residual) string { return r.Hole })
	y := column(rows, logOf)
	v := nestedVariances(y, legs, names)
	return Levels{Cycles: len(rows), Holes: len(holes), Legs: len(groupRows(legs, len(legs))),
		SD: column(v, math.Sqrt), Shares: shares(v), StdErr: levelErrors(y, legs, names),
		SharesSite: shares(nestedVariances(y, legs, sites, names)),
		Robust:     robustLevels(holes),
		Lag1Raw:    lag.raw(), Lag1: lag.correlation(), MeanRatio: stat.Mean(column(rows, ratioOf), nil)}
}

// levelErrors are the standard errors of the three standard deviations, over legs.
func levelErrors(y []float64, legs, holes []string) []float64 {
	return legBootstrap(legs, func(pick []int) []float64 {
		// A leg drawn twice counts as two legs, or its own spread would be lost.
		z, l, h := make([]float64, len(pick)), make([]string, len(pick)), make([]string, len(pick))
		copies := map[int]int{}
		for i, p := range pick {
			mark := string(rune('a' + copies[p]))
			copies[p]++
			z[i], l[i], h[i] = y[p], legs[p]+mark, holes[p]+mark
		}
		return column(nestedVariances(z, l, h), math.Sqrt)
	})
}

// robustLevels are spreads of medians: of the legs', of all holes', of the cycles about their hole's.
func robustLevels(holes [][]residual) []float64 {
	var ofHoles, ofLegs, rest []float64
	for _, hole := range holes {
		centre := stats.Median(column(hole, logOf))
		ofHoles = append(ofHoles, centre)
		for _, r := range hole {
			rest = append(rest, r.log-centre)
		}
	}
	for _, effect := range legEffects(holes) {
		ofLegs = append(ofLegs, effect)
	}
	return []float64{robustSD(ofLegs), robustSD(ofHoles), robustSD(rest)}
}

// robustSD is 1.4826 times the median absolute deviation: the standard deviation if normal.
func robustSD(x []float64) float64 {
	centre := stats.Median(x)
	return 1.4826 * stats.Median(column(x, func(v float64) float64 { return math.Abs(v - centre) }))
}

func logOf(r residual) float64   { return r.log }
func ratioOf(r residual) float64 { return r.ratio }
