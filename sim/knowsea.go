package sim

import (
	"math"

	"coredays/model/activity"
	"coredays/model/rig"
	"coredays/sim/ship"
)

// waitsFor is the wave height for which the ship waits by the log; 0 where she does not, or where it is not known for what.
func (x *Start) waitsFor(s *expedition) float64 {
	n := len(x.State.Steps)
	if x.State.Doing != activity.WaitOnWeather || n == 0 {
		return 0
	}
	most := s.WaveLimitOf(x.State.Steps[n-1].Kind.Of().Limit)
	if math.IsInf(most, 1) {
		return 0
	}
	return most * s.RateMedian(rig.ResumeAt)
}

// KnowSea conditions the sea on the waves now, which may be not a number, and on a forecast.
func (x *Start) KnowSea(waves float64, forecast []ship.SeaPoint) {
	x.fitted = fitted{}
	s := newExpedition(x.v)
	s.begins(0, 0)
	s.takesUp(x)
	day := func(step int) int { return s.Sea.Series[s.Sea.Course].Day(step + s.Sea.Ahead) }
	if known := ship.KnowSea(x.At, x.v.Forecast, waves, x.waitsFor(s), forecast, s.Sea.Waves, day); known != nil {
		x.sea = known
	}
}
