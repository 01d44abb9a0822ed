package output

import (
	"coredays/model/logbook"
	"coredays/model/unit"
	"math"
)

// daysInterval is an interval of seconds in days.
func daysInterval(i logbook.Interval) logbook.Interval { return scaled(i, 1/float64(unit.Day)) }

func scaled(i logbook.Interval, by float64) logbook.Interval {
	return logbook.Interval{Mean: i.Mean * by, Low: i.Low * by, High: i.High * by}
}

// bounded writes "1.4 (1.1 to 1.6)", and one number where the bounds would say nothing.
func bounded(i logbook.Interval, places int) string {
	mean, low, high := signedFixed(i.Mean, places), signedFixed(i.Low, places), signedFixed(i.High, places)
	if !defined(i.Low) || !defined(i.High) || low == high {
		return mean
	}
	return mean + " (" + low + " to " + high + ")"
}

// points writes an interval of chances in points, to a tenth where that says something.
func points(i logbook.Interval) string {
	i = scaled(i, 100)
	if math.Max(math.Abs(i.Low), math.Abs(i.High)) < 9.95 {
		return bounded(i, 1)
	}
	return bounded(i, 0)
}
