package ship

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
	Marks          []float32 // s after sailing, by item and mark
	Cut, Recovered []int32   // cm by slice, site after site
}

func newDepths(v *voyage.Voyage) depths {
	n := statistics.NewSlices(v).All
	return depths{make([]float32, v.Items*statistics.DepthMarks), make([]int32, n), make([]int32, n)}
}

// reset forgets all. Which marks hold is given by the items.
func (d *depths) reset() {
	clear(d.Cut)
	clear(d.Recovered)
}

// copyFrom makes the depths those of another ship.
func (d *depths) copyFrom(o *depths) {
	copy(d.Marks, o.Marks)
	copy(d.Cut, o.Cut)
	copy(d.Recovered, o.Recovered)
}

// MarkDepth notes when the hole in hand first came to each of its marks. Depth 0 is where it was
// spudded.
func (s *Ship) MarkDepth() {
	log := &s.Items[s.Item.Number]
	target := float64(s.Item.Item.AskedFor())
	for log.Marks < statistics.DepthMarks && s.Hole.Depth >= target*float64(log.Marks)/statistics.DepthSteps-Shortest {
		s.Depths.Marks[s.Item.Number*statistics.DepthMarks+log.Marks] = float32(s.Clock)
		log.Marks++
	}
}

// sectionCut marks what was cut and what of it was recovered, slice by slice; a core is as good at its
// top as at its bottom.
func (s *Ship) sectionCut(from, length, share float64) {
	site := s.SiteNumber()
	first, end := s.Slices.From[site], s.Slices.From[site+1]
	for i := first + int(from/statistics.Slice); i < end; i++ {
		top := float64(i-first) * statistics.Slice
		part := min(from+length, top+statistics.Slice) - max(from, top)
		if part <= 0 {
			return
		}
		s.Depths.Cut[i] += int32(math.Round(100 * part))
		s.Depths.Recovered[i] += int32(math.Round(100 * part * share))
	}
}

// CoveredIn is how many half-metres of a slice of a site was recovered in at least one hole.
func (s *Ship) CoveredIn(site, number int) (n int) {
	last := min(s.coverage.bins[site], (number+1)*statistics.InSlice)
	for i := number * statistics.InSlice; i < last; {
		at := s.coverage.from[site] + i
		many := min(last-i, 64-at%64)
		n += bits.OnesCount64(s.bits[at/64] >> (at % 64) & (1<<many - 1))
		i += many
	}
	return n
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
func (s *Ship) cover(from, to float64) {
	site := s.SiteNumber()
	last := min(int(to/statistics.Bin+0.5), s.coverage.bins[site])
	for i := max(0, int(from/statistics.Bin+0.5)); i < last; i++ {
		at := s.coverage.from[site] + i
		s.bits[at/64] |= 1 << (at % 64)
	}
}

// Covered is the share of the section of a site, down to its deepest target, that was recovered in at
// least one hole.
func (s *Ship) Covered(site int) float64 {
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
