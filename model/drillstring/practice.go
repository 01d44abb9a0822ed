package drillstring

import "coredays/model/unit"

// Rules of thumb of the trade for a riserless drillship, all common practice and from memory: a plan is
// set beside them, nothing is computed from them.
const (
	DerrickClass = 1_200_000 * unit.PoundForce // static capacity of the derrick
	HeaviestRun  = 700_000 * unit.PoundForce   // strings that are run and stopped
	HighestSea   = 30 * unit.Foot              // work goes on up to about this
)
