package ship

import (
	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/voyage"
	"coredays/sim/random"
	"coredays/sim/statistics"
)

// Ship is the state of one replication at sea: where she is, what is in hand, and what has been done.
type Ship struct {
	random.Draws
	Voyage *voyage.Voyage
	// Constrained makes the limits of the expedition hold: leave in time, caps, ranks, alternates.
	Constrained bool
	Forked      bool
	Rewind      bool // a limit bound in the midst of a script: the unconstrained ship must sail from the start
	Crew        *CrewEstimates
	PlannedTime float64 // estimated s of the items finished so far
	ActualTime  float64 // s that they took
	TimeUp      bool    // no more is begun: the ship goes home

	Clock    float64 // s after sailing
	Past     Past    // of the operation in hand, by the log; over where none is given
	Agenda   agenda
	Sea      Weather
	Forecast forecast
	Ended    ending

	At         voyage.Place
	Here       *voyage.Site // nil at sea or in port
	Positioned bool
	Closed     bool         // the site can't be used now
	closing    int          // of the site, by its number: what closes it next or does so now
	Shut       bool         // a cyclone or ice of the known place closes it now
	Offset     bool         // the ship must move before the next hole is begun
	Handled    float64      // s of work that brings other work since that was done last
	OtherLeft  float64      // s of other work that has come due and is not done
	TriedOut   bool         // rig and tools, at the first site
	Towards    voyage.Place // where she goes when nothing is left to do here
	InPort     float64      // s in port before sailing
	Home       bool         // reached the last port
	Stuck      bool         // never got there

	BHA      coring.Assembly
	Rotating float64 // s of rotating with the bit in use
	BitLife  float64 // s; 0 for a bit that does not wear
	Bit      float64 // depth of the bit below the sea surface, m; 0 with all pipe on deck
	Drifted  float64 // longest string strapped and drifted so far, m

	LineWork    float64 // J since the last slip and cut
	LastService float64 // s after sailing

	LayerDepth float64 // depth of the layers in this hole over that of the survey
	Shift      float64 // of the depths of this hole against its neighbours, m

	Item     *voyage.Item // in hand; nil when the next is to be chosen
	Task     Task
	LastItem int // number + 1 of the item finished last at this site; 0 for none
	Hole     Hole
	Gone     gone
	Deck     deck
	Sites    []SiteRecord
	Items    []ItemRecord
	Tools    [coring.Tools]toolRecord
	Consumed statistics.Consumed
	bits     []uint64 // recovered half-metres of every site
	coverage coverage
	Depths   depths
	Slices   statistics.Slicing

	Spent [activity.Kinds]float64 // s by kind of activity
	Cores *CoreLog                // nil where nobody asks for the cores one by one
	Diary *Recorder

	Halt  <-chan struct{} // ends the replication; nil for never
	ticks uint32          // activities so far, of all replications: many short ones are long too
}

// ending says why a script of activities was abandoned. It sticks: every further activity of the
// script falls through, and the outer loop makes the ship safe and picks what comes next.
type ending int

const (
	GoingOn    ending = iota
	StormClear        // the sea asks for the bit to be clear of the sea floor
	StormPipe         // the sea asks for all pipe to be recovered
	noTime            // time is up while waiting on weather, or the sea never lets the work go on
	stringLost        // the string was severed: the assembly and the hole are gone
)

// SiteRecord is what is known of a site.
type SiteRecord struct {
	State            Progress
	Arrived, Left    float64 // s after sailing
	Waited           float64 // s waiting on weather while there
	Cored, Recovered float64 // m
	Cores            int
	FloorKnown       bool    // the mudline has been found
	Surveyed         bool    // the sea floor was looked at
	Closings         int     // times that were drawn at which it closes
	Breakdowns       int     // times that were drawn at which the rig breaks down there
	toBreakdown      float64 // s on station until the next one; 0 until it is drawn
}

// ItemRecord is what is known of a hole or task.
type ItemRecord struct {
	State      Progress
	Began      float64 // s after sailing
	Took       float64 // s
	Leaving    float64 // s of these from when the last item of a site was done until the ship was under way
	Depth      float64 // deepest, m below sea floor
	Refused    float64 // where a piston corer was refused, m below sea floor; 0 if it was not
	Covered    float64 // share of the site's section recovered when it was finished
	Cored      float64 // m
	Recovered  float64 // m
	Attempts   int     // times it was lost
	Holes      int     // times it was spudded
	Incomplete bool    // ended before its target
	Marks      int     // depths of the chart that it came to
}

// Progress is how far a site or an item is.
type Progress int

const (
	Ahead Progress = iota
	UnderWay
	Done
	Dropped
	NotCalled // wanted only as another hole turns out, and it turned out otherwise
)

// toolRecord counts what a coring tool did.
type toolRecord struct {
	Cores            int
	Cored, Recovered float64 // m
}

// CopyState makes the ship a copy of another that goes its own way from here.
func (s *Ship) CopyState(o *Ship) {
	series, sites, items, bits, draws, depths := s.Sea.Series, s.Sites, s.Items, s.bits, s.Draws, s.Depths
	*s = *o
	s.Draws = draws
	s.Draws.CopyFrom(&o.Draws)
	s.Sea.Series = series
	s.Sea.copyFrom(&o.Sea)
	s.Sites = append(sites[:0], o.Sites...)
	s.Items = append(items[:0], o.Items...)
	s.bits = append(bits[:0], o.bits...)
	s.Depths = depths
	s.Depths.copyFrom(&o.Depths)
}

// Task is how far the task in hand is. The zero value is one not yet begun.
type Task struct {
	Step int
	Left float64 // s of work left of the step; 0 where it is not begun
}

// TaskStep is the step of the task in hand.
func (s *Ship) TaskStep() *plan.Step { return &s.Item.Task.Steps[s.Task.Step] }

// SiteNumber is the index of the site where the ship is.
func (s *Ship) SiteNumber() int { return int(s.At - voyage.FirstSite) }
