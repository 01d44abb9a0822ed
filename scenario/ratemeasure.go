package scenario

import (
	"slices"

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
		m.most, m.above = 20, false
	case rig.StandsBetweenFills, rig.Barrels, rig.CatwalkRoom, rig.CoresBetweenSweeps:
		return countMeasure
	case rig.StandLength, rig.JointLength:
		m.most, m.single = 100, true
	case rig.SlowdownFrom, rig.HangOffDepth, rig.LoggingPipeDepth, rig.CoreGap, rig.DepthMismatch:
		m.above = false
	case rig.ForecastHorizon, rig.ForecastSkill:
		m.single = true
	case rig.BreakdownEvery:
		m.least, m.most, m.above = 12*float64(unit.Hour), 1e4*float64(unit.Day), false // as good as never
	case rig.RigServiceEvery, rig.BitLife:
		m.least, m.most, m.above = float64(unit.Hour), 100*float64(unit.Day), false
	}
	if slices.Contains(eachCore, r) {
		m.most = float64(unit.Day)
	}
	if least, stated := leastOf[r]; stated {
		m.least, m.above = least, false
	}
	if meaning.Of == unit.OfDuration && r != rig.BreakdownEvery && r != rig.RigServiceEvery && r != rig.BitLife && r != rig.ForecastHorizon {
		m.above = false
	}
	if m.chance() {
		m.above = false
	}
	return m
}

// eachCore are times that come with each core or each joint: none takes a day.
var eachCore = []rig.Rate{rig.Strapping, rig.Filling, rig.PistonHandling, rig.HalfPistonHandling, rig.ExtendedHandling, rig.RotaryHandling, rig.Shot, rig.CorePull,
	rig.OrientationWait, rig.Connection, rig.Bench, rig.CatwalkTime, rig.LaboratoryTime}

// leastOf is the smallest value of rates that something is divided by: below them a thing takes longer than any
// expedition.
var leastOf = map[rig.Rate]float64{
	rig.SailingSpeed: 1 * 1852.0 / 3600, rig.HangingSpeed: 0.05 * 1852.0 / 3600, // m/s
	rig.Tripping: 1.0 / 3600, rig.TrippingInHole: 0.5 / 3600, // stands/s
	rig.PistonWire: 0.1, rig.ExtendedWire: 0.1, rig.RotaryWire: 0.1, rig.LoggingWire: 0.1, rig.CameraSpeed: 0.02, // m/s
	rig.LoggingSpeed: 20.0 / 3600,           // m/s
	rig.StandLength:  5, rig.JointLength: 3, // m
	rig.LineWork:   1e8, // J
	rig.LayerDepth: 0.1,
	rig.PistonPace: 0.1, rig.ExtendedPace: 0.1, rig.RotaryPace: 0.1,
}

// mostOf is the largest value of a figure by dimension.
var mostOf = map[unit.Dimension]float64{
	unit.OfLength:     11_000,
	unit.OfDuration:   20 * float64(unit.Day),
	unit.OfSpeed:      20, // m/s
	unit.OfForce:      1e7,
	unit.OfMass:       2e6,
	unit.OfLinearMass: 1000,
	unit.OfEnergy:     1e12,
	unit.OfShare:      1,
	unit.OfStandRate:  100.0 / 3600,
	unit.OfCount:      1000,
}
