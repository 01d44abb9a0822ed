package ship

import (
	"coredays/model/coring"
	"coredays/model/ground"
	"coredays/model/rig"
)

// hardShoe reports whether a tool of the hole in hand cuts with a shoe or bit for hard ground, and whether it is in rock at a depth.
func (s *Ship) hardShoe(t coring.Tool, depth float64) (has, inRock bool) {
	if s.Hole.Stage >= len(s.Stages()) || t.Of().Cut != coring.Rotated || !s.Stages()[s.Hole.Stage].HardShoe {
		return false, false
	}
	return true, ground.Rock(s.Here.Site.Layers[s.Layer(depth)].Lithology.Name)
}

// Shoed is the share of its standard rate at which the shoe cuts here. A rate that is stated for the layer is taken as it is.
func (s *Ship) Shoed(t coring.Tool) float64 {
	has, rock := s.hardShoe(t, s.Hole.Depth)
	switch {
	case !has || s.Here.Layers[s.Layer(s.Hole.Depth)].Stated:
		return 1
	case rock:
		return s.RateMedian(rig.HardShoeInRock)
	}
	return s.RateMedian(rig.HardShoeInSoft)
}

// shoeRecovers is the share of a core with what the shoe adds to it in rock, to a whole one at most.
func (s *Ship) shoeRecovers(t coring.Tool, depth, share float64) float64 {
	if _, rock := s.hardShoe(t, depth); rock {
		return max(share, min(1, share*s.RateMedian(rig.HardShoeRecovery)))
	}
	return share
}
