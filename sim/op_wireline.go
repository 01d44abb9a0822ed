package sim

import (
	"math"

	"coredays/model/activity"
	"coredays/model/rig"
)

// logWireline readies the hole, then runs one string of tools after the other, one each time.
func (s *ship) logWireline() {
	h := &s.hole
	if !h.conditioned {
		s.conditionHole()
	}
	if !h.hungLogging {
		s.hangLogging()
	}
	if s.ended != goingOn {
		return
	}
	strings := s.planned().Logging
	s.runString(strings[h.logged])
	if s.ended != goingOn {
		s.hole.hungLogging = false
		return
	}
	h.logged++
	if h.logged < len(strings) {
		s.do(activity.ChangeString, s.Rate(rig.StringChange))
		return
	}
	s.do(activity.RigDownLogging, s.Rate(rig.LoggingRigDown))
}

// conditionHole makes a wiper trip, sweeps the hole and fills it with logging mud; a rotary bit is
// released, so that the tools pass: nothing can be cored after that.
func (s *ship) conditionHole() {
	if s.bit == s.bottom() {
		s.move(activity.PullFromHole, s.loggingDepth())
	}
	s.runToBottom()
	s.do(activity.ConditionHole, s.Rate(rig.HoleConditioning))
	if s.bha.Of().Bit {
		s.do(activity.ReleaseBit, s.Rate(rig.BitRelease))
	}
	if s.ended == goingOn {
		s.hole.conditioned = true
		s.hole.released = s.bha.Of().Bit
	}
}

// hangLogging pulls the pipe up to where the tools leave it and rigs up.
func (s *ship) hangLogging() {
	s.move(activity.PullFromHole, s.loggingDepth())
	s.do(activity.RigUpLogging, s.Rate(rig.LoggingRigUp))
	s.hole.hungLogging = s.ended == goingOn
}

// loggingDepth is where the end of the pipe hangs while logging, below the sea surface, m.
func (s *ship) loggingDepth() float64 {
	return s.here.Floor + min(s.rateMedian(rig.LoggingPipeDepth), s.hole.depth)
}

// runString runs one string of tools down through the pipe and logs the open hole. The first bridge that a string meets is
// cleaned out; the next one leaves half of the hole out of reach, for this string and those after it.
func (s *ship) runString(which int) {
	tools := s.v.Plan.Ship.Strings[which]
	if s.meetsBridge() && !s.hole.cleaned {
		s.cleanBridge()
	}
	if s.ended != goingOn {
		return
	}
	if s.hole.cleaned && !s.hole.bridged && s.meetsBridge() {
		s.hole.bridged = true
	}
	open := s.bottom() - s.loggingDepth()
	if s.hole.bridged {
		open /= 2
	}
	takes := (2*s.loggingDepth()+open)/s.Rate(rig.LoggingWire) + tools.Passes*open/s.Rate(rig.LoggingSpeed)
	if !tools.Seismic {
		s.awaitForecast(s.waveLimitOf(activity.Logging), takes)
		s.do(activity.RunString, takes)
		return
	}
	takes += s.Rate(rig.SeismicStations)
	watch := s.Rate(rig.MammalWatch)
	s.awaitForecast(s.waveLimitOf(activity.Logging), watch+takes)
	s.awaitDaylight(watch + takes)
	s.do(activity.MammalWatch, watch)
	s.do(activity.RunString, takes)
}

// meetsBridge reports whether the hole has closed ahead of a string: more often in what falls in or swells.
func (s *ship) meetsBridge() bool {
	return !s.v.Plan.NoTrouble && s.HappensMore(rig.Bridge, s.gripping())
}

// cleanBridge takes the tools out of the hole again, cleans it with the pipe down to the bottom, and rigs up once more:
// 6 to 12 h in all (common practice).
func (s *ship) cleanBridge() {
	half := (s.bottom() - s.loggingDepth()) / 2
	s.do(activity.RunString, 2*(s.loggingDepth()+half)/s.Rate(rig.LoggingWire))
	s.do(activity.RigDownLogging, s.Rate(rig.LoggingRigDown))
	s.move(activity.RunInHole, s.bottom())
	s.do(activity.ConditionHole, s.Rate(rig.HoleConditioning))
	s.hangLogging()
	s.hole.cleaned = s.ended == goingOn
}

// Hours of daylight taken for any place and season, local sun time [common practice: twelve hours
// at the equinox; seasons and high latitudes are left out].
const (
	dawn = 6.0 * 3600
	dusk = 18.0 * 3600
)

// awaitDaylight waits until so many seconds of daylight are ahead.
func (s *ship) awaitDaylight(needed float64) {
	s.do(activity.WaitForDaylight, s.daylightWait(needed))
}

// daylightWait is how long it is until so many seconds of daylight are ahead, s.
func (s *ship) daylightWait(needed float64) float64 {
	const day = 86400
	sun := math.Mod(s.sea.firstAt+s.clock+float64(s.here.Position.Longitude)/360*day+2*day, day)
	last := max(dawn, dusk-needed)
	switch {
	case sun < dawn:
		return dawn - sun
	case sun > last:
		return dawn + day - sun
	}
	return 0
}

// awaitForecast waits while the forecast has a sea above a limit within the time that an activity
// needs, where stopping would lose it; at most three days, then the crew tries.
func (s *ship) awaitForecast(most, needed float64) {
	const patience = 3 * 86400
	for until := s.clock + patience; s.clock < until && s.ended == goingOn && s.forecastMaximum(needed) > most; {
		if s.stormResponse() {
			return
		}
		s.waitUntil(s.agenda.next)
	}
}

// runPenetrometer makes one run of a penetrometer ahead of the bit.
func (s *ship) runPenetrometer() {
	s.do(activity.Penetrometer, 2*s.bit/s.Rate(rig.PistonWire)+s.Rate(rig.Penetrometer))
	if s.ended == goingOn {
		s.hole.probes++
	}
}
