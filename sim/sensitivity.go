package sim

import (
	"cmp"
	"math"
	"slices"

	"gonum.org/v1/gonum/stat"

	"coredays/model/chance"
	"coredays/model/spread"
	"coredays/model/voyage"
)

// Sensitivity tells how much each quantity matters to the days needed: the squared rank correlation
// (Spearman, textbook) of the days with the score that the quantity had above the level of the run, on
// average over the holes and tasks where it counts. It needs no further runs, since scores
// are keyed. It is NaN for what has no spread above the run: that averages out within an expedition.
// The sea is no quantity; trouble and refusal count by the quantities behind them.
func (r *Results) Sensitivity() []float64 {
	v := r.columns.voyage
	days := ranks(r.column(r.needed, colDays))
	shares := make([]float64, len(v.Quantities))
	places := placesOf(v)
	s := newShip(v)
	for id := range v.Quantities {
		q := &v.Quantities[id]
		shares[id] = math.NaN()
		if q.Fixed || q.Weight[spread.Run] == 1 || len(places[id]) == 0 || voyage.Quantity(id) == v.InPort {
			continue
		}
		var scores []float64
		for n, done := range r.done {
			if done {
				s.luck = chance.Replication(r.run.Seed, n)
				scores = append(scores, s.meanScore(voyage.Quantity(id), places[id]))
			}
		}
		shares[id] = squared(stat.Correlation(ranks(scores), days, nil))
	}
	return shares
}

func squared(correlation float64) float64 {
	if math.IsNaN(correlation) {
		return 0 // nothing varies
	}
	return correlation * correlation
}

// meanScore is the score above the run, on average over places.
func (s *ship) meanScore(id voyage.Quantity, places []place) (mean float64) {
	for _, at := range places {
		s.place = at
		var d drawn
		s.settle(&d, &s.v.Quantities[id], s.v.Purposes[id])
		mean += d.score / float64(len(places))
	}
	return mean
}

// placesOf lists where each quantity counts: a rate in all items of the primary sites, the ground in
// those of its own site, a task in itself.
func placesOf(v *voyage.Voyage) [][]place {
	all := make([][]place, len(v.Quantities))
	for i := range v.Sites {
		site := &v.Sites[i]
		if site.Alternate {
			continue
		}
		var here []place
		for _, item := range site.Items {
			here = append(here, place{site.Key, item.Key})
			if item.Takes != voyage.NoQuantity {
				all[item.Takes] = []place{{site.Key, item.Key}}
			}
		}
		for r := range v.Plan.Ship.Rates {
			all[r] = append(all[r], here...)
		}
		for _, l := range site.Layers {
			for _, q := range append([]voyage.Quantity{l.Strength, l.Rate, l.Ahead}, l.Recovery[:]...) {
				if q != voyage.NoQuantity {
					all[q] = here
				}
			}
		}
	}
	return all
}

// ranks are the places of values in their order, the mean place where some are equal.
func ranks(values []float64) []float64 {
	order := make([]int, len(values))
	for i := range order {
		order[i] = i
	}
	slices.SortFunc(order, func(a, b int) int { return cmp.Compare(values[a], values[b]) })
	ranks := make([]float64, len(values))
	for from := 0; from < len(order); {
		to := from
		for to < len(order) && values[order[to]] == values[order[from]] {
			to++
		}
		for _, i := range order[from:to] {
			ranks[i] = float64(from+to-1) / 2
		}
		from = max(to, from+1)
	}
	return ranks
}
