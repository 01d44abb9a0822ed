package drillstring

import "coredays/model/unit"

// Density is in kilograms per cubic metre.
type Density float64

const gravity = 9.80665 // m/s^2, standard, CGPM 1901

const (
	pound = float64(unit.PoundForce) / gravity                            // kg, by definition of the pound-force
	psi   = float64(unit.PoundForce) / float64(unit.Foot*unit.Foot) * 144 // Pa, by definition
	inch  = unit.Foot / 12
)

// Trade densities.
const (
	PoundPerCubicFoot = Density(pound / float64(unit.Foot*unit.Foot*unit.Foot))
	PoundPerGallon    = Density(pound / float64(231*inch*inch*inch)) // US gallon of 231 cubic inches
)

const (
	Steel            = 490 * PoundPerCubicFoot // 65.5 lb/gal; worked examples of the trade, common practice
	Seawater Density = 1025                    // surface sea water, common practice; 8.55 lb/gal
)

// Young's modulus of steel: API RP 7G stretch, 30 million psi.
const young = 30e6 * psi
