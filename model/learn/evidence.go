package learn

import "coredays/model/spread"

// Bound says what an observation tells of the value.
type Bound int

// The kinds of observation.
const (
	Exactly Bound = iota // the value itself, within the error stated
	AtLeast              // the value is this or higher: work that was cut short, or is still in hand
	AtMost               // the value is this or lower
)

// Place is where a value was observed. Sites are numbered by the caller, holes within their site.
type Place struct {
	Site, Hole int
}

// Observation is one value that was observed.
type Observation struct {
	At    Place
	Run   int     // number of the run at the hole; it matters where runs hang together (persistence)
	Value float64 // SI, as the quantity
	Bound Bound
	Error float64 // standard deviation of the reading, in the unit of the value, such as rounding to a quarter of an hour
	Mean  int     // of how many runs the value is the mean; 0 counts as 1
}

// Evidence is what was observed of one quantity.
type Evidence struct {
	Of   spread.Quantity
	Seen []Observation
	// Above names the scores of its levels above the run, which all evidence of the same name has in common, such as the
	// recovery of a tool in several layers; 0 for scores of its own. Those that have them in common hang on the common
	// factor alike.
	Above uint64
}

// Factor names one of the scores that make up a value: of which evidence, at which level and place. Of is Common for
// the factor that all quantities share. A factor of the level Run is the score of the last run observed at the place,
// which the next run hangs on where runs persist.
type Factor struct {
	Of    int // index of the evidence, or Common; above the run, of the first that has the score
	Level spread.Level
	At    Place // Site counts at the level Site, both at the levels Hole and Run, neither at Expedition
}

// Common stands for the factor of all quantities in Factor.Of.
const Common = -1

// Score is what is known of a standard normal score: before anything is observed mean 0 and sd 1.
type Score struct {
	Mean, SD float64
}
