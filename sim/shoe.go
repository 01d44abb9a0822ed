package sim

import (
	"coredays/model/coring"
	"coredays/model/ground"
	"coredays/model/rig"
)

// hardShoe reports whether a tool of the hole in hand cuts with a shoe or bit for hard ground, and whether it is in rock at a depth.
func (s *ship) hardShoe(t coring.Tool, depth float64) (has, inRock bool) {
	if s.hole.stage >= len(s.stages()) || t.Of().Cut != coring.Rotated || !s.stages()[s.hole.stage].HardShoe {
		return false, false
	}
	return true, ground.Rock(s.here.Site.Layers[s.layer(depth)].Lithology.Name)
}

// shoed is the share of its standard rate at which the shoe cuts here. A rate that is stated for the layer is taken as it is.
func (s *ship) shoed(t coring.Tool) float64 {
	has, rock := s.hardShoe(t, s.hole.depth)
	switch {
	case !has || s.here.Layers[s.layer(s.hole.depth)].Stated:
		return 1
	case rock:
		return s.rateMedian(rig.HardShoeInRock)
	}
	return s.rateMedian(rig.HardShoeInSoft)
}

// shoeRecovers is the share of a core with what the shoe adds to it in rock, to a whole one at most.
func (s *ship) shoeRecovers(t coring.Tool, depth, share float64) float64 {
	if _, rock := s.hardShoe(t, depth); rock {
		return max(share, min(1, share*s.rateMedian(rig.HardShoeRecovery)))
	}
	return share
}
