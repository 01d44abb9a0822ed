// Package coring describes the coring tools and what one cycle of each is made of.
package coring

import (
	"fmt"
	"strings"

	"coredays/model/unit"
)

// Tool is a coring tool.
type Tool int

// The tools, in the order in which they follow each other down a hole [common practice]. What is true of
// each is in the table of traits.
const (
	APC Tool = iota
	HLAPC
	XCB
	RCB
	Tools
)

// Of returns the traits of a tool.
func (t Tool) Of() *Traits { return &traits[t] }

func (t Tool) String() string { return traits[t].Name }

// Key is the name of the tool in files.
func (t Tool) Key() string { return strings.ToLower(traits[t].Name) }

// Letter is the letter by which a core of the tool is numbered, as in core 7H.
func (t Tool) Letter() string { return traits[t].Letter }

// ParseTool reads the short name of a tool.
func ParseTool(text string) (Tool, error) {
	for t := range Tools {
		if t.String() == text {
			return t, nil
		}
	}
	return 0, fmt.Errorf("is no coring tool")
}

// Piston reports whether the tool is shot into the sediment rather than rotated.
func (t Tool) Piston() bool { return traits[t].Cut == Shot }

// Shortest is the shortest core worth a cycle [common practice].
const Shortest = unit.Length(0.5)

// Stroke is the length of core that one full cycle cuts.
func (t Tool) Stroke() unit.Length { return traits[t].Stroke }

// Assembly is the bottom-hole assembly that the tool runs through.
func (t Tool) Assembly() Assembly { return traits[t].Assembly }

// Has reports whether the tool has a feature.
func (t Tool) Has(f Feature) bool { return traits[t].Features&f != 0 }

// GoesOn reports whether another tool goes on in the same stage where this one is refused.
func (t Tool) GoesOn(with Tool) bool {
	return t.Piston() && !t.Has(TakesOver) && with.Has(TakesOver)
}
