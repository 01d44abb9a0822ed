package places

import (
	"math"
	"time"

	"coredays/model/chance"
	"coredays/model/geo"
	"coredays/model/unit"
)

// Year is what closes a place in each month of any year: cyclones as they come, and ice where it is the rule.
type Year struct {
	Cyclones [12]Cyclones // January first
	Ice      [12]Ice
	// Key is that of the region whose storms a place shares: cells of 5 degrees, about the width of ground
	// that one storm closes, so that neighbours meet the same ones. Across the border of two such cells they
	// do not.
	Key chance.Key
}

// region is a cell of places that share their storms.
var region = Grid{5}

// YearAt is that of a place.
func YearAt(p geo.Position) *Year {
	centre := region.Centre(region.Of(p))
	y := &Year{Key: chance.KeyOf("cyclones near", centre.String())}
	for m := range y.Cyclones {
		y.Cyclones[m], y.Ice[m] = CyclonesNear(p, time.Month(m+1)), IceAt(p, time.Month(m+1))
	}
	return y
}

// Open reports whether there is a month that ice does not close as a rule.
func (y *Year) Open() bool {
	for _, ice := range y.Ice {
		if ice != IceAsARule {
			return true
		}
	}
	return false
}

// Before and After are how much longer than a storm is near the site is given up, judgement: a day ahead all
// pipe is recovered and the ship runs, since a day's forecast of the track errs by some 100 nmi (from memory);
// half a day after she is back from 120 nmi off at 10 kn.
const (
	Before = 24 * unit.Hour
	After  = 12 * unit.Hour
)

// Lasts is how long a storm closes the site in the mean, the flight included; 0 where there is none.
func (c Cyclones) Lasts() unit.Duration {
	if c.Storms == 0 {
		return 0
	}
	return Before + c.Near() + After
}

// Closed is the share of a month that cyclones and ice close a place for in the mean: of storms that come
// without memory and each close it for so long, the share of the time that at least one does is
// 1 - exp(-rate × time), whatever the spread of the times (Takács 1962, the busy share of M/G/∞, from memory).
func (y *Year) Closed(month time.Month) float64 {
	m := month - 1
	if y.Ice[m] == IceAsARule {
		return 1
	}
	c := y.Cyclones[m]
	return 1 - math.Exp(-c.Storms*c.Lasts().Days()/MonthDays(month))
}
