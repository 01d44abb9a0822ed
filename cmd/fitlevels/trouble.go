package main

import (
	"slices"

	"golang.org/x/exp/stats"
	"gonum.org/v1/gonum/stat"
)

// Spread is a P10/P50/P90 of a sample.
type Spread struct {
	N   int     `json:"n"`
	P10 float64 `json:"p10"`
	P50 float64 `json:"p50"`
	P90 float64 `json:"p90"`
}

func spread(x []float64) Spread {
	if len(x) == 0 {
		return Spread{}
	}
	q := stats.Quantiles(x, 0.1, 0.5, 0.9)
	return Spread{len(x), q[0], q[1], q[2]}
}

// troubleRatio parts ordinary cycles from trouble.
const troubleRatio = 2

// Split is one way to part ordinary spread from trouble; the two belong together.
type Split struct {
	Rule    string  `json:"rule"`
	Levels  Levels  `json:"levels"`
	Trouble Trouble `json:"trouble"`
}

// splitsOf parts the cycles by two rules: above twice the hole's median, and above twice its
// neighbours as well. In hard or changing rock a slow core among slow cores is the ground, not trouble:
// the second rule leaves it to the spread and the correlation of runs.
func splitsOf(holes [][]residual) []Split {
	byHole := func([]residual, int) bool { return true }
	byNeighbours := func(hole []residual, i int) bool { return hole[i].Minutes > troubleRatio*neighbours(hole, i) }
	return []Split{splitBy("above 2 x hole median", holes, byHole),
		splitBy("above 2 x hole median and 2 x six neighbours", holes, byNeighbours)}
}

func splitBy(rule string, holes [][]residual, also func([]residual, int) bool) Split {
	for _, hole := range holes {
		for i := range hole {
			hole[i].trouble = hole[i].ratio > troubleRatio && also(hole, i)
		}
	}
	return Split{rule, levelsOf(holes), troubleOf(holes)}
}

// neighbours is the median time of up to three cycles on each side.
func neighbours(hole []residual, i int) float64 {
	near := slices.Concat(hole[max(0, i-3):i], hole[i+1:min(len(hole), i+4)])
	return stats.Median(column(near, func(r residual) float64 { return r.Minutes }))
}

// Trouble is the hazard of a cycle, and the time it loses: what it took beyond the hole's median.
type Trouble struct {
	Cycles     int     `json:"cycles"`
	Chance     float64 `json:"chance_per_core"`
	ChanceErr  float64 `json:"standard_error_chance"`
	MeanRatio  float64 `json:"mean_excess_over_median"`
	MeanHours  float64 `json:"mean_excess_h"`
	Hours      Spread  `json:"excess_h"`
	Ratio      Spread  `json:"excess_over_median"`
	TotalRatio float64 `json:"mean_of_all_cycles_over_hole_median"`
}

func troubleOf(holes [][]residual) Trouble {
	var hours, ratios, all, hit []float64
	var legs []string
	for _, hole := range holes {
		for _, r := range hole {
			legs, all, hit = append(legs, r.Leg), append(all, r.ratio), append(hit, 0)
			if r.trouble {
				hit[len(hit)-1] = 1
				ratios = append(ratios, r.ratio-1)
				hours = append(hours, r.Minutes*(1-1/r.ratio)/60)
			}
		}
	}
	t := Trouble{Cycles: len(all), Chance: stat.Mean(hit, nil), ChanceErr: legMeanError(legs, hit),
		Hours: spread(hours), Ratio: spread(ratios), TotalRatio: stat.Mean(all, nil)}
	if len(hours) > 0 {
		t.MeanHours, t.MeanRatio = stat.Mean(hours, nil), stat.Mean(ratios, nil)
	}
	return t
}
