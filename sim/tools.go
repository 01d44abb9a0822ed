package sim

import (
	"coredays/model/coring"
	"coredays/model/rig"
)

// pistonDurationFactor is the duration factor of the next piston cycle.
func (s *ship) pistonDurationFactor(t coring.Tool) float64 {
	return s.Rate(t.Of().DurationFactor) * s.alone()
}

// alone is the duration factor of piston cycles at this site against that of sites where other tools are used too.
func (s *ship) alone() float64 {
	if s.here.Alone {
		return s.rateMedian(rig.PistonAlone)
	}
	return 1
}

// deepDown is the share of the lithology's cutting rate that a tool makes at the present depth. A rate that is
// stated for the layer is taken as it is.
func (s *ship) deepDown(t coring.Tool) float64 {
	if t.Has(coring.SlowsDown) && s.hole.depth >= s.rateMedian(rig.ExtendedDeepFrom) && !s.here.Layers[s.layer(s.hole.depth)].Stated {
		return s.rateMedian(rig.ExtendedDeep)
	}
	return 1
}
