package sim

import (
	"math"

	"coredays/model/activity"
	"coredays/model/voyage"
	"coredays/sim/ship"
	"coredays/sim/statistics"
)

// writeRow fills a row from a ship that is home.
func writeRow(c statistics.Layout, r statistics.Row, s *expedition) {
	r[statistics.ColDays] = s.Clock
	r[statistics.ColInPort] = s.InPort
	r[statistics.ColInHand] = c.Voyage.Deadline - s.Clock
	r[statistics.ColNever] = flag(s.Stuck)
	r[statistics.ColBehind], r[statistics.ColMostCores] = s.Deck.Behind, float64(s.Deck.MostCores)
	clear(r[statistics.ColClass:statistics.ColTool])
	for k, t := range s.Spent {
		traits := activity.Kind(k).Of()
		r[statistics.ColClass+int(traits.Class)] += t
		r[statistics.ColCause+int(traits.Cause)] += t
	}
	for t, log := range s.Tools {
		copy(r[statistics.ColTool+3*t:], []float64{float64(log.Cores), log.Cored, log.Recovered})
	}
	for i, n := range s.Consumed {
		r[statistics.ColUsed+i] = float64(n)
	}
	r[statistics.ColAll], r[statistics.ColFirst] = 1, 1
	for i := range s.Sites {
		writeSite(c, r, s, i)
	}
}

func writeSite(c statistics.Layout, r statistics.Row, s *expedition, n int) {
	log, site := &s.Sites[n], &c.Voyage.Sites[n]
	reached := log.State == ship.UnderWay || log.State == ship.Done
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
	values := [statistics.SiteColumns]float64{flag(reached), flag(complete), log.Arrived, log.Left, log.Waited,
		log.Cored, log.Recovered, float64(log.Cores), s.Covered(n)}
	if !reached {
		for i := statistics.SiteArrived; i < statistics.SiteColumns; i++ {
			values[i] = math.NaN()
		}
	}
	copy(r[c.Site(n, 0):], values[:])
}

// writeItem reports whether an item was left undone. What is not called for is not.
func writeItem(c statistics.Layout, r statistics.Row, s *expedition, i *voyage.Item) (undone bool) {
	log := &s.Items[i.Number]
	complete, notCalled := log.State == ship.Done && !log.Incomplete, log.State == ship.NotCalled
	values := [statistics.ItemColumns]float64{flag(complete), flag(notCalled), log.Took, log.Depth, log.Refused, log.Covered, log.Cored, log.Recovered}
	if log.Began == 0 {
		for i := statistics.ItemTook; i < statistics.ItemColumns; i++ {
			values[i] = math.NaN()
		}
	}
	if log.Refused == 0 {
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

// addSite adds a site of a replication.
func addSite(a *statistics.BroughtUp, s *expedition, site int) {
	if state := s.Sites[site].State; state != ship.UnderWay && state != ship.Done {
		return
	}
	a.Visits[site]++
	for i := s.Slices.From[site]; i < s.Slices.From[site+1]; i++ {
		a.Cut[i] += int64(s.Depths.Cut[i])
		a.Recovered[i] += int64(s.Depths.Recovered[i])
		a.Covered[i] += int64(s.CoveredIn(site, i-s.Slices.From[site]))
	}
}

// keepMarks copies the marks of a site's holes; those that were not reached are NaN.
func keepMarks(to []float32, s *expedition, site *voyage.Site) {
	for i := range site.Items {
		n := site.Items[i].Number
		for m := range statistics.DepthMarks {
			to[n*statistics.DepthMarks+m] = float32(math.NaN())
			if m < s.Items[n].Marks {
				to[n*statistics.DepthMarks+m] = s.Depths.Marks[n*statistics.DepthMarks+m]
			}
		}
	}
}

// keepByDepth keeps what a replication did by depth: at primary sites in the whole programme, at
// alternates within the days.
func keepByDepth(r *statistics.Results, bound, free *expedition, n int, sum *statistics.BroughtUp) {
	v := r.Layout.Voyage
	marks := r.Marks[n*v.Items*statistics.DepthMarks:]
	for i := range v.Sites {
		s := free
		if v.Sites[i].Alternate {
			s = bound
		}
		addSite(sum, s, i)
		keepMarks(marks, s, &v.Sites[i])
	}
}
