package main

import (
	"cmp"
	"math"
	"slices"

	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"
)

// Stop is where piston coring ended in a hole.
type Stop struct {
	Site, Hole string
	Depth      float64 // m below sea floor, bottom of the last piston core
	Changed    bool    // to the extended barrel (refusal); false: the hole ended or went on otherwise
}

// pistonStops walks each hole's piston and extended cores, passing over other tools. Refusal is the
// first extended core that no piston core follows; a hole that goes back to the piston had passed a
// hard layer. Holes without piston cores say nothing.
func pistonStops(cores []Core) []Stop {
	var stops []Stop
	for _, c := range cores {
		if c.Tool != "H" && c.Tool != "X" {
			continue
		}
		n := len(stops)
		if n == 0 || stops[n-1].Hole != c.Hole {
			if c.Tool == "H" {
				stops = append(stops, Stop{Site: c.Site, Hole: c.Hole, Depth: c.Bottom()})
			}
			continue
		}
		if stops[n-1].Changed = c.Tool == "X"; c.Tool == "H" {
			stops[n-1].Depth = c.Bottom()
		}
	}
	return stops
}

// kaplanMeier gives quantiles of the depth of refusal, holes that stopped without it censored
// (Kaplan & Meier 1958, from memory). NaN: the curve does not come down that far.
func kaplanMeier(stops []Stop, at ...float64) []float64 {
	sorted := slices.SortedFunc(slices.Values(stops), func(a, b Stop) int {
		return cmp.Or(cmp.Compare(a.Depth, b.Depth), compareBool(b.Changed, a.Changed)) // refusals before stops of one depth
	})
	quantiles := make([]float64, len(at))
	for q, p := range at {
		quantiles[q] = math.NaN()
		alive := 1.0
		for i, s := range sorted {
			if s.Changed {
				alive *= 1 - 1/float64(len(sorted)-i)
			}
			if alive <= 1-p {
				quantiles[q] = s.Depth
				break
			}
		}
	}
	return quantiles
}

func compareBool(a, b bool) int {
	switch {
	case a == b:
		return 0
	case a:
		return 1
	}
	return -1
}

// Refusal is the depth of change from piston to extended barrel.
type Refusal struct {
	Holes      int     `json:"holes"`
	Changes    int     `json:"changes"`
	Alone      Spread  `json:"changes_alone_mbsf"`
	Survival   Spread  `json:"survival_mbsf"`
	Lognormal  Spread  `json:"censored_lognormal_mbsf"`
	MedianLog  float64 `json:"mean_log_m"`
	SDSite     float64 `json:"sd_log_between_sites"`
	SDHole     float64 `json:"sd_log_between_holes_of_a_site"`
	SiteShare  float64 `json:"share_of_log_variance_between_sites_censored"`
	AloneShare float64 `json:"share_of_log_variance_between_sites_changes_alone"`
	AloneSD    float64 `json:"sd_log_changes_alone"`
}

func refusalOf(stops []Stop) Refusal {
	var depths, logs []float64
	var sites []string
	for _, s := range stops {
		if s.Changed {
			depths, logs, sites = append(depths, s.Depth), append(logs, math.Log(s.Depth)), append(sites, s.Site)
		}
	}
	km := kaplanMeier(stops, 0.1, 0.5, 0.9)
	r := Refusal{Holes: len(stops), Changes: len(depths), Alone: spread(depths),
		Survival:   Spread{len(stops), km[0], km[1], km[2]},
		AloneShare: shares(nestedVariances(logs, sites))[0], AloneSD: stat.StdDev(logs, nil)}
	fit := fitCensored(stops)
	r.MedianLog, r.SDSite, r.SDHole = fit.mean, fit.site, fit.hole
	r.SiteShare = fit.site * fit.site / (fit.site*fit.site + fit.hole*fit.hole)
	total := distuv.LogNormal{Mu: fit.mean, Sigma: math.Hypot(fit.site, fit.hole)}
	r.Lognormal = Spread{len(stops), total.Quantile(0.1), total.Quantile(0.5), total.Quantile(0.9)}
	return r
}
