package ship

import (
	"math"

	"coredays/model/activity"
	"coredays/model/rig"
	"coredays/model/voyage"
	"coredays/sim/statistics"
)

// SeaStep is the time between changes of the sea, s.
const SeaStep = float64(voyage.SeaStep)

// SeaChanges brings the sea to the step that begins now and plans the next change.
func (s *Ship) SeaChanges() {
	s.MeetSea()
	s.Agenda.Plan(TheSea, (math.Floor(s.Clock/SeaStep+0.5)+1)*SeaStep)
}

// MeetSea is the sea as it is here and now; called also when the ship comes into another climate.
func (s *Ship) MeetSea() {
	s.Sea.Height = s.Sea.Now(s.seaStepNow())
}

// seaStepNow is the present step of the sea, by its number.
func (s *Ship) seaStepNow() int { return int(s.Clock/SeaStep + 1e-9) }

// standBy waits until the sea is down to what the work in hand can bear, and takes the rungs of
// the storm ladder on the way: first the pipe is pulled up to hang off where a long wait is
// forecast; then, when the sea rises on, the script ends (see Ended). It reports whether the work
// can go on.
func (s *Ship) standBy(k activity.Kind, most float64) bool {
	var bottom float64
	if k.Of().Limit != activity.Tripping {
		s.saveHole()
		bottom = s.hangOff(most)
	}
	since, resume := s.Clock, most*s.RateMedian(rig.ResumeAt)
	for s.rough(resume) {
		if s.StormResponse() {
			return false
		}
		s.WaitUntil(s.Agenda.Next)
	}
	s.UseTheWait(since)
	if s.Ended == GoingOn && bottom > s.Bit {
		s.Move(activity.RunInHole, bottom)
	}
	return s.Ended == GoingOn
}

// StormResponse ends the script where the sea asks for more than waiting.
func (s *Ship) StormResponse() bool {
	switch {
	case s.rough(s.Voyage.Recover) && s.Bit > 0:
		s.Ended = StormPipe
	case s.rough(s.Voyage.ClearFloor) && s.InHole():
		s.Ended = StormClear
	default:
		return s.OutOfTime()
	}
	return true
}

// rough reports whether the sea is above a height, or the site can't be used at all.
func (s *Ship) rough(most float64) bool {
	return s.Sea.Height > most || (s.Closed || s.Shut) && !math.IsInf(most, 1)
}

// saveHole drops the free-fall funnel that a hole may have, where the forecast says that the bit will
// have to leave it and drilling down again would cost more.
func (s *Ship) saveHole() {
	if !s.InHole() || s.Hole.Funnel || !s.CanReenter() || s.ForecastMaximum(stormWarning) <= s.Voyage.ClearFloor {
		return
	}
	again := s.Hole.Depth / s.Voyage.Quantities[s.Here.Layers[s.Layer(s.Hole.Depth)].Ahead].Median
	back := s.RateMedian(rig.FunnelDrop) + 2*s.Here.Floor/s.RateMedian(rig.CameraSpeed) + s.RateMedian(rig.FirstStab)
	if again > back {
		s.doUnstopped(activity.DropFunnel, s.Rate(rig.FunnelDrop))
		s.Hole.Funnel = true
		s.Consumed[statistics.Funnels]++
	}
}

// stormWarning is how far ahead a storm makes the crew think of the hole, s [judgement].
const stormWarning = 24 * 3600

// UseTheWait has the rig serviced and the line slipped and cut while the ship waited anyway.
func (s *Ship) UseTheWait(since float64) {
	if s.Clock-since >= s.RateMedian(rig.RigService) {
		s.LastService = s.Clock
	}
	if s.Clock-since >= s.RateMedian(rig.RigService)+s.RateMedian(rig.SlipAndCut) {
		s.LineWork = 0
	}
}

// WaitUntil waits on weather.
func (s *Ship) WaitUntil(at float64) {
	s.spend(activity.WaitOnWeather, at-s.Clock)
	for s.Agenda.Next <= s.Clock {
		s.happen()
	}
}

// hangOff pulls the bit up to a shallow depth in the hole where the forecast says that the wait is
// worth it, and returns the depth of the bit to come back to, below the sea surface.
func (s *Ship) hangOff(most float64) float64 {
	if !s.InHole() || s.Here == nil {
		return 0
	}
	bottom, up := s.Bit, s.Here.Floor+s.RateMedian(rig.HangOffDepth)
	if bottom <= up || s.ForecastWait(most) < 2*s.MoveTime(bottom-up) {
		return 0
	}
	s.PullAnyhow(up)
	return bottom
}

// MakeSafe follows an abandoned script: it does what the ending asks for and clears it.
func (s *Ship) MakeSafe() {
	why := s.Ended
	s.Ended = GoingOn
	s.Hole.HungLogging = false
	switch why {
	case StormClear, StormPipe:
		s.ClearFloor()
		if why == StormPipe {
			s.PullAnyhow(0)
			s.doUnstopped(activity.Secure, s.Rate(rig.Securing)) // she heaves to or runs, and takes station again after it
			s.LeaveStation()
		}
	case stringLost:
		s.ClearFloor()
		s.PullAnyhow(0)
		s.Consumed[statistics.Assemblies]++
	}
	if why == stringLost {
		s.Hole.Lost = true
	}
}

// ClearFloor pulls the bit clear of the sea floor, whatever the sea.
func (s *Ship) ClearFloor() {
	if s.InHole() {
		s.PullAnyhow(s.Clear())
	}
}
