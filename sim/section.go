package sim

import (
	"math"
	"math/bits"

	"coredays/model/voyage"
	"coredays/sim/statistics"
)

// What charts draw by depth: when each hole came how deep, and what was cored and was recovered where.

// depths is what one replication did by depth. Lengths are whole centimetres, so that their sums
// are the same in whatever order replications are added up.
type depths struct {
	marks          []float32 // s after sailing, by item and mark
	cut, recovered []int32   // cm by slice, site after site
}

func newDepths(v *voyage.Voyage) depths {
	n := statistics.NewSlices(v).All
	return depths{make([]float32, v.Items*statistics.DepthMarks), make([]int32, n), make([]int32, n)}
}

// reset forgets all. Which marks hold is given by the items.
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
	for log.marks < statistics.DepthMarks && s.hole.depth >= target*float64(log.marks)/statistics.DepthSteps-shortest {
		s.depths.marks[s.item.Number*statistics.DepthMarks+log.marks] = float32(s.clock)
		log.marks++
	}
}

// sectionCut marks what was cut and what of it was recovered, slice by slice; a core is as good at its
// top as at its bottom.
func (s *ship) sectionCut(from, length, share float64) {
	site := s.siteNumber()
	first, end := s.slices.From[site], s.slices.From[site+1]
	for i := first + int(from/statistics.Slice); i < end; i++ {
		top := float64(i-first) * statistics.Slice
		part := min(from+length, top+statistics.Slice) - max(from, top)
		if part <= 0 {
			return
		}
		s.depths.cut[i] += int32(math.Round(100 * part))
		s.depths.recovered[i] += int32(math.Round(100 * part * share))
	}
}

// coveredIn is how many half-metres of a slice of a site was recovered in at least one hole.
func (s *ship) coveredIn(site, number int) (n int) {
	last := min(s.coverage.bins[site], (number+1)*statistics.InSlice)
	for i := number * statistics.InSlice; i < last; {
		at := s.coverage.from[site] + i
		many := min(last-i, 64-at%64)
		n += bits.OnesCount64(s.bits[at/64] >> (at % 64) & (1<<many - 1))
		i += many
	}
	return n
}

// addSite adds a site of a replication.
func addSite(a *statistics.BroughtUp, s *ship, site int) {
	if state := s.sites[site].state; state != underWay && state != done {
		return
	}
	a.Visits[site]++
	for i := s.slices.From[site]; i < s.slices.From[site+1]; i++ {
		a.Cut[i] += int64(s.depths.cut[i])
		a.Recovered[i] += int64(s.depths.recovered[i])
		a.Covered[i] += int64(s.coveredIn(site, i-s.slices.From[site]))
	}
}

// keepMarks copies the marks of a site's holes; those that were not reached are NaN.
func keepMarks(to []float32, s *ship, site *voyage.Site) {
	for i := range site.Items {
		n := site.Items[i].Number
		for m := range statistics.DepthMarks {
			to[n*statistics.DepthMarks+m] = float32(math.NaN())
			if m < s.items[n].marks {
				to[n*statistics.DepthMarks+m] = s.depths.marks[n*statistics.DepthMarks+m]
			}
		}
	}
}

// keepByDepth keeps what a replication did by depth: at primary sites in the whole programme, at
// alternates within the days.
func keepByDepth(r *statistics.Results, bound, free *ship, n int, sum *statistics.BroughtUp) {
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

// coverage says where the recovered half-metres of each site stand in a row of bits.
type coverage struct {
	from, bins []int
}

// newCoverage lays out the bits of all sites.
func newCoverage(v *voyage.Voyage) (c coverage, words int) {
	for i := range v.Sites {
		n := int(v.Sites[i].Section / statistics.Bin)
		c.from = append(c.from, words*64)
		c.bins = append(c.bins, n)
		words += (n + 63) / 64
	}
	return c, words
}

// cover marks a recovered interval.
func (s *ship) cover(from, to float64) {
	site := s.siteNumber()
	last := min(int(to/statistics.Bin+0.5), s.coverage.bins[site])
	for i := max(0, int(from/statistics.Bin+0.5)); i < last; i++ {
		at := s.coverage.from[site] + i
		s.bits[at/64] |= 1 << (at % 64)
	}
}

// covered is the share of the section of a site, down to its deepest target, that was recovered in at
// least one hole.
func (s *ship) covered(site int) float64 {
	if s.coverage.bins[site] == 0 {
		return 0
	}
	n := 0
	from := s.coverage.from[site] / 64
	for _, word := range s.bits[from : from+(s.coverage.bins[site]+63)/64] {
		n += bits.OnesCount64(word)
	}
	return float64(n) / float64(s.coverage.bins[site])
}
