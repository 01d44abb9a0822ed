// Package coring describes the coring tools and what one cycle of each is made of.
package coring

import (
	"fmt"

	"coredays/model/unit"
)

// Tool is a coring tool.
type Tool int

// The tools.
const (
	APC   Tool = iota // piston corer
	HLAPC             // half-length piston corer
	XCB               // extended core barrel
	RCB               // rotary core barrel
	Tools
)

var toolNames = [Tools]string{"APC", "HLAPC", "XCB", "RCB"}

func (t Tool) String() string { return toolNames[t] }

// Letter is the letter by which a core of the tool is numbered, as in core 7H.
func (t Tool) Letter() string { return [...]string{"H", "F", "X", "R"}[t] }

// ParseTool reads the short name of a tool.
func ParseTool(text string) (Tool, error) {
	for t, name := range toolNames {
		if name == text {
			return Tool(t), nil
		}
	}
	return 0, fmt.Errorf("is no coring tool")
}

// Piston tells whether the tool is shot into the sediment rather than rotated.
func (t Tool) Piston() bool { return t == APC || t == HLAPC }

// Stroke is the length of core that one full cycle cuts.
func (t Tool) Stroke() unit.Length {
	if t == HLAPC {
		return 4.7 // half-length piston corer; shared among operators' tool sheets, from memory
	}
	return 9.5 // piston stroke: IODP APCT-3 operations manual; inner barrels: ODP TN31 RCB and XCB tool sheets
}

// Assembly is a bottom-hole assembly.
type Assembly int

// The assemblies. Piston, half-length and extended barrels run through the same one.
const (
	NoBHA Assembly = iota
	PistonBHA
	RotaryBHA
)

func (a Assembly) String() string { return [...]string{"none", "APC/XCB", "RCB"}[a] }

// Assembly is the bottom-hole assembly that the tool runs through.
func (t Tool) Assembly() Assembly {
	if t == RCB {
		return RotaryBHA
	}
	return PistonBHA
}
