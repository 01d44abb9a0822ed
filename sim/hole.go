package sim

import (
	"coredays/model/coring"
	"coredays/model/plan"
)

// hole is the hole in hand. The zero value is one not yet begun.
type hole struct {
	open     bool
	openedAt float64 // s after sailing
	depth    float64 // m below sea floor
	aim      float64 // depth to drill down to without coring, m below sea floor
	centre   bool    // the centre bit is in the string
	stage    int
	half     bool // a refused piston corer goes on with the tool that takes over
	cores    int  // numbered through the hole
	partials int  // partial strokes in a row
	slow     int  // cores in a row below the least rate of the tool
	probes   int  // penetrometer runs made
	sweeps   int  // cores since the last mud sweep
	funnel   bool
	stabs    int
	cased    cased
	fill     float64 // on its bottom since the string was out of it, m

	conditioned bool
	released    bool
	hungLogging bool // pipe at logging depth, rigged up
	bridged     bool
	cleaned     bool // of a bridge, once
	logged      int  // strings run

	rule     float64 // depth at which a rule ends it, m below sea floor; 0 for none
	ruled    bool    // it did
	filled   bool    // with heavy mud or cement
	finished bool    // nothing more is wanted of it
	lost     bool
}

// planned is the hole of the item in hand.
func (s *ship) planned() *plan.Hole { return s.item.Hole }

// stages are the coring stages of the hole in hand.
func (s *ship) stages() []plan.Stage { return s.item.Hole.Stages }

// tool is the coring tool in use.
func (s *ship) tool() coring.Tool {
	if s.hole.half {
		return s.here.Refusal.Then
	}
	return s.stages()[s.hole.stage].With
}

// assembly is the bottom-hole assembly that the hole in hand needs.
// A task goes down with whatever hangs, and else with that of the piston corer.
func (s *ship) assembly() coring.Assembly {
	switch {
	case s.item.Task == nil && s.casingToRun():
		return coring.CasingString
	case s.item.Task == nil:
		return s.drillsWith()
	case s.bha != coring.NoBHA:
		return s.bha
	}
	return coring.PistonBHA
}

// drillsWith is the assembly that deepens the hole in hand. What is drilled for casing is drilled with a bit.
func (s *ship) drillsWith() coring.Assembly {
	if s.dueCasing() != nil {
		return coring.RotaryBHA
	}
	return assemblyOf(s.planned())
}

// assemblyOf is the bottom-hole assembly that a hole needs. One that is only drilled takes the rotary one.
func assemblyOf(h *plan.Hole) coring.Assembly {
	if len(h.Stages) == 0 {
		return coring.RotaryBHA
	}
	return h.Stages[0].With.Assembly()
}

// bottom is the bottom of the hole below the sea surface, m.
func (s *ship) bottom() float64 { return s.here.Floor + s.hole.depth }

// layer is the index of the layer at a depth below the sea floor; the last layer goes on for ever.
func (s *ship) layer(depth float64) int {
	for i := range s.here.Layers {
		if depth < s.here.Layers[i].Bottom*s.layerDepth {
			return i
		}
	}
	return len(s.here.Layers) - 1
}

// nextStage goes on to the next tool of the hole.
func (s *ship) nextStage() {
	s.hole.stage++
	s.hole.half, s.hole.slow, s.hole.partials = false, 0, 0
}

// passStages passes over stages that have nothing left to core; down to where the next begins is drilled.
func (s *ship) passStages() {
	for s.hole.stage < len(s.stages()) && s.hole.depth >= float64(s.stages()[s.hole.stage].To)-shortest {
		s.nextStage()
	}
	if s.hole.stage < len(s.stages()) {
		s.hole.aim = max(s.hole.aim, float64(s.stages()[s.hole.stage].From))
	}
}

// aheadLeft reports whether the hole in hand has still to be drilled down without coring.
func (s *ship) aheadLeft() bool {
	s.passStages()
	return s.hole.depth < s.hole.aim-shortest
}

// coringLeft reports whether a tool still has something to core.
func (s *ship) coringLeft() bool {
	s.passStages()
	return s.hole.stage < len(s.stages())
}

// shortest is the shortest core worth a cycle, m.
const shortest = float64(coring.Shortest)
