package alternatives

import (
	"fmt"
	"math"

	"coredays/model/result"
	"coredays/output/words"
)

// AgainstPinned says how a plan differs from the one it is held against: the first and the second
// alternative of a comparison.
func AgainstPinned(c *result.Comparison) []string {
	if len(c.Differences) == 0 || c.Replications < 2 {
		return nil
	}
	d, now, pinned := c.Differences[0], c.Alternatives[0].Summary, c.Alternatives[1].Summary
	chance := fmt.Sprintf("Rank 1 gets done %s, with the pinned plan %s (95 %% interval of the difference: %s points).", words.Often(now.Allotted.ChancePrimary, c.Replications), words.Often(pinned.Allotted.ChancePrimary, c.Replications), words.Points(d.Chance))
	return []string{daysAgainst(d), chance, fmt.Sprintf("Core within the days, more than with the pinned plan: %s m.", words.Bounded(d.Metres, 0))}
}

// daysAgainst says the difference in days, and whether it is more than noise.
func daysAgainst(d result.Difference) string {
	days := words.DaysInterval(d.Days)
	switch {
	case days.Low == 0 && days.High == 0:
		return "The same days as the pinned plan, in every replication."
	case days.Low <= 0 && days.High >= 0:
		return fmt.Sprintf("The same days as the pinned plan within the noise: %s d more.", words.Bounded(days, 2))
	}
	more := "more"
	if days.Mean < 0 {
		more = "less"
		days = result.Interval{Mean: -days.Mean, Low: math.Min(-days.Low, -days.High), High: math.Max(-days.Low, -days.High)}
	}
	return fmt.Sprintf("%s d %s than the pinned plan, on average.", words.Bounded(days, 2), more)
}
