package result

import (
	"time"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/unit"
)

// Spread summarises a result over replications, in the SI base unit of the result.
// The intervals hold the true value 95 times in 100 as far as the number of replications goes:
// simulation error only, not the error of the model.
type Spread struct {
	N                   int // replications that it rests on; below 2 only Mean and P50 mean anything
	Mean, SD            float64
	P10, P50, P90       float64
	P10CI, P50CI, P90CI [2]float64
}

// Summary is the answer of a simulation.
type Summary struct {
	Scenario     string
	File         string
	Settings     []string // values set on the command line, as path=value
	Ship         string
	Invented     bool // the built-in demonstration
	Anyway       bool // simulated even if the check stops it
	Seed         uint64
	Replications int
	StoppedEarly bool
	Sails        time.Time
	InPort       Spread // days in port before sailing, apart from all the rest, s

	Needed      Needed
	Allotted    Allotted
	Recovery    Recovery
	Deck        Deck
	Sites       []Site // in the order of the visits
	Drivers     []Driver
	Consumables []Consumable
	Warnings    []string
	Checked     string // what the check of the plan found, in a sentence; empty where nobody looked
	Based       string // how many numbers the answer rests on, and whose they are, in a sentence; likewise
}

// Needed is the whole programme of primary sites done, without a deadline, port to port.
type Needed struct {
	Total   Spread  // s
	Fits    float64 // share of the replications that take no more than the sea days
	ByClass [activity.Classes]Spread
	// Curve is the quantiles of Total in equal steps from the least to the largest, s; nil unless asked for.
	Curve []float64
}

// Allotted is what gets done under the rules of the expedition within its days.
type Allotted struct {
	SeaDays       unit.Duration
	ChanceAll     float64 // nothing of any primary site dropped or cut short; what is not called for is not missed
	ChancePrimary float64 // nothing of rank 1 at any primary site, likewise
	InHand        Spread  // s left of the sea days at the end; never negative unless port was reached late
	Recovered     Spread  // m, of which so much is recovered at primary sites and at alternates:
	OfPrimary     Spread  // m
	OfAlternates  Spread  // m
	Late          float64 // chance of reaching port after the sea days
}

// Recovery is what the whole programme brings up.
type Recovery struct {
	Cored     Spread // m
	Recovered Spread // m
	Percent   Spread // of the cored length, 0 to 100 and above
	Cores     Spread
	ByTool    [coring.Tools]ToolRecovery
}

// Deck is how fast cores are recovered, and how far the laboratory falls behind.
type Deck struct {
	MostCores Spread // on the busiest day
	Behind    Spread // s, at most, of cores waiting for the laboratory
}

// ToolRecovery is the share of one tool.
type ToolRecovery struct {
	Cores     Spread
	Cored     Spread // m
	Recovered Spread // m
	Percent   Spread // over replications that used the tool
}

// Site is one site. Days, metres and dates are of the whole programme for a primary site; for an
// alternate they are of the expeditions that reached it within their days.
type Site struct {
	Name       string
	Alternate  bool
	WaterDepth unit.Length
	Target     unit.Depth
	Cap        unit.Duration // that the expedition may spend there; 0 for no limit

	Days            Spread // s, from arrival to leaving
	Waiting         Spread // s on station, waiting on weather
	Arrives, Leaves Spread // s since sailing

	ChanceReached  float64 // within the days
	ChanceComplete float64 // within the days: nothing dropped or cut short; what is not called for is not missed

	Cored, Recovered, Percent, Cores Spread
	Coverage                         Spread // share of the section down to the target that is recovered in at least one hole

	Holes   []Hole
	Layers  []Layer // with Section
	Section []Slice // by depth; nil unless asked for
}

// Hole is a hole or task of a site.
type Hole struct {
	Name          string
	Task          bool
	Rank          int
	Conditional   bool    // wanted only as another hole turns out
	Days          Spread  // s
	Depth         Spread  // m below sea floor; N = 0 for a task
	Refusal       Spread  // m below sea floor, over the replications in which a piston corer was refused
	ChanceRefused float64 // of the replications
	Cored         Spread  // m
	Recovered     Spread  // m
	Percent       Spread  // of the cored length
	Covered       Spread  // share of the site's section that was recovered in this hole or one before it
	// What becomes of it within the days; the three add up to 1.
	ChanceDone      float64     // completed
	ChanceNotCalled float64     // its condition did not arise
	ChanceDropped   float64     // left out, or cut short
	Marks           []DepthMark // of the way down; nil for a task, and unless asked for
}

// DepthMark is when a hole came to a depth.
type DepthMark struct {
	Depth         unit.Depth
	Share         float64 // of the visits to the site in which it came so deep
	P10, P50, P90 float64 // s after arriving at the site, of those; NaN for none
}

// Slice is a part of a site's section, on average over the visits.
type Slice struct {
	From, To         unit.Depth
	Cored, Recovered unit.Length // of all holes together, a visit
	Covered          float64     // share of it recovered in at least one hole
}

// Layer is a layer as the survey has it.
type Layer struct {
	Name   string
	Bottom unit.Depth
}

// Driver is a cause and its share of the variance of days needed. Shares add up to 1; a negative
// one belongs to a cause that is short where the rest is long.
type Driver struct {
	Name  string
	Share float64
}

// Influence is how much a number matters: its share of the variance of days needed, NaN where no simulation
// says and 0 where what is given may be chance. The causes in whose time it lies have shares that add up to it, the
// largest first; they are parts of the shares that these causes have as drivers.
type Influence struct {
	Share  float64
	Causes []Driver
}

// Consumable is what to have on board.
type Consumable struct {
	Item     string
	P50, P90 float64
}
