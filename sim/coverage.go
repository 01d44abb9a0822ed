package sim

import (
	"math/bits"

	"coredays/model/voyage"
)

// coverage says where the recovered half-metres of each site stand in a row of bits.
type coverage struct {
	from, bins []int
}

// newCoverage lays out the bits of all sites.
func newCoverage(v *voyage.Voyage) (c coverage, words int) {
	for i := range v.Sites {
		n := int(v.Sites[i].Section / bin)
		c.from = append(c.from, words*64)
		c.bins = append(c.bins, n)
		words += (n + 63) / 64
	}
	return c, words
}

// cover marks a recovered interval.
func (s *ship) cover(from, to float64) {
	site := s.siteNumber()
	last := min(int(to/bin+0.5), s.coverage.bins[site])
	for i := max(0, int(from/bin+0.5)); i < last; i++ {
		at := s.coverage.from[site] + i
		s.bits[at/64] |= 1 << (at % 64)
	}
}

// covered is the share of the section of a site, down to its deepest target, that came up in at
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
