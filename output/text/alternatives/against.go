package alternatives

import (
	"fmt"
	"math"

	"coredays/model/result"
	"coredays/output/words"
)

// Against is the alternative that all others are held against: the order of the scenario where one was looked for,
// else the first by merit.
func Against(c *result.Comparison) int {
	if ByPlanned(c) {
		return c.Planned
	}
	return c.Best
}

// ByPlanned reports whether alternatives are held against the order of the scenario.
func ByPlanned(c *result.Comparison) bool {
	return c.Question == result.WhichOrder && c.Planned >= 0 && c.Planned < len(c.Alternatives)
}

// AgainstName names it in headings.
func AgainstName(c *result.Comparison) string {
	if ByPlanned(c) {
		return "planned"
	}
	return "the first"
}

var unknown = result.Interval{Mean: math.NaN(), Low: math.NaN(), High: math.NaN()}

// MoreDays are the seconds that an alternative needs more than the one that it is held against, and MoreChance
// the chance of rank 1 that it has more. Against the first the intervals hold all at once, against the
// order of the scenario each by itself. Of that one itself nothing is known.
func MoreDays(c *result.Comparison, i int) result.Interval {
	if !ByPlanned(c) && i != c.Best {
		return c.Alternatives[i].Behind
	}
	return pairOf(c, i).Days
}

// MoreChance is the chance of rank 1, as MoreDays is the days.
func MoreChance(c *result.Comparison, i int) result.Interval {
	if !ByPlanned(c) && i != c.Best {
		return turned(c.Alternatives[i].Less)
	}
	return pairOf(c, i).Chance
}

// pairOf is the difference of an alternative from the one that it is held against.
func pairOf(c *result.Comparison, i int) result.Difference {
	against := Against(c)
	for _, d := range c.Differences {
		switch {
		case i == against:
		case d.A == i && d.B == against:
			return d
		case d.A == against && d.B == i:
			return turnedRound(d)
		}
	}
	return result.Difference{Days: unknown, Chance: unknown, Metres: unknown}
}

// ByDays reports whether the days decide: where every chance of rank 1 counts as equal to that of the first.
func ByDays(c *result.Comparison) bool {
	for i := range c.Alternatives {
		if chance := c.Alternatives[i].Summary.Allotted.ChancePrimary; c.Alternatives[c.Best].Summary.Allotted.ChancePrimary-chance > c.SameChance {
			return false
		}
	}
	return true
}

// HeldWords say how sure the intervals are.
func HeldWords(c *result.Comparison) string {
	if ByPlanned(c) {
		return "each interval by itself holds with 95 % confidence"
	}
	return fmt.Sprintf("the intervals hold all at once with %.0f %% confidence", 100*c.Confidence)
}

// MoreWords say what an alternative has more than the one that it is held against; empty for that one.
func MoreWords(c *result.Comparison, i int) string {
	if i == Against(c) {
		return ""
	}
	return "rank 1 done more than " + AgainstName(c) + ": " + chanceMore(c, i) + " points; days more: " + daysMore(c, i)
}

// daysMore and chanceMore write the differences for a table.
func daysMore(c *result.Comparison, i int) string {
	if i == Against(c) {
		return ""
	}
	return words.Bounded(words.DaysInterval(MoreDays(c, i)), 1)
}

func chanceMore(c *result.Comparison, i int) string {
	if i == Against(c) {
		return ""
	}
	return words.Points(MoreChance(c, i))
}
