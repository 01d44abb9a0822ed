package voyage

import (
	"coredays/model/ground"
	"coredays/model/rig"
	"coredays/model/unit"
)

// Corer is the ship's piston corer.
func (v *Voyage) Corer() ground.Corer {
	median := func(r rig.Rate) float64 { return v.Quantities[r].Median }
	return ground.Corer{
		Diameter: unit.Length(median(rig.PistonDiameter)),
		Force:    unit.Force(median(rig.StrokeForce)),
		Friction: median(rig.StrokeFriction),
		Tip:      median(rig.TipFactor),
	}
}
