package outputtest

import (
	"math"

	"coredays/model/check"
	"coredays/model/plan"
	"coredays/model/rig"
)

func SomePlan() *plan.Plan {
	return &plan.Plan{Title: "Invented", Ship: rig.Ship{Name: "some ship"}, Warnings: []string{"no weather is given"}}
}

func SomeFindings() []check.Finding {
	return []check.Finding{
		{Site: "SB-01", Hole: "B", What: "target within the approved depth", Verdict: check.Stop, Value: 380, Limit: 350, Unit: "mbsf", Source: "approved_to of the scenario"},
		{Site: "SB-02", What: "no approved depth is stated", Verdict: check.Caution, Value: math.NaN(), Limit: math.NaN(), Source: "a review approves a depth for each site, and says so in words that are longer than the column is wide"},
		{What: "sea days within the ship's endurance", Value: 56, Limit: 75, Unit: "d", Source: "a page"},
		{Site: "SB-01", Hole: "A", What: "string reaches the target", Value: 3811.4, Limit: 8423.2, Unit: "m", Source: "a sheet"},
		{Site: "SB-01", Hole: "C", What: "string reaches the target", Value: 3811.4, Limit: 8423.2, Unit: "m", Source: "a sheet"},
		{Site: "SB-01", Hole: "D", What: "string reaches the target", Value: 3500, Limit: 8423.2, Unit: "m", Source: "a sheet"},
	}
}
