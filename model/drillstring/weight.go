package drillstring

import "coredays/model/unit"

// Part is the weight of one section.
type Part struct {
	Name   string
	Length unit.Length
	InAir  unit.Force
	Buoyed unit.Force
}

// Parts lists the weights of the sections from the bit up.
func (s String) Parts(fluid Density) []Part {
	var parts []Part
	for _, section := range s.Sections() {
		air := weight(section.mass())
		parts = append(parts, Part{section.Name, section.Length, air, air * unit.Force(Buoyancy(fluid))})
	}
	return parts
}

// Buoyed is the weight of the string in a fluid, by the buoyancy factor.
func (s String) Buoyed(fluid Density) unit.Force { return buoyed(s.Mass(), fluid) }

// Buoyed is the weight of the assembly in a fluid.
func (a Assembly) Buoyed(fluid Density) unit.Force { return buoyed(a.Mass(), fluid) }

func buoyed(m unit.Mass, fluid Density) unit.Force {
	return weight(m) * unit.Force(Buoyancy(fluid))
}
