// Package rig describes a ship as a planner and a driller know it: its rates with their spread,
// its tool strings, and the seas it can work in.
package rig

import (
	"strings"

	"coredays/model/activity"
	"coredays/model/sea/heave"
	"coredays/model/spread"
	"coredays/model/unit"
)

// Ship is a riserless drillship with its crew.
type Ship struct {
	Name    string
	Source  string
	Rates   [Rates]spread.Quantity
	Limits  []SeaLimit
	Storm   Storm
	Hull    heave.Hull
	Heading float64 // radians off the bow at which she takes the sea on station
	Strings []ToolString
	// RigFloor is the height of the rig floor above sea level, which depths from the rig floor include.
	RigFloor unit.Length
	Tubulars Tubulars
	// Endurance is how long she stays at sea, s.
	Endurance Figure
	// LeastWater is the shallowest water in which she holds station, m.
	LeastWater Figure
	// PositionKeeping is how far off the hole she is moved in the roughest sea in which she works, m.
	PositionKeeping Figure
	// MostCurrent is the strongest current from ahead in which she holds station, m/s; 0 where it is not known.
	MostCurrent Figure
	Compensator Compensator
	Torque      Torque
}

// Compensator keeps the string from heaving with the ship while it is rotated.
type Compensator struct {
	Load   Figure // rated, N
	Stroke Figure // m
}

// Torque is what the rig puts on the connections of the string, N m.
type Torque struct {
	MakeUp   Figure // the most that tongs or iron roughneck give
	Rotating Figure // the most with which the string is rotated; none stated: 0
}

// FromMemory reports whether a source says that a figure was read nowhere: nothing is stopped for it.
func FromMemory(source string) bool {
	return strings.Contains(source, "from memory") || strings.Contains(source, "judgement")
}

// Measure says what a limit of sea is a limit of. Published limits are often of the largest
// heave in ten minutes.
type Measure int

// The measures.
const (
	SignificantHeave Measure = iota // double amplitude
	LargestHeave                    // largest double amplitude in ten minutes
	WaveHeight                      // significant wave height
	LargestWave                     // height of the largest wave in three hours
)

// SeaLimit is the roughest sea for a class of work, from a depth of water on.
type SeaLimit struct {
	For       activity.Limit
	FromDepth unit.Length // of water
	Of        Measure
	Most      unit.Length
	Source    string
}

// Storm is the sea at which pipe in a hole is no longer safe.
type Storm struct {
	ClearSeaFloor unit.Length // significant wave height at which the bit is pulled clear of the sea floor
	RecoverPipe   unit.Length // significant wave height at which all pipe is recovered
	Source        string
}

// ToolString is a string of logging tools.
type ToolString struct {
	Name    string
	Passes  float64 // times the open hole is logged
	Seismic bool    // needs daylight and a watch for mammals
	Source  string
}

// LogSource begins the source of a figure that was learned from a log of this ship.
const LogSource = "log: "

// FromLog reports whether a figure was learned from a log of this ship, by its source.
func FromLog(source string) bool { return strings.HasPrefix(source, LogSource) }
