package drillstring

import (
	"math"

	"coredays/model/unit"
)

// BitWeightShare is the share of the buoyed collars that may rest on the bit, so that the pipe above is
// always in tension (common practice; factors of 0.5 to 0.9 at
// www.netwasgroup.us/oil-well/weight-on-bit-in-vertical-holes.html).
const BitWeightShare unit.Share = 0.85

// UsableBitWeight is the largest weight on bit that leaves the pipe in tension, with the share kept back.
func (a Assembly) UsableBitWeight(fluid Density) unit.Force {
	return a.LoadingWeight(fluid) * unit.Force(BitWeightShare)
}

// LoadingWeight is the buoyed weight of the collars from the bit up to the first part that must not be
// in compression.
func (a Assembly) LoadingWeight(fluid Density) (sum unit.Force) {
	for _, section := range a {
		if !section.Collar {
			break
		}
		sum += buoyed(section.mass(), fluid)
	}
	return sum
}

// NeutralPoint is the height above the bit below which the string's buoyed weight rests on the bit
// (Lubinski; oilauthority.com/glossary/neutral-point: bit weight over buoyed weight of a length). It is
// +Inf if the whole string weighs less.
func (s String) NeutralPoint(bitWeight unit.Force, fluid Density) (height unit.Length) {
	for _, section := range s.Sections() {
		own := buoyed(section.mass(), fluid)
		if bitWeight <= own {
			return height + section.Length*unit.Length(bitWeight/own)
		}
		bitWeight -= own
		height += section.Length
	}
	return unit.Length(math.Inf(1))
}

// CollarLength is how much of a collar a bit weight needs in a vertical hole: W SF/(BF w), here with
// 1/BitWeightShare as SF (www.drillingmanual.com/the-buoyancy-factor-method/ has SF 1.1 to 1.15).
func CollarLength(bitWeight unit.Force, mass unit.LinearMass, fluid Density) unit.Length {
	perMetre := float64(mass) * gravity * float64(Buoyancy(fluid))
	return unit.Length(float64(bitWeight) / float64(BitWeightShare) / perMetre)
}
