package drillstring

import (
	"math"

	"coredays/model/unit"
)

// Power is in watts.
type Power float64

// HoistingSpeed is the fastest that a hoist of a power at the hook lifts a load: P/F. Losses between
// motor and hook belong into the power.
func HoistingSpeed(power Power, load unit.Force) unit.Speed {
	return unit.Speed(float64(power) / float64(load))
}

// StoppingForce is the pull added while the string is braked evenly from a speed within a time, rigid:
// m v/t.
func (s String) StoppingForce(speed unit.Speed, within unit.Duration) unit.Force {
	return unit.Force(float64(s.Mass()) * float64(speed) / float64(within))
}

// JerkForce is the pull added at the top when the string is stopped, or started, at once: v sqrt(E A m)
// of the top section, a wave in an elastic bar (textbook). A stop slower than twice the travel time is
// milder. A reflected wave may double it; see RunningSpeed.
func (s String) JerkForce(speed unit.Speed) unit.Force {
	sections := s.Sections()
	if len(sections) == 0 {
		return 0
	}
	top := sections[len(sections)-1]
	return unit.Force(float64(speed) * math.Sqrt(top.Body.stiffness()*float64(top.Mass)))
}

// BrakingTime is the shortest time for an even stop from a speed that keeps the pull within the margin.
// It is +Inf if there is no margin.
func (s String) BrakingTime(speed unit.Speed, c Conditions) unit.Duration {
	margin := s.Margin(c).Overpull()
	if margin <= 0 {
		return unit.Duration(math.Inf(1))
	}
	return unit.Duration(float64(s.Mass()) * float64(speed) / float64(margin))
}

// RunningSpeed is the fastest at which the string may run so that even an instant stop, its wave
// doubled by one reflection, stays within the margin. It is 0 if there is no margin.
func (s String) RunningSpeed(c Conditions) unit.Speed {
	margin := s.Margin(c).Overpull()
	jerk := s.JerkForce(1)
	if margin <= 0 || jerk == 0 {
		return 0
	}
	return unit.Speed(margin / (2 * jerk))
}
