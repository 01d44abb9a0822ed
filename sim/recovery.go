package sim

import (
	"math"

	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/sim/statistics"
)

// What is recovered: a core's share of what was cut, in a sea that costs some of it, and where its
// section stands beside that of the other holes.

// recovers draws the share of a core that is recovered. Heave costs recovery before it stops the work.
func (s *ship) recovers(t coring.Tool, depth float64) float64 {
	layer := &s.here.Layers[s.layer(depth)]
	return s.shoeRecovers(t, depth, max(0, s.Draw(layer.Recovery[t]))) * (1 - s.Rate(rig.HeaveLoss)*s.roughness(t))
}

// roughness is how near the sea is to the limit of a tool: 0 up to half of it, 1 at it.
func (s *ship) roughness(t coring.Tool) float64 {
	return min(1, max(0, 2*s.sea.height/s.here.Most[t.Of().Limit]-1))
}

// recordCore notes a core of a cut length from a depth and the share of it that was recovered.
func (s *ship) recordCore(t coring.Tool, from, length, share float64) {
	s.hole.cores++
	s.splice(t, from, length, min(1, share))
	s.sectionCut(from, length, share)
	s.countCore(t, length, length*share)
	s.cores.note(s, t, length, length*share)
	if s.diary != nil {
		s.diary.core(s, t, length, length*share)
	}
}

// countCore counts a core, and hands it to the deck.
func (s *ship) countCore(t coring.Tool, length, recovered float64) {
	site := &s.sites[s.siteNumber()]
	site.cores++
	site.cored += length
	site.recovered += recovered
	item := &s.items[s.item.Number]
	item.cored += length
	item.recovered += recovered
	tool := &s.tools[t]
	tool.cores++
	tool.cored += length
	tool.recovered += recovered
	s.consumed[statistics.Liners]++
	s.consumed[statistics.Catchers] += 2
	s.consumed[statistics.Sections] += int(math.Ceil(recovered/sectionLength - 1e-9)) // a whole number of sections may be a hair more
	s.coreOnDeck()
}

// sectionLength is the length into which cores are cut, m: ODP Leg 191 explanatory notes.
const sectionLength = 1.5

// splice marks the section that a core brings to the site. Core is taken to be from the top of what
// was cut, as curators log it; between piston cores some section is missing whatever they recover;
// and the depths of a hole are off those of its neighbours.
func (s *ship) splice(t coring.Tool, from, length, share float64) {
	top, bottom := from, from+length*share
	if t.Piston() && s.hole.cores > 1 {
		top += min(length, s.Rate(rig.CoreGap))
	}
	s.cover(top+s.shift, bottom+s.shift)
}
