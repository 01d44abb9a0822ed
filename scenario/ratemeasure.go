package scenario

import (
	"coredays/model/rig"
	"coredays/model/unit"
)

// rateMeasure is what values a figure of the ship can have.
func rateMeasure(r rig.Rate) measure {
	meaning := r.Of()
	m := measure{of: meaning.Of, symbol: meaning.Unit, above: true, most: mostOf[meaning.Of]}
	switch r {
	case rig.PistonPace, rig.ExtendedPace, rig.RotaryPace, rig.LayerDepth:
		m.most = 10
	case rig.OtherWork:
		m.most, m.above = 10, false
	case rig.StandsBetweenFills, rig.Barrels, rig.CatwalkRoom, rig.CoresBetweenSweeps:
		return countMeasure
	case rig.StandLength, rig.JointLength:
		m.most, m.single = 100, true
	case rig.SlowdownFrom, rig.HangOffDepth, rig.LoggingPipeDepth, rig.CoreGap, rig.DepthMismatch:
		m.above = false
	case rig.ForecastHorizon, rig.ForecastSkill:
		m.single = true
	case rig.BreakdownEvery:
		m.most = 1e4 * float64(unit.Day) // as good as never
	}
	if meaning.Of == unit.OfDuration && r != rig.BreakdownEvery && r != rig.RigServiceEvery && r != rig.BitLife && r != rig.ForecastHorizon {
		m.above = false
	}
	if m.chance() {
		m.above = false
	}
	return m
}

// mostOf is the largest value of a figure by dimension.
var mostOf = map[unit.Dimension]float64{
	unit.OfLength:     11_000,
	unit.OfDuration:   100 * float64(unit.Day),
	unit.OfSpeed:      20, // m/s
	unit.OfForce:      1e7,
	unit.OfMass:       2e6,
	unit.OfLinearMass: 1000,
	unit.OfEnergy:     1e12,
	unit.OfShare:      1,
	unit.OfStandRate:  100.0 / 3600,
	unit.OfCount:      1000,
}
