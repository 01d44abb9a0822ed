package drillstring

import "coredays/model/unit"

// Buoyancy is the share of its weight that steel keeps in a fluid: 1 - fluid/steel, as in
// (65.5 - ppg)/65.5 of the trade. It is exact for a string open at the bit, with the same fluid
// inside and out, whose mass is all steel.
func Buoyancy(fluid Density) unit.Share { return BuoyancyIn(fluid, Steel) }

// BuoyancyIn is the same for a given density of steel.
func BuoyancyIn(fluid, steel Density) unit.Share { return unit.Share(1 - fluid/steel) }

// Shoulder is a change of area along a string and the force of the fluid on it.
type Shoulder struct {
	Depth unit.Length // below the surface of the fluid
	Area  Area        // that faces down; negative faces up
	Force unit.Force  // upward
}

// Shoulders lists the pressure forces on a string that hangs in a fluid from its surface down, from
// the bit up: pressure times the change of area (course text on buoyancy of drill strings,
// www.scribd.com/document/346208360). Tool joints are left out, so bodies alone are counted.
func (s String) Shoulders(fluid Density) []Shoulder {
	sections, depth, below := s.Sections(), s.Length(), Area(0)
	var shoulders []Shoulder
	for _, section := range sections {
		step := section.Body.Area() - below
		pressure := float64(fluid) * gravity * float64(depth) // hydrostatic
		shoulders = append(shoulders, Shoulder{depth, step, unit.Force(pressure * float64(step))})
		depth -= section.Length
		below = section.Body.Area()
	}
	return shoulders
}

// PressureAreaWeight is the weight in air less the pressure forces on all shoulders: the exact
// method beside the buoyancy factor, and the same where the mass is that of the bodies.
func (s String) PressureAreaWeight(fluid Density) unit.Force {
	hanging := weight(s.Mass())
	for _, shoulder := range s.Shoulders(fluid) {
		hanging -= shoulder.Force
	}
	return hanging
}
