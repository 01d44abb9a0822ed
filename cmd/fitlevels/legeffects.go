package main

import (
	"golang.org/x/exp/stats"
	"gonum.org/v1/gonum/stat"
)

// Pair is the correlation of leg effects between two tools.
type Pair struct {
	A           string  `json:"a"`
	B           string  `json:"b"`
	Legs        int     `json:"legs"`
	Correlation float64 `json:"correlation"`
}

// legEffects is the median residual of each leg's hole medians: one number a leg and tool.
func legEffects(holes [][]residual) map[string]float64 {
	of := map[string][]float64{}
	for _, hole := range holes {
		leg := hole[0].Leg
		of[leg] = append(of[leg], stats.Median(column(hole, logOf)))
	}
	effects := map[string]float64{}
	for leg, medians := range of {
		effects[leg] = stats.Median(medians)
	}
	return effects
}

// legPairs correlates the effects of the legs that used both tools.
func legPairs(effects map[string]map[string]float64, legs []string) []Pair {
	var pairs []Pair
	for i, a := range tools {
		for _, b := range tools[i+1:] {
			var x, y []float64
			for _, leg := range legs {
				u, inA := effects[a][leg]
				v, inB := effects[b][leg]
				if inA && inB {
					x, y = append(x, u), append(y, v)
				}
			}
			if len(x) > 2 {
				pairs = append(pairs, Pair{a, b, len(x), stat.Correlation(x, y, nil)})
			}
		}
	}
	return pairs
}
