package ship

import (
	"math"

	"coredays/model/coring"
	"coredays/model/rig"
	"coredays/sim/statistics"
)

// What is recovered: a core's share of what was cut, in a sea that costs some of it, and where its
// section stands beside that of the other holes.

// Recovers draws the share of a core that is recovered. Heave costs recovery before it stops the work.
func (s *Ship) Recovers(t coring.Tool, depth float64) float64 {
	layer := &s.Here.Layers[s.Layer(depth)]
	return s.shoeRecovers(t, depth, max(0, s.Draw(layer.Recovery[t]))) * (1 - s.Rate(rig.HeaveLoss)*s.roughness(t))
}

// roughness is how near the sea is to the limit of a tool: 0 up to half of it, 1 at it.
func (s *Ship) roughness(t coring.Tool) float64 {
	return min(1, max(0, 2*s.Sea.Height/s.Here.Most[t.Of().Limit]-1))
}

// RecordCore notes a core of a cut length from a depth and the share of it that was recovered.
func (s *Ship) RecordCore(t coring.Tool, from, length, share float64) {
	s.Hole.Cores++
	s.splice(t, from, length, min(1, share))
	s.sectionCut(from, length, share)
	s.CountCore(t, length, length*share)
	s.Cores.note(s, t, length, length*share)
	if s.Diary != nil {
		s.Diary.core(s, t, length, length*share)
	}
}

// CountCore counts a core, and hands it to the deck.
func (s *Ship) CountCore(t coring.Tool, length, recovered float64) {
	site := &s.Sites[s.SiteNumber()]
	site.Cores++
	site.Cored += length
	site.Recovered += recovered
	item := &s.Items[s.Item.Number]
	item.Cored += length
	item.Recovered += recovered
	tool := &s.Tools[t]
	tool.Cores++
	tool.Cored += length
	tool.Recovered += recovered
	s.Consumed[statistics.Liners]++
	s.Consumed[statistics.Catchers] += 2
	s.Consumed[statistics.Sections] += int(math.Ceil(recovered/sectionLength - 1e-9)) // a whole number of sections may be a hair more
	s.CoreOnDeck()
}

// sectionLength is the length into which cores are cut, m: ODP Leg 191 explanatory notes.
const sectionLength = 1.5

// splice marks the section that a core brings to the site. Core is taken to be from the top of what
// was cut, as curators log it; between piston cores some section is missing whatever they recover;
// and the depths of a hole are off those of its neighbours.
func (s *Ship) splice(t coring.Tool, from, length, share float64) {
	top, bottom := from, from+length*share
	if t.Piston() && s.Hole.Cores > 1 {
		top += min(length, s.Rate(rig.CoreGap))
	}
	s.cover(top+s.Shift, bottom+s.Shift)
}
