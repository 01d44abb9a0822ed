package sea

import (
	"fmt"
	"time"

	"coredays/model/unit"
)

// Record is a sea that was measured or hindcast at one place: significant wave heights hour by
// hour on the basis of 3-hour means, with gaps. It does not change.
type Record struct {
	Start   time.Time // of the first hour, UTC
	Heights []float32 // m, hour by hour; NaN in a gap
	// PeriodFactor is the median of peak period over the root of the height, s/sqrt(m), at heights
	// of 2 m and more; 0 where the record says no period.
	PeriodFactor float64
	Report       Report
}

const (
	leastSpan  = 365 * 24 // h
	leastHours = 365 * 12 // h of heights: half a year's worth, spread over all seasons
)

// check says what keeps the record from standing for a year.
func (r *Record) check() error {
	valid := r.Report.Hours
	if len(r.Heights) < leastSpan || valid < leastHours {
		return tooShort(len(r.Heights), valid)
	}
	return nil
}

// tooShort gives a record of so many hours, with heights on so many of them at most.
func tooShort(hours, valid int) error {
	return fmt.Errorf("the record covers %.0f days and has heights on %.0f of them; at least a year is wanted, with half of its hours",
		float64(hours)/24, float64(min(hours, valid))/24)
}

// Years is how much there is in the record, without the gaps.
func (r *Record) Years() float64 { return float64(r.Report.Hours) / hoursOfYear }

// hoursOfYear is the length of a year with its share of a leap day.
const hoursOfYear = 365.25 * 24

// at is the time of an hour of the record.
func (r *Record) at(hour int) time.Time { return r.Start.Add(time.Duration(hour) * time.Hour) }

// Monthly is the climate that the record says. A month without heights takes the mean of the
// months that have some.
func (r *Record) Monthly(source string) Climate {
	var m Moments
	m.add(r.Start, r.Heights)
	c := Climate{Source: source}
	for k := range 12 {
		c.Mean[k], c.Variation[k] = unit.Length(m.Mean(k)), m.Deviation(k)/m.Mean(k)
	}
	c.fill()
	return c
}

// fill gives months without figures the mean of the others.
func (c *Climate) fill() {
	var mean, variation, n float64
	for m := range 12 {
		if c.Mean[m] > 0 {
			mean, variation, n = mean+float64(c.Mean[m]), variation+c.Variation[m], n+1
		}
	}
	for m := range 12 {
		if !(c.Mean[m] > 0) {
			c.Mean[m], c.Variation[m] = unit.Length(mean/n), variation/n
		}
	}
}
