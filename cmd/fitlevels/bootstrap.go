package main

import (
	"math"
	"math/rand/v2"

	"gonum.org/v1/gonum/stat"
)

// resamples is the number of bootstrap samples: a standard error known to about 5 %.
const resamples = 200

// legBootstrap draws whole legs with replacement and returns the standard deviation of each
// estimate. Its seed is fixed, so that the study repeats to the last digit.
func legBootstrap(legs []string, estimate func(rows []int) []float64) []float64 {
	members := map[string][]int{}
	var names []string
	for i, leg := range legs {
		if members[leg] == nil {
			names = append(names, leg)
		}
		members[leg] = append(members[leg], i)
	}
	random := rand.New(rand.NewPCG(1, 2))
	var draws [][]float64
	for range resamples {
		var pick []int
		for range names {
			pick = append(pick, members[names[random.IntN(len(names))]]...)
		}
		for i, e := range estimate(pick) {
			if len(draws) <= i {
				draws = append(draws, nil)
			}
			if !math.IsNaN(e) {
				draws[i] = append(draws[i], e)
			}
		}
	}
	return column(draws, func(d []float64) float64 { return stat.StdDev(d, nil) })
}

// legMeanError is the standard error of a mean over legs.
func legMeanError(legs []string, x []float64) float64 {
	return legBootstrap(legs, func(pick []int) []float64 {
		return []float64{stat.Mean(column(pick, func(p int) float64 { return x[p] }), nil)}
	})[0]
}
