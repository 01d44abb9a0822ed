package sim

import (
	"math"

	"coredays/model/activity"
	"coredays/model/rig"
	"coredays/sim/ship"
)

// logWireline readies the hole, then runs one string of tools after the other, one each time.
func (s *expedition) logWireline() {
	h := &s.Hole
	if !h.Conditioned {
		s.conditionHole()
	}
	if !h.HungLogging {
		s.hangLogging()
	}
	if s.Ended != ship.GoingOn {
		return
	}
	strings := s.Planned().Logging
	s.runString(strings[h.Logged])
	if s.Ended != ship.GoingOn {
		s.Hole.HungLogging = false
		return
	}
	h.Logged++
	if h.Logged < len(strings) {
		s.Do(activity.ChangeString, s.Rate(rig.StringChange))
		return
	}
	s.Do(activity.RigDownLogging, s.Rate(rig.LoggingRigDown))
}

// conditionHole makes a wiper trip, sweeps the hole and fills it with logging mud; a rotary bit is
// released, so that the tools pass: nothing can be cored after that.
func (s *expedition) conditionHole() {
	if s.Bit == s.Bottom() {
		s.Move(activity.PullFromHole, s.loggingDepth())
	}
	s.runToBottom()
	s.Do(activity.ConditionHole, s.Rate(rig.HoleConditioning))
	if s.BHA.Of().Bit {
		s.Do(activity.ReleaseBit, s.Rate(rig.BitRelease))
	}
	if s.Ended == ship.GoingOn {
		s.Hole.Conditioned = true
		s.Hole.Released = s.BHA.Of().Bit
	}
}

// hangLogging pulls the pipe up to where the tools leave it and rigs up.
func (s *expedition) hangLogging() {
	s.Move(activity.PullFromHole, s.loggingDepth())
	s.Do(activity.RigUpLogging, s.Rate(rig.LoggingRigUp))
	s.Hole.HungLogging = s.Ended == ship.GoingOn
}

// loggingDepth is where the end of the pipe hangs while logging, below the sea surface, m.
func (s *expedition) loggingDepth() float64 {
	return s.Here.Floor + min(s.RateMedian(rig.LoggingPipeDepth), s.Hole.Depth)
}

// runString runs one string of tools down through the pipe and logs the open hole. The first bridge that a string meets is
// cleaned out; the next one leaves half of the hole out of reach, for this string and those after it.
func (s *expedition) runString(which int) {
	tools := s.Voyage.Plan.Ship.Strings[which]
	if s.meetsBridge() && !s.Hole.Cleaned {
		s.cleanBridge()
	}
	if s.Ended != ship.GoingOn {
		return
	}
	if s.Hole.Cleaned && !s.Hole.Bridged && s.meetsBridge() {
		s.Hole.Bridged = true
	}
	open := s.Bottom() - s.loggingDepth()
	if s.Hole.Bridged {
		open /= 2
	}
	takes := (2*s.loggingDepth()+open)/s.Rate(rig.LoggingWire) + tools.Passes*open/s.Rate(rig.LoggingSpeed)
	if !tools.Seismic {
		s.awaitForecast(s.WaveLimitOf(activity.Logging), takes)
		s.Do(activity.RunString, takes)
		return
	}
	takes += s.Rate(rig.SeismicStations)
	watch := s.Rate(rig.MammalWatch)
	s.awaitForecast(s.WaveLimitOf(activity.Logging), watch+takes)
	s.awaitDaylight(watch + takes)
	s.Do(activity.MammalWatch, watch)
	s.Do(activity.RunString, takes)
}

// meetsBridge reports whether the hole has closed ahead of a string: more often in what falls in or swells.
func (s *expedition) meetsBridge() bool {
	return !s.Voyage.Plan.NoTrouble && s.HappensMore(rig.Bridge, s.Gripping())
}

// cleanBridge takes the tools out of the hole again, cleans it with the pipe down to the bottom, and rigs up once more:
// 6 to 12 h in all (common practice).
func (s *expedition) cleanBridge() {
	half := (s.Bottom() - s.loggingDepth()) / 2
	s.Do(activity.RunString, 2*(s.loggingDepth()+half)/s.Rate(rig.LoggingWire))
	s.Do(activity.RigDownLogging, s.Rate(rig.LoggingRigDown))
	s.Move(activity.RunInHole, s.Bottom())
	s.Do(activity.ConditionHole, s.Rate(rig.HoleConditioning))
	s.hangLogging()
	s.Hole.Cleaned = s.Ended == ship.GoingOn
}

// Hours of daylight taken for any place and season, local sun time [common practice: twelve hours
// at the equinox; seasons and high latitudes are left out].
const (
	dawn = 6.0 * 3600
	dusk = 18.0 * 3600
)

// awaitDaylight waits until so many seconds of daylight are ahead.
func (s *expedition) awaitDaylight(needed float64) {
	s.Do(activity.WaitForDaylight, s.daylightWait(needed))
}

// daylightWait is how long it is until so many seconds of daylight are ahead, s.
func (s *expedition) daylightWait(needed float64) float64 {
	const day = 86400
	sun := math.Mod(s.Sea.FirstAt+s.Clock+float64(s.Here.Position.Longitude)/360*day+2*day, day)
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
func (s *expedition) awaitForecast(most, needed float64) {
	const patience = 3 * 86400
	for until := s.Clock + patience; s.Clock < until && s.Ended == ship.GoingOn && s.ForecastMaximum(needed) > most; {
		if s.StormResponse() {
			return
		}
		s.WaitUntil(s.Agenda.Next)
	}
}

// runPenetrometer makes one run of a penetrometer ahead of the bit.
func (s *expedition) runPenetrometer() {
	s.Do(activity.Penetrometer, 2*s.Bit/s.Rate(rig.PistonWire)+s.Rate(rig.Penetrometer))
	if s.Ended == ship.GoingOn {
		s.Hole.Probes++
	}
}
