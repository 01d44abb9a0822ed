package sim

import (
	"math"
	"math/bits"

	"coredays/model/voyage"
)

// What charts draw by depth: when each hole came how deep, and what was cored and came up where.

// depths is what one replication did by depth. Lengths are whole centimetres, so that their sums
// are the same in whatever order replications are added up.
type depths struct {
	marks          []float32 // s after sailing, by item and mark
	cut, recovered []int32   // cm by slice, site after site
}

func newDepths(v *voyage.Voyage) depths {
	n := newSlices(v).all
	return depths{make([]float32, v.Items*depthMarks), make([]int32, n), make([]int32, n)}
}

// reset forgets all. Which marks hold is told by the items.
func (d *depths) reset() {
	clear(d.cut)
	clear(d.recovered)
}

// copyFrom makes the depths those of another ship.
func (d *depths) copyFrom(o *depths) {
	copy(d.marks, o.marks)
	copy(d.cut, o.cut)
	copy(d.recovered, o.recovered)
}

// markDepth notes when the hole in hand first came to each of its marks. Depth 0 is where it was
// spudded.
func (s *ship) markDepth() {
	log := &s.items[s.item.Number]
	target := float64(s.item.Item.AskedFor())
	for log.marks < depthMarks && s.hole.depth >= target*float64(log.marks)/depthSteps-shortest {
		s.depths.marks[s.item.Number*depthMarks+log.marks] = float32(s.clock)
		log.marks++
	}
}

// sectionCut books what was cut and what of it came up, slice by slice; a core is as good at its
// top as at its bottom.
func (s *ship) sectionCut(from, length, share float64) {
	site := s.siteNumber()
	first, end := s.slices.from[site], s.slices.from[site+1]
	for i := first + int(from/slice); i < end; i++ {
		top := float64(i-first) * slice
		part := min(from+length, top+slice) - max(from, top)
		if part <= 0 {
			return
		}
		s.depths.cut[i] += int32(math.Round(100 * part))
		s.depths.recovered[i] += int32(math.Round(100 * part * share))
	}
}

// coveredIn is how many half-metres of a slice of a site came up in at least one hole.
func (s *ship) coveredIn(site, number int) (n int) {
	last := min(s.coverage.bins[site], (number+1)*inSlice)
	for i := number * inSlice; i < last; {
		at := s.coverage.from[site] + i
		many := min(last-i, 64-at%64)
		n += bits.OnesCount64(s.bits[at/64] >> (at % 64) & (1<<many - 1))
		i += many
	}
	return n
}

// addSite adds a site of a replication.
func addSite(a *broughtUp, s *ship, site int) {
	if state := s.sites[site].state; state != underWay && state != done {
		return
	}
	a.visits[site]++
	for i := s.slices.from[site]; i < s.slices.from[site+1]; i++ {
		a.cut[i] += int64(s.depths.cut[i])
		a.recovered[i] += int64(s.depths.recovered[i])
		a.covered[i] += int64(s.coveredIn(site, i-s.slices.from[site]))
	}
}

// keepMarks copies the marks of a site's holes; those that were not reached are NaN.
func keepMarks(to []float32, s *ship, site *voyage.Site) {
	for i := range site.Items {
		n := site.Items[i].Number
		for m := range depthMarks {
			to[n*depthMarks+m] = float32(math.NaN())
			if m < s.items[n].marks {
				to[n*depthMarks+m] = s.depths.marks[n*depthMarks+m]
			}
		}
	}
}

// keepByDepth keeps what a replication did by depth: at primary sites in the whole programme, at
// alternates within the days.
func keepByDepth(r *Results, bound, free *ship, n int, sum *broughtUp) {
	v := r.columns.voyage
	marks := r.marks[n*v.Items*depthMarks:]
	for i := range v.Sites {
		s := free
		if v.Sites[i].Alternate {
			s = bound
		}
		addSite(sum, s, i)
		keepMarks(marks, s, &v.Sites[i])
	}
}
