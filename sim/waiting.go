package sim

import (
	"math"

	"coredays/model/activity"
	"coredays/model/rig"
	"coredays/model/voyage"
	"coredays/sim/statistics"
)

// seaStep is the time between changes of the sea, s.
const seaStep = float64(voyage.SeaStep)

// seaChanges brings the sea to the step that begins now and plans the next change.
func (s *ship) seaChanges() {
	s.meetSea()
	s.agenda.plan(theSea, (math.Floor(s.clock/seaStep+0.5)+1)*seaStep)
}

// meetSea is the sea as it is here and now; called also when the ship comes into another climate.
func (s *ship) meetSea() {
	s.sea.height = s.sea.now(s.seaStepNow())
}

// seaStepNow is the present step of the sea, by its number.
func (s *ship) seaStepNow() int { return int(s.clock/seaStep + 1e-9) }

// standBy waits until the sea is down to what the work in hand can bear, and takes the rungs of
// the storm ladder on the way: first the pipe is pulled up to hang off where a long wait is
// forecast; then, when the sea rises on, the script ends (see ended). It reports whether the work
// can go on.
func (s *ship) standBy(k activity.Kind, most float64) bool {
	var bottom float64
	if k.Of().Limit != activity.Tripping {
		s.saveHole()
		bottom = s.hangOff(most)
	}
	since, resume := s.clock, most*s.rateMedian(rig.ResumeAt)
	for s.rough(resume) {
		if s.stormResponse() {
			return false
		}
		s.waitUntil(s.agenda.next)
	}
	s.useTheWait(since)
	if s.ended == goingOn && bottom > s.bit {
		s.move(activity.RunInHole, bottom)
	}
	return s.ended == goingOn
}

// stormResponse ends the script where the sea asks for more than waiting.
func (s *ship) stormResponse() bool {
	switch {
	case s.rough(s.v.Recover) && s.bit > 0:
		s.ended = stormPipe
	case s.rough(s.v.ClearFloor) && s.inHole():
		s.ended = stormClear
	default:
		return s.outOfTime()
	}
	return true
}

// outOfTime ends the script where there is no more time than for leaving.
func (s *ship) outOfTime() bool {
	switch {
	case s.clock > s.longest():
		s.ended = noTime
	case s.constrained && !s.timeUp && s.item != nil && s.mustLeave(0):
		s.timeUp, s.ended, s.rewind = true, noTime, true
	default:
		return false
	}
	return true
}

// rough reports whether the sea is above a height, or the site can't be used at all.
func (s *ship) rough(most float64) bool {
	return s.sea.height > most || (s.closed || s.shut) && !math.IsInf(most, 1)
}

// saveHole drops the free-fall funnel that a hole may have, where the forecast says that the bit will
// have to leave it and drilling down again would cost more.
func (s *ship) saveHole() {
	if !s.inHole() || s.hole.funnel || !s.canReenter() || s.forecastMaximum(stormWarning) <= s.v.ClearFloor {
		return
	}
	again := s.hole.depth / s.v.Quantities[s.here.Layers[s.layer(s.hole.depth)].Ahead].Median
	back := s.rateMedian(rig.FunnelDrop) + 2*s.here.Floor/s.rateMedian(rig.CameraSpeed) + s.rateMedian(rig.FirstStab)
	if again > back {
		s.doUnstopped(activity.DropFunnel, s.Rate(rig.FunnelDrop))
		s.hole.funnel = true
		s.consumed[statistics.Funnels]++
	}
}

// stormWarning is how far ahead a storm makes the crew think of the hole, s [judgement].
const stormWarning = 24 * 3600

// useTheWait has the rig serviced and the line slipped and cut while the ship waited anyway.
func (s *ship) useTheWait(since float64) {
	if s.clock-since >= s.rateMedian(rig.RigService) {
		s.lastService = s.clock
	}
	if s.clock-since >= s.rateMedian(rig.RigService)+s.rateMedian(rig.SlipAndCut) {
		s.lineWork = 0
	}
}

// waitUntil waits on weather.
func (s *ship) waitUntil(at float64) {
	s.spend(activity.WaitOnWeather, at-s.clock)
	for s.agenda.next <= s.clock {
		s.happen()
	}
}

// hangOff pulls the bit up to a shallow depth in the hole where the forecast says that the wait is
// worth it, and returns the depth of the bit to come back to, below the sea surface.
func (s *ship) hangOff(most float64) float64 {
	if !s.inHole() || s.here == nil {
		return 0
	}
	bottom, up := s.bit, s.here.Floor+s.rateMedian(rig.HangOffDepth)
	if bottom <= up || s.forecastWait(most) < 2*s.moveTime(bottom-up) {
		return 0
	}
	s.pullAnyhow(up)
	return bottom
}

// makeSafe follows an abandoned script: it does what the ending asks for and clears it.
func (s *ship) makeSafe() {
	why := s.ended
	s.ended = goingOn
	s.hole.hungLogging = false
	switch why {
	case stormClear, stormPipe:
		s.clearFloor()
		if why == stormPipe {
			s.pullAnyhow(0)
			s.doUnstopped(activity.Secure, s.Rate(rig.Securing)) // she heaves to or runs, and takes station again after it
			s.leaveStation()
		}
	case stringLost:
		s.clearFloor()
		s.pullAnyhow(0)
		s.consumed[statistics.Assemblies]++
	}
	if why == stringLost {
		s.hole.lost = true
	}
}

// clearFloor pulls the bit clear of the sea floor, whatever the sea.
func (s *ship) clearFloor() {
	if s.inHole() {
		s.pullAnyhow(s.clear())
	}
}
