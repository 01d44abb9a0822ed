package ship

import (
	"slices"

	"coredays/model/coring"
	"coredays/model/rig"
)

// Each way of cutting is an operation, and the crew has an estimate of what it takes. The tables have a place for
// every way, so that one without its operation does not compile.

// Cycles are the crew's estimates of a core at the present depth, s.
var Cycles [coring.Cuts]func(s *Ship, t coring.Tool) float64 = [...]func(s *Ship, t coring.Tool) float64{
	coring.Shot:    (*Ship).pistonCycleTime,
	coring.Rotated: (*Ship).rotatedCycleTime,
}

// CycleTime is the crew's estimate of a core with a tool at the present depth, s.
func (s *Ship) CycleTime(t coring.Tool) float64 { return Cycles[t.Of().Cut](s, t) }

func (s *Ship) pistonCycleTime(t coring.Tool) float64 {
	is := t.Of()
	return s.RateMedian(is.DurationFactor)*s.alone()*(2*s.Bottom()/s.RateMedian(is.Wire)+s.RateMedian(rig.Shot)+s.RateMedian(rig.CorePull)+s.RateMedian(is.Handling)) +
		s.heldStill(t) + s.RateMedian(rig.Connection)
}

func (s *Ship) rotatedCycleTime(t coring.Tool) float64 {
	is, layer := t.Of(), &s.Here.Layers[s.Layer(s.Hole.Depth)]
	return s.RateMedian(is.DurationFactor)*(3*s.Bottom()/s.RateMedian(is.Wire)+s.RateMedian(is.Handling)) +
		s.Stroke(t, s.RateMedian)/(s.Voyage.Quantities[layer.Rate].Median*s.DeepDown(t)*s.Weighted()*s.Shoed(t)) + s.RateMedian(rig.Connection)
}

// heldStill is the crew's estimate of how long the next core of a piston tool is held still for what is measured, s.
func (s *Ship) heldStill(t coring.Tool) (takes float64) {
	if s.Planned().Oriented && t.Has(coring.Orients) {
		takes += s.RateMedian(rig.OrientationWait)
	}
	if slices.Contains(s.Planned().Temperature, s.Hole.Cores+1) {
		takes += s.RateMedian(rig.TemperatureStop)
	}
	return takes
}

// PistonDurationFactor is the duration factor of the next piston cycle.
func (s *Ship) PistonDurationFactor(t coring.Tool) float64 {
	return s.Rate(t.Of().DurationFactor) * s.alone()
}

// alone is the duration factor of piston cycles at this site against that of sites where other tools are used too.
func (s *Ship) alone() float64 {
	if s.Here.Alone {
		return s.RateMedian(rig.PistonAlone)
	}
	return 1
}

// DeepDown is the share of the lithology's cutting rate that a tool makes at the present depth. A rate that is
// stated for the layer is taken as it is.
func (s *Ship) DeepDown(t coring.Tool) float64 {
	if t.Has(coring.SlowsDown) && s.Hole.Depth >= s.RateMedian(rig.ExtendedDeepFrom) && !s.Here.Layers[s.Layer(s.Hole.Depth)].Stated {
		return s.RateMedian(rig.ExtendedDeep)
	}
	return 1
}

// Stroke is how long the next core becomes where the hole has room for it: as long as the plan says, as the tool usually
// makes it, or the stroke of the tool, m. figure gives a rate of the ship: drawn for a core, the median for the crew's estimate.
func (s *Ship) Stroke(t coring.Tool, figure func(rig.Rate) float64) float64 {
	if stated := s.Stages()[s.Hole.Stage].Advance; stated > 0 {
		return float64(stated)
	}
	if is := t.Of(); is.Advance != coring.NoRate {
		return figure(is.Advance)
	}
	return float64(t.Stroke())
}

// ToGo is what is left of the stage, m.
func (s *Ship) ToGo() float64 { return float64(s.Stages()[s.Hole.Stage].To) - s.Hole.Depth }
