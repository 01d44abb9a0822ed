package places

import (
	_ "embed"
	"math"
	"sync"
	"time"

	"coredays/model/geo"
	"coredays/model/unit"
)

// CycloneSource says where cyclones come from, and how coarse they are.
const CycloneSource = "best tracks 1980-2019 of the Joint Typhoon Warning Center (US Navy) and HURDAT2 (Landsea and Franklin 2013, Mon. Wea. Rev. 141, 3576) in cells of 2.5 degrees"

// CycloneReach is how near to the centre of a cell a storm counts.
const CycloneReach unit.Length = 300_000

// CycloneYears is how many years the table counts.
const CycloneYears = 40

// Twelve planes of four counts each over all years, one byte each: storms of gale force, days with one,
// storms of hurricane force, days with one.
//
//go:embed cyclones.gz
var cyclonesPacked []byte

var cycloneTable = sync.OnceValue(func() []byte {
	return must(unpacked("cyclones", cyclonesPacked, 12*4*CycloneGrid.Cells()))
})

// Cyclones are the tropical storms of a month whose centre comes within CycloneReach of the centre of a cell.
type Cyclones struct {
	Storms        float64 // mean number of those of gale force (34 kt, wind of one minute)
	Days          float64 // share of the days that have one
	Hurricanes    float64 // mean number of those of hurricane force (64 kt)
	HurricaneDays float64 // share of the days that have one
	month         time.Month
}

// MonthDays are the days of a month, leap years shared out.
func MonthDays(m time.Month) float64 {
	if m == time.February {
		return 28.25
	}
	return float64(time.Date(2001, m+1, 0, 0, 0, 0, 0, time.UTC).Day())
}

// CyclonesNear are those of the cell which holds a place; none where none is on record.
func CyclonesNear(p geo.Position, month time.Month) Cyclones {
	from := 4 * ((int(month)-1)*CycloneGrid.Cells() + CycloneGrid.Of(p))
	counts := cycloneTable()[from : from+4]
	days := CycloneYears * MonthDays(month)
	return Cyclones{float64(counts[0]) / CycloneYears, float64(counts[1]) / days, float64(counts[2]) / CycloneYears, float64(counts[3]) / days, month}
}

// sampling is the time between looks at a track when the table was made.
const sampling = 3 * unit.Hour

// Near is how long a storm of gale force is within CycloneReach in the mean; 0 where there is none. The table
// counts the days that have one: a storm there at n looks in a row touches 1 + (n-1)/8 days in the mean,
// wherever in the day it begins, and is there for n looks.
func (c Cyclones) Near() unit.Duration {
	if c.Storms == 0 {
		return 0
	}
	touched := c.Days * MonthDays(c.month) / c.Storms
	const looks = float64(unit.Day / sampling)
	return sampling * unit.Duration(math.Max(1, 1+(touched-1)*looks))
}
