package sim

import (
	"slices"

	"coredays/model/coring"
	"coredays/model/rig"
)

// Each way of cutting is an operation, and the crew has an estimate of what it takes. The tables have a place for
// every way, so that one without its operation does not compile.

// operations take one core.
var operations [coring.Cuts]func(s *ship, t coring.Tool) = [...]func(s *ship, t coring.Tool){
	coring.Shot:    (*ship).corePiston,
	coring.Rotated: (*ship).coreRotated,
}

// cycles are the crew's estimates of a core at the present depth, s.
var cycles [coring.Cuts]func(s *ship, t coring.Tool) float64 = [...]func(s *ship, t coring.Tool) float64{
	coring.Shot:    (*ship).pistonCycleTime,
	coring.Rotated: (*ship).rotatedCycleTime,
}

// cycleTime is the crew's estimate of a core with a tool at the present depth, s.
func (s *ship) cycleTime(t coring.Tool) float64 { return cycles[t.Of().Cut](s, t) }

func (s *ship) pistonCycleTime(t coring.Tool) float64 {
	is := t.Of()
	return s.rateMedian(is.DurationFactor)*s.alone()*(2*s.bottom()/s.rateMedian(is.Wire)+s.rateMedian(rig.Shot)+s.rateMedian(rig.CorePull)+s.rateMedian(is.Handling)) +
		s.heldStill(t) + s.rateMedian(rig.Connection)
}

func (s *ship) rotatedCycleTime(t coring.Tool) float64 {
	is, layer := t.Of(), &s.here.Layers[s.layer(s.hole.depth)]
	return s.rateMedian(is.DurationFactor)*(3*s.bottom()/s.rateMedian(is.Wire)+s.rateMedian(is.Handling)) +
		s.stroke(t, s.rateMedian)/(s.v.Quantities[layer.Rate].Median*s.deepDown(t)*s.weighted()*s.shoed(t)) + s.rateMedian(rig.Connection)
}

// heldStill is the crew's estimate of how long the next core of a piston tool is held still for what is measured, s.
func (s *ship) heldStill(t coring.Tool) (takes float64) {
	if s.planned().Oriented && t.Has(coring.Orients) {
		takes += s.rateMedian(rig.OrientationWait)
	}
	if slices.Contains(s.planned().Temperature, s.hole.cores+1) {
		takes += s.rateMedian(rig.TemperatureStop)
	}
	return takes
}

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
