package result

import (
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/unit"
)

// Question is what is asked of a comparison.
type Question int

// The questions.
const (
	WhichPlan Question = iota
	WhichOrder
	WhichDeparture
	WhatToCut
)

// Comparison is alternatives side by side, replication for replication in the same sea, ground and
// random stream as far as place, date and purpose are the same.
type Comparison struct {
	Question     Question
	Title        string
	File         string
	Call         []string // what was given after "coredays compare", without seed and replications
	Invented     bool     // the built-in demonstration
	Ship         string
	Seed         uint64
	Replications int // of each alternative
	StoppedEarly bool

	Alternatives []Alternative
	Differences  []Difference // of all pairs
	Best         int          // index of the first by the rule
	Confidence   float64      // of all statements about the best together, and of each difference by itself
	SameChance   float64      // chances so near to each other count as equal
	Search       *Search      // for an order
	Reference    int          // index of the alternative that the best is explained against; -1 for none
	Planned      int          // index of the order that the scenario has; -1 where the question is another
	Cuts         []Cut        // for what to cut
	Days         []DayMore    // for what to cut
	Warnings     []string
}

// Alternative is one of those compared.
type Alternative struct {
	Name    string
	Summary *Summary
	Order   []string // names of the primary sites, then of the alternates
	Ports   [2]string
	// Track is the way from port to port by waypoints and primary sites; Marks are the ports and
	// all sites.
	Track    []geo.Position
	Marks    []Mark
	Distance unit.Length // of the track
	Caps     []unit.Duration

	Alike    bool // can't be given from the best
	Unbeaten bool // no other alternative is as good or better in chance, days and metres, and better in one
	Behind   Interval
	Less     Interval
}

// Mark is a named place on a map.
type Mark struct {
	Name      string
	At        geo.Position
	Port      bool
	Alternate bool
}

// Interval is a mean with its bounds.
type Interval struct{ Mean, Low, High float64 }

// Difference is what one alternative has more than another, replication by replication.
type Difference struct {
	A, B         int      // indices of the alternatives
	Days         Interval // s that A needs more
	Chance       Interval // of all of the first rank within the days, that A has more
	Metres       Interval // recovered within the days, that A has more
	AShorter     float64  // share of the replications in which A needs less days
	Same         float64  // share in which they need the same
	Pairing      float64  // standard error of the difference without pairing over that with it; NaN where there is none
	SettlesDays  int      // replications after which the interval of Days would leave out 0; 0 where it does
	SettlesAbove bool     // more than SettlesDays, which is then as many as is worth telling
}

// Search says which orders were looked at, and how.
type Search struct {
	Allowed   int  // orders that keep the rules, as far as they were counted
	Uncounted bool // there are more than Allowed
	Estimated int  // orders judged by the visits of single sites
	Stages    []Stage
	LeftOut   int      // orders that nothing ruled out and that were left out for being behind in the last stage
	NextDays  Interval // s that the best order which was estimated and not sailed is behind the best one sailed, by the estimate
	NextFirst float64  // chance of the first rank that it is behind
	// ErrorDays and ErrorFirst are the standard deviations of sailed less estimated days and chances
	// over the orders that were sailed in the end, s and a share.
	ErrorDays, ErrorFirst float64
	Rule                  string // by which orders were ruled out, with its source
}

// Stage is a round of a search.
type Stage struct{ Orders, Replications int }

// Cut is what leaving out one thing saves and costs.
type Cut struct {
	plan.Cut
	Alternative *Summary // of the rest
	Saves       Spread   // s of the whole programme, paired
	Metres      Interval // less recovered by the whole programme
	Within      Interval // less recovered within the days; negative where the time goes to more core elsewhere
	Section     float64  // share of the site's section less that is recovered, mean
	First, All  Interval // chance more, of the rest
}

// DayMore is the worth of days more or less.
type DayMore struct {
	Days       float64
	First, All float64 // chances
	FirstMore  Interval
	AllMore    Interval
	Metres     float64
	MetresMore Interval
	InHand     Spread
}
