package drillstring

import (
	"math"

	"coredays/model/unit"
)

// Area is in square metres.
type Area float64

// Tube is a round pipe wall.
type Tube struct{ Outside, Inside unit.Length }

// Area is the area of steel across the tube.
func (t Tube) Area() Area {
	return Area(math.Pi / 4 * float64(t.Outside*t.Outside-t.Inside*t.Inside))
}

// Mass is that of a metre of plain steel tube, without joints.
func (t Tube) Mass() unit.LinearMass { return unit.LinearMass(float64(Steel) * float64(t.Area())) }

// SpiralMass is that of a metre of collar with a spiral groove: 2.56/2.66 of a plain one (Lapeyrouse as at
// docs.kws.tn/formulas/1/drill-pipe.html).
func (t Tube) SpiralMass() unit.LinearMass { return t.Mass() * 2.56 / 2.66 }

// Worn is the tube with all wear on the outside until a share of the wall is left.
func (t Tube) Worn(left unit.Share) Tube {
	wall := (t.Outside - t.Inside) / 2
	return Tube{Outside: t.Inside + 2*wall*unit.Length(left), Inside: t.Inside}
}

// secondMoment is the second moment of area in m^4 (textbook).
func (t Tube) secondMoment() float64 {
	return math.Pi / 64 * (math.Pow(float64(t.Outside), 4) - math.Pow(float64(t.Inside), 4))
}

// stiffness is the force that would double the length of a metre of tube, in N.
func (t Tube) stiffness() float64 { return young * float64(t.Area()) }
