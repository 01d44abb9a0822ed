// Package riglog holds what a rig writes down while she works, as plain figures: the lines of an operations log, the
// cores of a core table, and recordings of block and hook load. Readers fill it (scenario/rigfile); rates are
// learned from it (model/rates). Nothing in it is made up: what could not be read is listed with its reason.
package riglog

import (
	"math"
	"time"

	"coredays/model/activity"
	"coredays/model/unit"
)

// Line is one line of an operations log.
type Line struct {
	File       string
	Row        int
	From, To   time.Time
	What       string          // the ship's own words
	Doing      []activity.Kind // what they mean, in order; more than one where a line lumps work together
	Mapped     bool            // every part of the words has a meaning
	Site, Hole string
	Depth      unit.Depth  // of the hole when the line began; not a number where it is not stated
	BitFrom    unit.Length // of the bit below the sea surface; not a number where it is not stated
	BitTo      unit.Length
	Stands     float64 // not a number where they are not stated
	Note       string
}

// Hours is the length of a line.
func (l *Line) Hours() float64 { return l.To.Sub(l.From).Hours() }

// Lumped tells whether a line has more than one activity.
func (l *Line) Lumped() bool { return len(l.Doing) > 1 }

// Core is one core of a core table.
type Core struct {
	File       string
	Row        int
	Leg        string
	Site, Hole string
	Number     int
	Type       string      // as the table has it: H, F, X, R, or another for what is no core of the four tools
	Top        unit.Depth  // below the sea floor
	Cored      unit.Length // not a number where it is not stated
	Recovered  unit.Length // not a number where it is not stated
	OnDeck     time.Time   // zero where it is not stated, or not to be relied on
	Water      unit.Length // not a number where it is not stated
}

// Recording is a recording of the rig's channels: a row for each sample that was not lost, in the order of time. A
// channel that was not recorded is nil.
type Recording struct {
	File  string
	Start time.Time
	Time  []float64 // s since Start
	Block []float64 // height of the block above the rig floor, m
	Hook  []float64 // N
	Bit   []float64 // depth of the bit below the sea surface, m
	Wire  []float64 // length of the coring line out, m
}

// Note is something that is wrong with a file, or worth a second look.
type Note struct {
	File string
	Row  int
	Why  string
	Cure string
	Lost bool // the row is left out
}

// Papers are all that was read.
type Papers struct {
	Lines      []Line // in the order of time
	Cores      []Core // in the order of the files
	Recordings []Recording
	Notes      []Note
	Files      []string
}

// Empty reports whether nothing of the files could be read.
func (p *Papers) Empty() bool { return len(p.Lines)+len(p.Cores)+len(p.Recordings) == 0 }

// Unknown is a number that is not stated.
func Unknown() float64 { return math.NaN() }
