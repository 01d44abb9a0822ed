// Package morning is what is said each morning of an expedition: where the ship stands, when she must leave, what
// still fits, what each choice is worth, and what was learned. Plain figures, for the rooms of output.
package morning

import (
	"time"

	"coredays/model/result"
	"coredays/model/rig"
	"coredays/model/state"
	"coredays/model/unit"
)

// Page is the answer of one morning.
type Page struct {
	Scenario     string
	Seed         uint64
	Replications int
	At, Sails    time.Time
	ArriveBy     time.Time // when the sea days end
	State        *state.State
	LocalAhead   int // h by which the ship's local time is ahead of UTC, by her longitude
	Where        Where
	Known        bool // the operation in hand was told from the log, and goes on where it is

	Home          result.Spread // arrival in port, s after sailing
	DaysLeft      result.Spread // s from now to port
	ChanceAll     float64
	ChancePrimary float64
	ChanceInTime  float64       // port is reached within the days
	Recovered     result.Spread // m of the whole expedition
	LeaveBy       []Leave
	Next          []Ahead
	Shifts        []result.Spread // cores on deck in each shift of twelve hours from now
	Items         []Item
	Choices       []Choice // the first is to go on as planned
	Advice        string   // name of the choice that is told apart from going on and best; empty where none is
	Pace          *Pace
	Learned       []Learned
	Before        *Changed // against the page before; nil where none is given
	Warnings      []string
}

// Where is where the ship stands, by names.
type Where struct {
	Site, Hole string
	Floor      unit.Length // depth of water
}

// Leave is the latest time to leave for a chance of reaching port in time.
type Leave struct {
	Chance                       float64
	PullOut, BitOnDeck, UnderWay time.Time // zero where there is no such time
}

// Ahead is what the next hours are expected to give.
type Ahead struct {
	Hours            float64
	Cored, Recovered result.Spread // m
}

// Item is a hole or task.
type Item struct {
	Site, Name string
	Status     string // done, in hand, to come, dropped, lost
	Rank       int
	Chance     float64
	Finished   result.Spread // s after sailing, where it is done
	Depth      result.Spread // m below the sea floor
	Recovered  result.Spread // m
}

// Choice is an alternative sailed from the same state with the same random numbers.
type Choice struct {
	Name                     string
	ChancePrimary, ChanceAll float64
	Recovered, DaysLeft      result.Spread
	// Primary, All, Metres and Days are the differences from going on, their intervals those of simulation error alone.
	Primary, All, Metres, Days Difference
}

// Difference is a paired difference, with its 95 % interval.
type Difference struct {
	Mean float64
	CI   [2]float64
}

// Told reports whether the difference is more than noise.
func (d Difference) Told() bool { return d.CI[0] > 0 || d.CI[1] < 0 }

// Pace is how far ahead (below 0) or behind the ship is of the plan, s, and by what.
type Pace struct {
	Behind, Sea, Trouble, Scope, Rest float64
}

// Learned is a quantity of which something was seen.
type Learned struct {
	Rate      rig.Rate // rig.Rates for one of the ground's
	Name      string
	Plan, Now [3]float64
	Seen      int
}

// Changed is what is other than on the page before.
type Changed struct {
	At                                  time.Time
	Home                                float64 // s that the even arrival is later
	ChancePrimary, ChanceAll, Recovered float64 // by how much more
	Advice                              string  // on the page before
	Sea, Trouble, Rest, Scope           float64 // s by which the ship fell further behind, by cause
	Split                               bool    // the page before says how far behind she was
}
