package drillstring

import "coredays/model/unit"

// Loading is what a section bears at its top and what it may bear there.
type Loading struct {
	Section Section
	Tension unit.Force // weight, heave and overpull
	Carries unit.Force // allowed share of the rating, less for bending where the pipe leans
}

// Used is the share of what it may bear.
func (l Loading) Used() unit.Share { return unit.Share(l.Tension / l.Carries) }

const rounding = 1e-6 // m, of a sum of lengths

// Loads lists the loading of every section from the bit up.
func (s String) Loads(c Conditions) []Loading {
	var loads []Loading
	perMass := gravity*float64(Buoyancy(c.Fluid)) + s.inertia(c)
	sections := s.Sections()
	tension, above := c.Overpull, s.Length()
	for i, section := range sections {
		tension += unit.Force(float64(section.mass()) * perMass)
		above -= section.Length
		carries := c.allowed(section.Rating)
		if i == len(sections)-1 || above < c.Roll.Bent()-rounding {
			carries = c.Roll.Carries(section, carries)
		}
		loads = append(loads, Loading{section, tension, carries})
	}
	return loads
}

// Worst is the loading of the section that is used most.
func (s String) Worst(c Conditions) Loading {
	var worst Loading
	for i, load := range s.Loads(c) {
		if i == 0 || load.Used() > worst.Used() {
			worst = load
		}
	}
	return worst
}
