package drillstring

import "coredays/model/unit"

// Section is a uniform length of a string.
type Section struct {
	Name   string
	Length unit.Length
	Mass   unit.LinearMass // in air, with joints
	Body   Tube            // as worn
	Rating unit.Force      // tension at yield of the body
	Collar bool            // its weight may rest on the bit
	Joint  Connection      // at its top
}

func (s Section) mass() unit.Mass { return unit.Mass(float64(s.Mass) * float64(s.Length)) }

// Assembly is a bottom-hole assembly, from the bit up.
type Assembly []Section

// String is all that hangs below the rig floor, from the bit up.
type String struct {
	Assembly Assembly
	Pipe     []Section
}

// Sections lists assembly and pipe from the bit up.
func (s String) Sections() []Section {
	return append(append([]Section{}, s.Assembly...), s.Pipe...)
}

// Length is from the bit to the top.
func (s String) Length() unit.Length { return lengthOf(s.Sections()) }

// Mass is that of all steel.
func (s String) Mass() unit.Mass { return massOf(s.Sections()) }

// Length is from the bit to the top of the assembly.
func (a Assembly) Length() unit.Length { return lengthOf(a) }

// Mass is that of the assembly.
func (a Assembly) Mass() unit.Mass { return massOf(a) }

func lengthOf(sections []Section) (sum unit.Length) {
	for _, s := range sections {
		sum += s.Length
	}
	return sum
}

func massOf(sections []Section) (sum unit.Mass) {
	for _, s := range sections {
		sum += s.mass()
	}
	return sum
}

// weight is the force of standard gravity on a mass.
func weight(m unit.Mass) unit.Force { return unit.Force(float64(m) * gravity) }
