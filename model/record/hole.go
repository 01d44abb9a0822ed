// Package record holds what is on record of holes really drilled: per hole the depth, the cores by
// tool, when it began and when it ended. Nothing in it is filled in; what could not be read is listed
// with the reason.
package record

import (
	"time"

	"coredays/model/coring"
	"coredays/model/geo"
	"coredays/model/unit"
)

// Hole is a hole as it was drilled.
type Hole struct {
	Name     string
	Order    int // place in the order drilled at its site, from 1
	Position geo.Position
	Water    unit.Length
	Depth    unit.Depth // bottom, below the sea floor
	Cored    unit.Length
	Cores    [coring.Tools]int
	Metres   [coring.Tools]unit.Length // cored by each tool; see ByTool
	ByTool   bool                      // the source states the metres of each tool
	// Other counts cores of other tools. The sources count drilled intervals among them, so they say
	// little without their metres.
	Other       int
	OtherMetres unit.Length
	// All counts the cores by the record, those of other tools too; drilled intervals are none.
	All int
	// Recovered is what was recovered in all, not a number where the record is blank.
	Recovered  unit.Length
	Described  []Described // what was described in its cores, where that is known
	Start, End time.Time
	Row        int // line in the file
}

// Days is the time on the hole: for the first hole of a site from the ship over it, for others from
// leaving the hole before, until the bit clears the sea floor, for the last the rig floor.
func (h *Hole) Days() unit.Duration { return unit.Duration(h.End.Sub(h.Start).Seconds()) }

// CoredBy reports whether there are cores of some tools.
func (h *Hole) CoredBy(is func(coring.Tool) bool) bool {
	for t, n := range h.Cores {
		if n > 0 && is(coring.Tool(t)) {
			return true
		}
	}
	return false
}

// CoreCount is the number of cores of all known tools.
func (h *Hole) CoreCount() (n int) {
	for _, c := range h.Cores {
		n += c
	}
	return n
}

// Shallow is the depth below the sea floor above which a hole counts as a failed start or a trial
// of the mudline (SOURCES of the compiled records: 16 % of the holes on record).
const Shallow unit.Depth = 20

// FailedStart reports whether a hole stopped near the sea floor.
func (h *Hole) FailedStart() bool { return h.Depth < Shallow }
