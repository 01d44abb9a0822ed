package sim

import (
	"math"

	"coredays/model/activity"
	"coredays/model/voyage"
)

// writeRow fills a row from a ship that is home.
func writeRow(c columns, r row, s *ship) {
	r[colDays] = s.clock
	r[colInPort] = s.inPort
	r[colInHand] = c.voyage.Deadline - s.clock
	r[colNever] = flag(s.stuck)
	r[colBehind], r[colMostCores] = s.deck.behind, float64(s.deck.mostCores)
	clear(r[colClass:colTool])
	for k, t := range s.spent {
		traits := activity.Kind(k).Of()
		r[colClass+int(traits.Class)] += t
		r[colCause+int(traits.Cause)] += t
	}
	for t, log := range s.tools {
		copy(r[colTool+3*t:], []float64{float64(log.cores), log.cored, log.recovered})
	}
	for i, n := range s.used {
		r[colUsed+i] = float64(n)
	}
	r[colAll], r[colFirst] = 1, 1
	for i := range s.sites {
		writeSite(c, r, s, i)
	}
}

func writeSite(c columns, r row, s *ship, n int) {
	log, site := &s.sites[n], &c.voyage.Sites[n]
	reached := log.state == underWay || log.state == done
	complete := true
	for i := range site.Items {
		item := &site.Items[i]
		undone := writeItem(c, r, s, item)
		complete = complete && !undone
		if !site.Alternate && undone {
			r[colAll] = 0
			if item.Rank <= 1 {
				r[colFirst] = 0
			}
		}
	}
	values := [siteColumns]float64{flag(reached), flag(complete), log.arrived, log.left, log.waited,
		log.cored, log.recovered, float64(log.cores), s.covered(n)}
	if !reached {
		for i := siteArrived; i < siteColumns; i++ {
			values[i] = math.NaN()
		}
	}
	copy(r[c.site(n, 0):], values[:])
}

// writeItem tells whether an item was left undone. What is not called for is not.
func writeItem(c columns, r row, s *ship, i *voyage.Item) (undone bool) {
	log := &s.items[i.Number]
	complete, notCalled := log.state == done && !log.incomplete, log.state == notCalled
	values := [itemColumns]float64{flag(complete), flag(notCalled), log.took, log.depth, log.refused, log.covered, log.cored, log.recovered}
	if log.began == 0 {
		for i := itemTook; i < itemColumns; i++ {
			values[i] = math.NaN()
		}
	}
	if log.refused == 0 {
		values[itemRefused] = math.NaN()
	}
	copy(r[c.item(i.Number, 0):], values[:])
	return !complete && !notCalled
}

func flag(yes bool) float64 {
	if yes {
		return 1
	}
	return 0
}
