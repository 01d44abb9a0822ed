package records

import (
	"fmt"
	"math"
	"slices"

	"coredays/model/coring"
	"coredays/model/record"
)

// Open lists what a record of holes does not tell, so that a hindcast draws or sets it and a plan states it; all else is
// the ship, the ground and the sea of any plan.
func (u *Unrecorded) Open() []string {
	low, high := math.Inf(1), 0.0
	for _, w := range u.Work {
		low, high = min(low, w.Chance), max(high, w.Chance)
	}
	var pistons, rotated, cores []float64
	for _, e := range u.Eras {
		pistons, rotated, cores = append(pistons, e.Piston), append(rotated, e.Rotated), append(cores, e.Cores[coring.RCB])
	}
	metresPerHour := func(ground int) float64 { return 3600 * u.Ground[ground].Rate.Median() }
	return []string{
		fmt.Sprintf("measuring, casing and remedial work: at %.2g to %.2g %% of the holes, by their deepest tool", 100*low, 100*high),
		fmt.Sprintf("the ground: cut at %.2g m/h where piston or extended barrel cored, rotary at %.2g m/h below that and at %.2g m/h from the sea "+
			"floor, at %.2g %% of it in more than %.0f m of water; piston corers are not refused before the depth on record", metresPerHour(softGround),
			metresPerHour(rotaryGround), metresPerHour(bareGround), 100*u.InWater.Rate, u.InWater.From),
		fmt.Sprintf("the years: piston cycles take %.3g to %.3g %%, those of rotated tools %.3g to %.3g %%, of the ship's; rotary cores have %.3g to %.3g %% of her mean length",
			100*slices.Min(pistons), 100*slices.Max(pistons), 100*slices.Min(rotated), 100*slices.Max(rotated), 100*slices.Min(cores), 100*slices.Max(cores)),
		fmt.Sprintf("the days that an expedition had: legs are %.0f d on their sites, standard deviation %.0f d, whatever they drill; the forecasts of a leg's "+
			"sites are moved by that, unless the table has first_of_leg", u.LegTime.Mean, u.LegTime.SD),
		fmt.Sprintf("accidents that ended a hole show in it, and pipe that hung between sites in the time between them (%s)", record.HangingRule()),
	}
}
