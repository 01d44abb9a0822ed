// Package heave is how a ship that keeps her position heaves in waves of a height and period.
package heave

import (
	"fmt"
	"math"

	"coredays/model/unit"
)

const gravity = 9.80665 // m/s^2, standard, CGPM 1901

// Hull is what the closed form needs of a ship that keeps its position: a box of these
// dimensions, its beam reduced by the block coefficient.
type Hull struct {
	Length, Beam, Draught unit.Length
	Block                 float64 // displaced volume over length x beam x draught, 0 to 1
}

// Check says what keeps a hull from being used.
func (h Hull) Check() error {
	if !(h.Length > 0 && h.Beam > 0 && h.Draught > 0) {
		return fmt.Errorf("hull %g x %g x %g m: length, beam and draught must be above 0", float64(h.Length), float64(h.Beam), float64(h.Draught))
	}
	if !(h.Block > 0 && h.Block <= 1) {
		return fmt.Errorf("block coefficient of %g, wanted above 0 and at most 1", h.Block)
	}
	return nil
}

// Amplification is the heave amplitude over the wave amplitude at a wave frequency in rad/s and
// a heading in radians off the bow, at zero speed: the closed form of Jensen, Mansour and Olsen
// (2004) [from memory, not checked against the paper]. An open implementation of the paper
// (heaveCF of NetSSE 2.1, doi:10.11583/DTU.26379811) has the same algebra but for the Smith
// correction, exp(-kT) there and exp(-ke T) here, equal in head seas; here the heave is higher
// otherwise. Beam seas are an upper bound, as the formula damps little, and do not go to 0 in
// short waves.
func (h Hull) Amplification(frequency, heading float64) float64 {
	l, b, t := float64(h.Length), float64(h.Beam)*h.Block, float64(h.Draught)
	k := frequency * frequency / gravity // wave number in deep water
	if k == 0 {
		return 1
	}
	ke := k * math.Abs(math.Cos(heading))     // effective wave number along the ship
	a := 2 * math.Sin(k*b/2) * math.Exp(-k*t) // sectional damping
	damping := a * a / (k * b)
	f := math.Hypot(1-k*t, damping)              // sectional force
	force := math.Exp(-ke*t) * f * sinc(ke*l/2)  // Smith correction, averaged along the length
	response := 1 / math.Hypot(1-2*k*t, damping) // resonance at 2kT = 1
	return math.Abs(force * response)
}

// sinc is sin(x)/x.
func sinc(x float64) float64 {
	if math.Abs(x) < 1e-6 {
		return 1
	}
	return math.Sin(x) / x
}

// Heave is the significant double amplitude of heave, crest to trough, in a sea of significant
// height hs and a peak period, met at a heading in radians off the bow. The spectrum is JONSWAP
// with a peak factor by period, which is Pierson-Moskowitz from a peak period of 5 sqrt(hs) on.
// All waves come from one direction. It is a closed form, not a calculation of a vessel.
func (h Hull) Heave(hs unit.Length, peak unit.Duration, heading float64) unit.Length {
	if !(hs > 0 && peak > 0) {
		return 0
	}
	top := 2 * math.Pi / float64(peak) // peak frequency, rad/s
	amplification := func(x float64) float64 { return h.Amplification(x*top, heading) }
	return hs * unit.Length(significant(amplification, peakFactor(float64(hs), float64(peak))))
}
