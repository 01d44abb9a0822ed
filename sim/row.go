package sim

import (
	"math"

	"coredays/model/activity"
	"coredays/model/voyage"
	"coredays/sim/statistics"
)

// writeRow fills a row from a ship that is home.
func writeRow(c statistics.Layout, r statistics.Row, s *ship) {
	r[statistics.ColDays] = s.clock
	r[statistics.ColInPort] = s.inPort
	r[statistics.ColInHand] = c.Voyage.Deadline - s.clock
	r[statistics.ColNever] = flag(s.stuck)
	r[statistics.ColBehind], r[statistics.ColMostCores] = s.deck.behind, float64(s.deck.mostCores)
	clear(r[statistics.ColClass:statistics.ColTool])
	for k, t := range s.spent {
		traits := activity.Kind(k).Of()
		r[statistics.ColClass+int(traits.Class)] += t
		r[statistics.ColCause+int(traits.Cause)] += t
	}
	for t, log := range s.tools {
		copy(r[statistics.ColTool+3*t:], []float64{float64(log.cores), log.cored, log.recovered})
	}
	for i, n := range s.consumed {
		r[statistics.ColUsed+i] = float64(n)
	}
	r[statistics.ColAll], r[statistics.ColFirst] = 1, 1
	for i := range s.sites {
		writeSite(c, r, s, i)
	}
}

func writeSite(c statistics.Layout, r statistics.Row, s *ship, n int) {
	log, site := &s.sites[n], &c.Voyage.Sites[n]
	reached := log.state == underWay || log.state == done
	complete := true
	for i := range site.Items {
		item := &site.Items[i]
		undone := writeItem(c, r, s, item)
		complete = complete && !undone
		if !site.Alternate && undone {
			r[statistics.ColAll] = 0
			if item.Rank <= 1 {
				r[statistics.ColFirst] = 0
			}
		}
	}
	values := [statistics.SiteColumns]float64{flag(reached), flag(complete), log.arrived, log.left, log.waited,
		log.cored, log.recovered, float64(log.cores), s.covered(n)}
	if !reached {
		for i := statistics.SiteArrived; i < statistics.SiteColumns; i++ {
			values[i] = math.NaN()
		}
	}
	copy(r[c.Site(n, 0):], values[:])
}

// writeItem reports whether an item was left undone. What is not called for is not.
func writeItem(c statistics.Layout, r statistics.Row, s *ship, i *voyage.Item) (undone bool) {
	log := &s.items[i.Number]
	complete, notCalled := log.state == done && !log.incomplete, log.state == notCalled
	values := [statistics.ItemColumns]float64{flag(complete), flag(notCalled), log.took, log.depth, log.refused, log.covered, log.cored, log.recovered}
	if log.began == 0 {
		for i := statistics.ItemTook; i < statistics.ItemColumns; i++ {
			values[i] = math.NaN()
		}
	}
	if log.refused == 0 {
		values[statistics.ItemRefused] = math.NaN()
	}
	copy(r[c.Item(i.Number, 0):], values[:])
	return !complete && !notCalled
}

func flag(yes bool) float64 {
	if yes {
		return 1
	}
	return 0
}
