package score

import "coredays/model/record"

// Hindcast is the answer of a hindcast: sites on record against what the simulator gives them.
// Times of sites are in days.
type Hindcast struct {
	File           string
	Level          string
	Seed           uint64
	Replications   int
	Card           Card
	WithoutLegTime Card // of days, where nothing is known of how long legs are on their sites
	Classes        []Class
	Sites          []Site
	Legs           []Leg
	OfSites        []Coverage // by result
	OfLegs         []Coverage
	Cycles         []Cycle
	Recovery       []Recovery
	AsItGoes       *AsItGoes // nil where it was not asked for
	Ground         *AsItGoes // days of sites told their ground, against the same untold; nil at other levels
	Open           []string  // what the record does not tell, in words
	LeftOut        []record.LeftOut
}

// Site is a site's days on record and in the forecast.
type Site struct {
	Program, Leg, Site        string
	Actual                    float64
	Mean, P10, P50, P90, CRPS float64
	Water, Depth              float64 // m
	Tool                      string
	Year                      int
	Recovered, Cores          Quantiles
}

// Cycle is the core cycle of a tool in a class of water depth: medians of hole medians, min.
type Cycle struct {
	Tool, DepthClass  string
	Holes             int
	Record, Simulated float64
}

// Recovery is the recovery of holes by a tool: P10, P50 and P90 over holes, %.
type Recovery struct {
	Tool              string
	Holes             int
	Record, Simulated [3]float64
}
