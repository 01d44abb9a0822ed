package output

import (
	"math"
	"time"

	"coredays/model/logbook"
)

// longest is the span after sailing beyond which a date is not told: a time.Duration ends at 292
// years, and no expedition comes near.
const longest = 100 * 365.25 * 86400 // s

// dateAfter is the moment so many seconds after sailing.
func dateAfter(sails time.Time, seconds float64) (at time.Time, exists bool) {
	if sails.IsZero() || !defined(seconds) || math.Abs(seconds) > longest {
		return time.Time{}, false
	}
	return sails.Add(time.Duration(seconds * float64(time.Second))).UTC(), true
}

// moment writes a date with its time.
func moment(at time.Time) string { return at.UTC().Format("2 Jan 2006 15:04") + " UTC" }

// day writes a date without its year: no expedition is that long.
func day(at time.Time) string { return at.Format("2 Jan") }

// dates writes the day of P50 and the days of P10 and P90 where they are others:
// "30 Jan (28 Jan–2 Feb)".
func dates(sails time.Time, after logbook.Spread) string {
	middle, exists := dateAfter(sails, middle(after))
	if !exists {
		return absent
	}
	early, one := dateAfter(sails, after.P10)
	late, two := dateAfter(sails, after.P90)
	if !one || !two || !spreads(after) || day(early) == day(late) {
		return day(middle)
	}
	return day(middle) + " (" + days(early, late) + ")"
}

// days writes two days, their month once where it is the same.
func days(early, late time.Time) string {
	if early.Month() == late.Month() && early.Year() == late.Year() {
		return early.Format("2") + "–" + day(late)
	}
	return day(early) + "–" + day(late)
}

// Date writes a departure.
func Date(at time.Time) string { return at.UTC().Format("2 Jan 2006") }
