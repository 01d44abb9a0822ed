// Package result holds what happened: the diary of one simulated expedition and the summary of
// thousands. Values are in SI units; output turns them into days and tables.
package result

import (
	"time"

	"coredays/model/activity"
	"coredays/model/unit"
)

// Entry is one line of a diary: one activity, or several like it in a row.
type Entry struct {
	From, To time.Time
	Kind     activity.Kind
	Place    Place
	Depth    unit.Depth // of the bit or core, below the sea floor; negative above it
	Bottom   unit.Depth // of the hole in hand when the line begins, below the sea floor; not-a-number before it is spudded
	Note     string     // "core 7H, 9.5 m cut, 9.8 m up"
	Waves    unit.Length
}

// Place is where a ship is: at a site, perhaps with a hole or task in hand, or under way.
type Place struct{ Site, Hole, Way string }

// String is the place in words: "SB-01 A", or "Port Aldous to SB-01".
func (p Place) String() string {
	switch {
	case p.Site == "":
		return p.Way
	case p.Hole == "":
		return p.Site
	}
	return p.Site + " " + p.Hole
}

// Diary is one simulated expedition hour by hour.
type Diary struct {
	Title       string
	Seed        uint64
	Replication int
	Bound       bool          // true: under the rules of the expedition; false: the whole programme, no deadline
	Days        unit.Duration // from leaving port to the end
	Why         string        // how this replication was chosen: "the replication nearest to P90 of days needed"
	Warnings    []string      // what weakens it
	Entries     []Entry
	Usual       *Needed // what the replications took from which this one was chosen; nil where there are none, or under the rules
}
