package ship

import (
	"coredays/model/coring"
	"coredays/model/plan"
)

// Hole is the hole in hand. The zero value is one not yet begun.
type Hole struct {
	Open     bool
	OpenedAt float64 // s after sailing
	Depth    float64 // m below sea floor
	Aim      float64 // depth to drill down to without coring, m below sea floor
	Centre   bool    // the centre bit is in the string
	Stage    int
	Half     bool // a refused piston corer goes on with the tool that takes over
	Cores    int  // numbered through the hole
	Partials int  // partial strokes in a row
	Slow     int  // cores in a row below the least rate of the tool
	Probes   int  // penetrometer runs made
	Sweeps   int  // cores since the last mud sweep
	Funnel   bool
	Stabs    int
	Cased    Cased
	Fill     float64 // on its bottom since the string was out of it, m

	Conditioned bool
	Released    bool
	HungLogging bool // pipe at logging depth, rigged up
	Bridged     bool
	Cleaned     bool // of a bridge, once
	Logged      int  // strings run

	Rule     float64 // depth at which a rule ends it, m below sea floor; 0 for none
	Ruled    bool    // it did
	Filled   bool    // with heavy mud or cement
	Finished bool    // nothing more is wanted of it
	Lost     bool
}

// Planned is the hole of the item in hand.
func (s *Ship) Planned() *plan.Hole { return s.Item.Hole }

// Stages are the coring stages of the hole in hand.
func (s *Ship) Stages() []plan.Stage { return s.Item.Hole.Stages }

// Tool is the coring tool in use.
func (s *Ship) Tool() coring.Tool {
	if s.Hole.Half {
		return s.Here.Refusal.Then
	}
	return s.Stages()[s.Hole.Stage].With
}

// Assembly is the bottom-hole assembly that the hole in hand needs.
// A task goes down with whatever hangs, and else with that of the piston corer.
func (s *Ship) Assembly() coring.Assembly {
	switch {
	case s.Item.Task == nil && s.casingToRun():
		return coring.CasingString
	case s.Item.Task == nil:
		return s.drillsWith()
	case s.BHA != coring.NoBHA:
		return s.BHA
	}
	return coring.PistonBHA
}

// drillsWith is the assembly that deepens the hole in hand. What is drilled for casing is drilled with a bit.
func (s *Ship) drillsWith() coring.Assembly {
	if s.DueCasing() != nil {
		return coring.RotaryBHA
	}
	return assemblyOf(s.Planned())
}

// assemblyOf is the bottom-hole assembly that a hole needs. One that is only drilled takes the rotary one.
func assemblyOf(h *plan.Hole) coring.Assembly {
	if len(h.Stages) == 0 {
		return coring.RotaryBHA
	}
	return h.Stages[0].With.Assembly()
}

// Bottom is the bottom of the hole below the sea surface, m.
func (s *Ship) Bottom() float64 { return s.Here.Floor + s.Hole.Depth }

// Layer is the index of the layer at a depth below the sea floor; the last layer goes on for ever.
func (s *Ship) Layer(depth float64) int {
	for i := range s.Here.Layers {
		if depth < s.Here.Layers[i].Bottom*s.LayerDepth {
			return i
		}
	}
	return len(s.Here.Layers) - 1
}

// NextStage goes on to the next tool of the hole.
func (s *Ship) NextStage() {
	s.Hole.Stage++
	s.Hole.Half, s.Hole.Slow, s.Hole.Partials = false, 0, 0
}

// passStages passes over stages that have nothing left to core; down to where the next begins is drilled.
func (s *Ship) passStages() {
	for s.Hole.Stage < len(s.Stages()) && s.Hole.Depth >= float64(s.Stages()[s.Hole.Stage].To)-Shortest {
		s.NextStage()
	}
	if s.Hole.Stage < len(s.Stages()) {
		s.Hole.Aim = max(s.Hole.Aim, float64(s.Stages()[s.Hole.Stage].From))
	}
}

// AheadLeft reports whether the hole in hand has still to be drilled down without coring.
func (s *Ship) AheadLeft() bool {
	s.passStages()
	return s.Hole.Depth < s.Hole.Aim-Shortest
}

// CoringLeft reports whether a tool still has something to core.
func (s *Ship) CoringLeft() bool {
	s.passStages()
	return s.Hole.Stage < len(s.Stages())
}

// Shortest is the shortest core worth a cycle, m.
const Shortest = float64(coring.Shortest)

// CanReenter reports whether the hole can be found again.
func (s *Ship) CanReenter() bool { return s.Planned().Reentry != plan.NoReentry }

// WorkLeft reports whether anything of the hole in hand is left to do.
func (s *Ship) WorkLeft() bool {
	return s.AheadLeft() || s.CoringLeft() || s.LoggingDue()
}

// LoggingDue reports whether a tool string is left to run.
func (s *Ship) LoggingDue() bool { return s.Hole.Logged < len(s.Planned().Logging) }
