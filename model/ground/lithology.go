// Package ground describes what lies below the sea floor: layers of a lithology, how hard each is
// to core, and how much of it is recovered.
package ground

import (
	"coredays/model/coring"
	"coredays/model/spread"
	"coredays/model/unit"
)

// Lithology is a class of sediment or rock.
type Lithology struct {
	Name string
	// Strength is the side shear on a piston corer for each metre below the sea floor, Pa/m.
	Strength spread.Quantity
	// Rate is the rate of penetration while cutting core with a rotated barrel, m/s.
	Rate spread.Quantity
	// Ahead is the rate of drilling ahead without coring, m/s.
	Ahead spread.Quantity
	// Sticking is how much more than mud it grips the string, or falls in on it: a factor of the chance that it sticks.
	Sticking spread.Quantity
	// Wear is how much faster than hard rock it wears a bit: the hours of a bit's life that an hour of rotating takes.
	Wear spread.Quantity
	// Recovery is the share of the cored length that is recovered, by tool.
	Recovery [coring.Tools]spread.Quantity
}

// Layer is a layer of a site.
type Layer struct {
	Bottom    unit.Depth
	Lithology Lithology // with what the scenario overrides for this layer
	Stated    bool      // the scenario states its drilling rate, which is then taken as it is
}
