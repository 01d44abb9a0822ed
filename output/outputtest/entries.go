package outputtest

import (
	"math"

	"coredays/model/basis"
	"coredays/model/result"
)

func SomeEntries() []basis.Entry {
	untold := result.Influence{Share: math.NaN()}
	return []basis.Entry{
		{Group: "expedition", Name: "sea days", Low: 56, Mid: 56, High: 56, Unit: "d", From: basis.Stated, Source: "plan.yaml:4", Quantity: -1, Influence: untold},
		{Group: "ship and crew", Name: "piston_duration_factor", Low: 66.4, Mid: 100, High: 150.5, Unit: "%", Varies: "35 % expedition, 65 % run", From: basis.OfShip, Source: "core records", Quantity: 1,
			Influence: result.Influence{Share: 0.173, Causes: []result.Driver{{Name: "piston coring", Share: 0.15}, {Name: "weather", Share: 0.021}, {Name: "pipe trips", Share: 0.002}}}},
		{Group: "ship and crew", Name: "barrels", Low: 3, Mid: 3, High: 3, From: basis.OfShip, Memory: true, Source: "from memory", Quantity: 2, Influence: untold},
		{Group: "ground", Site: "SB-01", Name: "drilling rate, chalk to 300 mbsf", Low: 18, Mid: 28.8, High: 46.1, Unit: "m/h", Varies: "100 % site", From: basis.BuiltIn, Source: "ODP Leg 197 Prelim. Report", Quantity: 3},
	}
}

// SomeSimulation is what of a simulation goes with a basis.
func SomeSimulation() *result.Summary {
	return &result.Summary{Replications: 2000, Drivers: []result.Driver{{Name: "weather", Share: 0.8}, {Name: "piston coring", Share: 0.2}}}
}
