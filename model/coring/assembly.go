package coring

import "coredays/model/rig"

// Assembly is a bottom-hole assembly.
type Assembly int

// The assemblies.
const (
	NoBHA Assembly = iota
	PistonBHA
	RotaryBHA
	CasingString // a string of casing below its running tool
	RunningTool  // that has let go of its casing
	Assemblies
)

// AssemblyTraits is what sets an assembly apart from the others.
type AssemblyTraits struct {
	Name   string
	MakeUp rig.Rate // time to make it up
	Barrel Tool     // that is rotated through it; Tools where none is
	Bit    bool     // it has a bit that wears, drills ahead with a centre bit and is released for logging
}

// Of returns the traits of an assembly.
func (a Assembly) Of() *AssemblyTraits { return &assemblyTraits[a] }

func (a Assembly) String() string { return assemblyTraits[a].Name }

// assemblyTraits has a line for each assembly. Piston, half-length and extended barrels run through the same one.
var assemblyTraits [Assemblies]AssemblyTraits = [...]AssemblyTraits{
	NoBHA:     {"none", NoRate, Tools, false},
	PistonBHA: {"APC/XCB", rig.PistonMakeUp, XCB, false},
	RotaryBHA: {"RCB", rig.RotaryMakeUp, RCB, true},

	CasingString: {"casing", NoRate, Tools, false},
	RunningTool:  {"running tool", NoRate, Tools, false},
}
