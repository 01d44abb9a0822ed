package ground

import (
	"math"

	"coredays/model/unit"
)

// LeastStroke is what a piston corer pushes into any sea floor by the pipe's weight [from memory].
const LeastStroke = unit.Length(0.3)

// Whole is the share of the full stroke below which a stroke is incomplete [common practice].
const Whole = 0.95

// Corer is a piston corer as the sediment feels it.
type Corer struct {
	Diameter unit.Length // outside of the barrel
	Force    unit.Force  // of the stroke: shear pressure on the piston's ring
	Friction float64     // side friction during the quick stroke over that when pulling
	Tip      float64     // resistance of the tip over the side shear
}

// Overpull is the pull that frees a barrel of which a length sticks in sediment of a side shear:
// the shear on its outside. 60,000 lbf on 9.5 m of 3.75 in barrel is 94 kPa.
func (c Corer) Overpull(shear unit.Pressure, length unit.Length) unit.Force {
	return unit.Force(math.Pi * float64(c.Diameter) * float64(length) * float64(shear)) // F = pi d L tau, force balance
}

// Stroke is how far the corer gets: until the friction on its side and the resistance of its tip
// are as large as the force of the stroke.
func (c Corer) Stroke(shear unit.Pressure) unit.Length {
	if shear <= 0 {
		return unit.Length(math.Inf(1))
	}
	tip := c.Tip * float64(shear) * math.Pi / 4 * float64(c.Diameter*c.Diameter)
	side := c.Friction * float64(shear) * math.Pi * float64(c.Diameter)
	if float64(c.Force) <= tip {
		return 0 // also where the sediment is too hard for a number, infinity over infinity
	}
	return unit.Length((float64(c.Force) - tip) / side) // F = tip + a tau pi d L, force balance
}
