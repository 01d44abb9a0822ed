package words

import (
	"math"

	"coredays/model/result"
	"coredays/model/unit"
)

// DaysInterval is an interval of seconds in days.
func DaysInterval(i result.Interval) result.Interval { return scaled(i, 1/float64(unit.Day)) }

func scaled(i result.Interval, by float64) result.Interval {
	return result.Interval{Mean: i.Mean * by, Low: i.Low * by, High: i.High * by}
}

// Bounded writes "1.4 (1.1 to 1.6)", and one number where the bounds would say nothing.
func Bounded(i result.Interval, places int) string {
	mean, low, high := SignedFixed(i.Mean, places), SignedFixed(i.Low, places), SignedFixed(i.High, places)
	if !Defined(i.Low) || !Defined(i.High) || low == high {
		return mean
	}
	return mean + " (" + low + " to " + high + ")"
}

// Points writes an interval of chances in points, to a tenth where that says something.
func Points(i result.Interval) string {
	i = scaled(i, 100)
	if math.Max(math.Abs(i.Low), math.Abs(i.High)) < 9.95 {
		return Bounded(i, 1)
	}
	return Bounded(i, 0)
}
