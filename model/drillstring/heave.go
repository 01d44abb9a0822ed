package drillstring

import (
	"math"

	"coredays/model/unit"
)

// Heave is a regular heave of the point from which the string hangs.
type Heave struct {
	Height unit.Length   // double amplitude, crest to trough
	Period unit.Duration // zero means no heave
}

// Acceleration is the largest, in m/s^2: (H/2)(2 pi/T)^2 of a sinusoid (textbook).
func (h Heave) Acceleration() float64 {
	if h.Period <= 0 {
		return 0
	}
	frequency := 2 * math.Pi / float64(h.Period)
	return math.Abs(float64(h.Height)) / 2 * frequency * frequency
}

// Hanging says how a string follows the heave of its top.
type Hanging int

// The ways.
const (
	Elastic Hanging = iota // as an elastic bar: more than rigid, and the truth for long strings
	Rigid                  // all of it together
)

// Amplification is how much larger the inertia force at the top of a hanging elastic bar is than that
// of a rigid one: tan(kL)/(kL), kL = 2 pi (travel time of sound along it)/period (textbook: general bar
// theory). The bar is uniform, free at the bit, without damping; at a quarter period of travel it
// resonates, and from there on the answer is +Inf: no such string may be heaved so.
func Amplification(travel, period unit.Duration) float64 {
	if travel <= 0 || period <= 0 {
		return 1
	}
	kL := 2 * math.Pi * float64(travel/period)
	if kL >= math.Pi/2 {
		return math.Inf(1)
	}
	return math.Tan(kL) / kL
}

// TravelTime is how long sound takes from the bit to the top. Tool joints add mass but no stiffness,
// so it is slower than in plain steel, where it does 5130 m/s: c^2 = E A / m (textbook).
func (s String) TravelTime() unit.Duration {
	var sum float64
	for _, section := range s.Sections() {
		sum += float64(section.Length) * math.Sqrt(float64(section.Mass)/section.Body.stiffness())
	}
	return unit.Duration(sum)
}

// inertia is the acceleration in m/s^2 that, on all mass of a string, gives the force at its top.
func (s String) inertia(c Conditions) float64 {
	return inertia(c, s.TravelTime())
}

func inertia(c Conditions, travel unit.Duration) float64 {
	a := c.Heave.Acceleration()
	if a == 0 || c.Hanging == Rigid {
		return a
	}
	return a * Amplification(travel, c.Heave.Period)
}
