package main

import (
	"math"

	"gonum.org/v1/gonum/stat"
)

// failedDepth is the depth below sea floor above which a hole counts as failed or as a mudline trial, in m.
const failedDepth = 20

// Failed counts the holes that stopped near the mudline.
type Failed struct {
	Holes       int     `json:"holes_with_known_depth"`
	Share       float64 `json:"share_of_holes_above_20_m"`
	ShareErr    float64 `json:"standard_error"`
	Sites       int     `json:"sites"`
	SitesWith   float64 `json:"share_of_sites_with_one"`
	ByOrder     Orders  `json:"by_place_of_hole"`
	PerSite     []int   `json:"sites_by_number_of_failed_holes"`
	WithoutCore int     `json:"holes_without_cores"`
	AndNext     float64 `json:"share_after_a_failed_hole"`
}

// Orders is the share of failed holes among a site's first, middle, last and only holes.
type Orders struct {
	First  float64 `json:"first_of_several"`
	Middle float64 `json:"middle"`
	Last   float64 `json:"last_of_several"`
	Only   float64 `json:"only"`
}

func failedOf(holes []Hole) Failed {
	f := Failed{PerSite: make([]int, 6)}
	var hit []float64
	var legs []string
	site := map[string]int{}
	var place [4]struct{ failed, all float64 }
	var after struct{ failed, all float64 }
	previous := Hole{}
	for _, h := range holes {
		if h.Cores == 0 {
			f.WithoutCore++
		}
		if math.IsNaN(h.Penetration) {
			continue
		}
		failed := 0.0
		if h.Penetration < failedDepth {
			failed = 1
		}
		site[h.Site] += int(failed)
		hit, legs = append(hit, failed), append(legs, h.Leg)
		p := &place[placeOf(h)]
		p.all++
		p.failed += failed
		if previous.Site == h.Site && h.Order == previous.Order+1 && previous.Penetration < failedDepth {
			after.all++
			after.failed += failed
		}
		previous = h
	}
	f.Holes, f.Sites = len(hit), len(site)
	for _, n := range site {
		f.PerSite[min(n, len(f.PerSite)-1)]++
	}
	f.SitesWith = 1 - float64(f.PerSite[0])/float64(f.Sites)
	f.Share, f.ShareErr = stat.Mean(hit, nil), legMeanError(legs, hit)
	f.ByOrder = Orders{place[0].failed / place[0].all, place[1].failed / place[1].all, place[2].failed / place[2].all, place[3].failed / place[3].all}
	f.AndNext = after.failed / after.all
	return f
}

func placeOf(h Hole) int {
	switch {
	case h.Holes == 1:
		return 3
	case h.First():
		return 0
	case h.Last():
		return 2
	}
	return 1
}
