package words

import (
	"math"
	"time"

	"coredays/model/result"
)

// longest is the span after sailing beyond which a date is not stated: a time.Duration ends at 292
// years, and no expedition comes near.
const longest = 100 * 365.25 * 86400 // s

// DateAfter is the moment so many seconds after sailing.
func DateAfter(sails time.Time, seconds float64) (at time.Time, exists bool) {
	if sails.IsZero() || !Defined(seconds) || math.Abs(seconds) > longest {
		return time.Time{}, false
	}
	return sails.Add(time.Duration(seconds * float64(time.Second))).UTC(), true
}

// Moment writes a date with its time.
func Moment(at time.Time) string { return at.UTC().Format("2 Jan 2006 15:04") + " UTC" }

// Day writes a date without its year: no expedition is that long.
func Day(at time.Time) string { return at.Format("2 Jan") }

// Dates writes the day of P50 and the days of P10 and P90 where they are others:
// "30 Jan (28 Jan–2 Feb)".
func Dates(sails time.Time, after result.Spread) string {
	middle, exists := DateAfter(sails, Middle(after))
	if !exists {
		return Absent
	}
	early, one := DateAfter(sails, after.P10)
	late, two := DateAfter(sails, after.P90)
	if !one || !two || !Spreads(after) || Day(early) == Day(late) {
		return Day(middle)
	}
	return Day(middle) + " (" + days(early, late) + ")"
}

// days writes two days, their month once where it is the same.
func days(early, late time.Time) string {
	if early.Month() == late.Month() && early.Year() == late.Year() {
		return early.Format("2") + "–" + Day(late)
	}
	return Day(early) + "–" + Day(late)
}

// Date writes a departure.
func Date(at time.Time) string { return at.UTC().Format("2 Jan 2006") }
