package drillstring

import (
	"math"
	"testing"
)

func TestBrakingTimeIsWhatTheMarginAllows(t *testing.T) {
	s, c := coringString(t, Premium), Conditions{Fluid: Seawater}
	within := s.BrakingTime(1.5, c)
	published(t, "pull while braked, N", s.StoppingForce(1.5, within), s.Margin(c).Overpull(), 1, 1e-9)
	c.Overpull = s.Margin(c).Overpull() + 1
	if got := s.BrakingTime(1.5, c); !math.IsInf(float64(got), 1) || s.RunningSpeed(c) != 0 {
		t.Errorf("without margin: %g s, %g m/s", got, s.RunningSpeed(c))
	}
}

// v sqrt(E A m): 1 m/s, 5.2746 in2 = 3.4030e-3 m2, 23.52 lb/ft = 35.002 kg/m, E = 206.84 GPa: 157 kN by hand.
func TestJerkOfFiveInchPipeIsAsByHand(t *testing.T) {
	s := coringString(t, New)
	published(t, "kN", s.JerkForce(1), 1000, 157, 0.5)
	c := Conditions{Fluid: Seawater}
	published(t, "speed x doubled jerk, N", 2*s.JerkForce(s.RunningSpeed(c)), s.Margin(c).Overpull(), 1, 1e-9)
}

// By hand: 1 MW lifts 2 MN at half a metre per second.
func TestHoistLiftsByItsPower(t *testing.T) {
	published(t, "m/s", HoistingSpeed(1e6, 2e6), 1, 0.5, 1e-12)
}
