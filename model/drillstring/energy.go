package drillstring

import (
	"math"

	"coredays/model/unit"
)

// Drilling is a bit at work.
type Drilling struct {
	Diameter  unit.Length
	BitWeight unit.Force
	Torque    Torque  // at the bit, not at the floor
	Rotation  float64 // revolutions per second
	Rate      unit.Speed
}

func (d Drilling) face() float64 { return math.Pi / 4 * float64(d.Diameter*d.Diameter) }

// power is that of the rotation, in W.
func (d Drilling) power() float64 { return 2 * math.Pi * d.Rotation * float64(d.Torque) }

// SpecificEnergy is the work for a volume of rock: F/A + 2 pi N T/(A v) (Teale 1965, from memory). At
// best it comes down to about the rock's compressive strength (the same, from memory).
func (d Drilling) SpecificEnergy() unit.Pressure {
	return unit.Pressure(float64(d.BitWeight)/d.face() + d.power()/(d.face()*float64(d.Rate)))
}

// RateIn is the rate of penetration in rock of a compressive strength, when the bit does work on the
// rock with an efficiency (strength over specific energy; 0.3 to 0.4 is usual, from memory). It is +Inf
// where the bit weight alone would do it. The rate of the drilling itself is not used.
func (d Drilling) RateIn(strength unit.Pressure, efficiency unit.Share) unit.Speed {
	byRotation := float64(strength)/float64(efficiency) - float64(d.BitWeight)/d.face()
	if byRotation <= 0 {
		return unit.Speed(math.Inf(1))
	}
	return unit.Speed(d.power() / (d.face() * byRotation))
}

// BitTorque is the torque of a bit whose face slides evenly with a friction: mu D W/3 (integral over
// a full disc, textbook; a coefficient of 0.2 to 0.3 for roller bits, from memory). A core bit's ring lies further out
// and takes more.
func BitTorque(friction float64, diameter unit.Length, bitWeight unit.Force) Torque {
	return Torque(friction * float64(diameter) * float64(bitWeight) / 3)
}
