package coring

import (
	"coredays/model/activity"
	"coredays/model/rig"
	"coredays/model/unit"
)

// Traits is what sets a coring tool apart from the others, for whoever asks: a plan, the crew, the checks.
type Traits struct {
	Name           string      // in plans
	What           string      // in sentences
	Letter         string      // by which its cores are numbered
	Stroke         unit.Length // of core that one full cycle cuts
	Cut            Cut
	Assembly       Assembly
	Limit          activity.Limit // of sea
	DurationFactor rig.Rate       // of its cycle against the median
	Wire           rig.Rate       // speed on the way through the pipe
	Handling       rig.Rate       // the rig floor's work for each core
	Advance        rig.Rate       // length of a core; NoRate where that is the stroke
	Trouble        rig.Rate       // chance of trouble with barrel or wire, each core
	TroubleTime    rig.Rate       // what it costs
	LeastRate      rig.Rate       // of cutting, below which the tool is given up; NoRate where it never is
	Features       Feature
}

// Cut is how a tool cuts its cores: each way is an operation of its own.
type Cut int

// The ways to cut.
const (
	Shot    Cut = iota // into the sediment, faster than it can give way
	Rotated            // cutting shoe or bit turns with the string
	Cuts
)

// Feature is what some tools have and others have not.
type Feature int

// The features.
const (
	Orients   Feature = 1 << iota // carries the orientation tool
	TakesOver                     // may go on where a longer piston corer is refused
	Swept                         // cuttings are swept out with mud every few cores
	SlowsDown                     // cuts more slowly deep in a hole, see rig.ExtendedDeep
)

// NoRate stands for a rate that a tool or an assembly does not have.
const NoRate = rig.Rates

// traits has a line for each tool. Its length and that of each line are fixed, so that what is left out does not
// compile. Names and letters are those of ocean drilling, from memory. Strokes: piston, IODP APCT-3 operations manual;
// inner barrels, ODP TN31 RCB and XCB tool sheets; half-length, shared among operators' tool sheets, from memory.
var traits [Tools]Traits = [...]Traits{
	APC:   {"APC", "piston corer", "H", 9.5, Shot, PistonBHA, activity.PistonCoring, rig.PistonDurationFactor, rig.PistonWire, rig.PistonHandling, rig.PistonAdvance, rig.PistonTrouble, rig.PistonTroubleTime, NoRate, Orients},
	HLAPC: {"HLAPC", "half-length piston corer", "F", 4.7, Shot, PistonBHA, activity.PistonCoring, rig.PistonDurationFactor, rig.PistonWire, rig.HalfPistonHandling, NoRate, rig.PistonTrouble, rig.PistonTroubleTime, NoRate, TakesOver},
	XCB:   {"XCB", "extended barrel", "X", 9.5, Rotated, PistonBHA, activity.RotaryCoring, rig.ExtendedDurationFactor, rig.ExtendedWire, rig.ExtendedHandling, rig.ExtendedAdvance, rig.ExtendedTrouble, rig.ExtendedTroubleTime, rig.ExtendedLeastRate, SlowsDown},
	RCB:   {"RCB", "rotary barrel", "R", 9.5, Rotated, RotaryBHA, activity.RotaryCoring, rig.RotaryDurationFactor, rig.RotaryWire, rig.RotaryHandling, rig.RotaryAdvance, rig.RotaryTrouble, rig.RotaryTroubleTime, NoRate, Swept},
}
