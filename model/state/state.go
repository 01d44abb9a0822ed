// Package state holds where a ship stands at a moment of an expedition: what is done, what is in hand and since when,
// as the operations log and the core table tell it, or as the crew puts it right. The rest of the expedition is
// simulated from it.
package state

import (
	"time"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/unit"
)

// State is where a ship stands.
type State struct {
	At    time.Time
	Now   Ship   // at that moment, as far as the log tells
	Steps []Step // the last things done, the one in hand among them, each with the ship before it
	Sites []Site // as in the plan
	Items []Item // holes and tasks in the order of the plan, site after site
	Cores []Core // in the order in which they came up
	Spent [activity.Kinds]unit.Duration
	Words string        // what is in hand, in the log's words
	Since time.Time     // when that began
	Doing activity.Kind // what the log has last
	Held  unit.Duration // how long that has lasted without a break
	Over  unit.Duration // that what is in hand, or trouble, still lasts by the crew's estimate; 0 where they did not say
	Waves unit.Length   // significant wave height now; not a number where it is not stated
	ToGo  bool          // how far she still has to sail is stated
	Way   unit.Length   // that distance
	Home  time.Time     // latest arrival in port; zero for the plan's
	Gone  Gone          // what stayed in holes
	From  string        // file of the log
	Notes []string      // what was taken to be so without the log saying it
}

// Gone is what strings lost so far took with them: less is left on board.
type Gone struct {
	Assemblies int
	Pipe       unit.Length
}

// Ship is what decides what she does next.
type Ship struct {
	Site        int // index into the plan's sites; None under way and in port
	Item        int // index into State.Items; None where no hole or task is in hand
	LastSite    int // where she was last; None before the first site
	OnStation   bool
	Bit         unit.Length // below the sea surface; 0 with all pipe on deck
	Assembly    coring.Assembly
	Rotated     unit.Duration // by the bit in use
	Longest     unit.Length   // longest string run so far
	TriedOut    bool          // an assembly was made up before on this expedition
	LastService time.Time
	SinceOther  [activity.Kinds]unit.Duration // work since other work on site was done last
	Hole        Hole                          // of the item in hand
	TaskDone    unit.Duration
	Trips       [maxTrips][2]unit.Length // bit from and to, since the line was slipped and cut
	NumberOf    int                      // of these trips
	Clear       bool                     // of the last hole: the ship need not move before the one in hand is begun
	TryOut      bool                     // the first assembly is made up, and other work on site was not done since
}

// maxTrips is how many trips since the last slip and cut are kept: the line is cut after far fewer.
const maxTrips = 64

// None is the index of nothing.
const None = -1

// Hole is how far a hole is.
type Hole struct {
	Open        bool
	Opened      time.Time // when it was spudded; zero where that is not known
	Depth       unit.Depth
	Stage       int  // index of its coring stage
	Half        bool // the tool that takes over from a refused piston corer is in use
	Partials    int  // incomplete strokes in a row
	Cores       int
	Unswept     int // cores since the last mud sweep, of tools that make cuttings
	Probes      int
	Funnel      bool
	Stabs       int
	Cased       Cased
	Conditioned bool
	Released    bool
	Hung        bool // pipe at logging depth, rigged up
	Logged      int  // tool strings run
	Filled      bool
	Finished    bool // it is being left, whatever the plan has
	Lost        bool
}

// Progress is how far a site or an item is.
type Progress int

// The stages of progress.
const (
	ToCome Progress = iota
	InHand
	Done
	Dropped
)

func (p Progress) String() string { return [...]string{"to come", "in hand", "done", "dropped"}[p] }

// Site is what is known of a site.
type Site struct {
	State         Progress
	Arrived, Left time.Time
	Waited        unit.Duration // on weather there
	FloorKnown    bool
}

// Item is what is known of a hole or task.
type Item struct {
	Site, Number int // of the plan's site, and of the item there
	State        Progress
	Began, Ended time.Time
	Depth        unit.Depth    // deepest
	Refused      unit.Depth    // where a piston corer was refused; 0 if it was not
	Spudded      int           // times
	Lost         unit.Duration // of its time, to waiting, repairs and trouble
	Incomplete   bool          // left before its target
}

// Core is a core that came on deck.
type Core struct {
	Item             int
	Number           int
	Tool             coring.Tool
	Top              unit.Depth
	Cored, Recovered unit.Length
	OnDeck           time.Time // zero where it is not known
}

// Step is one thing done.
type Step struct {
	Kind     activity.Kind
	From, To time.Time
	Worked   unit.Duration // of that time
	Idle     unit.Duration // waiting and repairs from when it began until it was done or the log ended
	Before   Ship
}

// Fault is what keeps a state from being told: papers that contradict the plan, the clock or themselves.
type Fault struct {
	File string
	Row  int
	Why  string
}
