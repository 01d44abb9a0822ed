package words

import (
	"fmt"
	"math"
)

// Percent writes a share as a whole number of per cent. Only all is 100 and only nothing is 0.
func Percent(share float64) string {
	switch {
	case !Defined(share):
		return Absent
	case share > 0 && share < 0.01:
		return "<1"
	case share > 0.99 && share < 1:
		return ">99"
	}
	return Fixed(math.Round(100*share), 0) // as inHundred rounds
}

// Chance writes a chance in per cent, and the outcome where there was one replication only.
func Chance(share float64, replications int) string {
	if replications >= 2 || !Defined(share) {
		return Percent(share)
	}
	if share > 0 {
		return "yes"
	}
	return "no"
}

// Happens is a sentence that describes a chance: "The programme fits in 38 of 100 expeditions.". A single
// replication takes the other wording where it did not happen.
func Happens(share float64, replications int, does, doesNot string) string {
	if replications == 1 && share == 0 {
		return doesNot + " in this one expedition."
	}
	return does + " " + Often(share, replications) + "."
}

// Often describes a chance within a sentence. Fewer than a hundred replications are not blown up to a
// hundred.
func Often(share float64, replications int) string {
	switch {
	case !Defined(share):
		return "in an unknown part of the expeditions"
	case replications == 1:
		return "in this one expedition"
	case share <= 0:
		return fmt.Sprintf("in none of %d expeditions", replications)
	case share >= 1:
		return fmt.Sprintf("in all %d expeditions", replications)
	case replications < 100:
		return fmt.Sprintf("in %.0f of %d expeditions", share*float64(replications), replications)
	}
	return inHundred(share)
}

func inHundred(share float64) string {
	switch {
	case share < 0.01:
		return "in fewer than 1 of 100 expeditions"
	case share > 0.99:
		return "in more than 99 of 100 expeditions"
	}
	return fmt.Sprintf("in %.0f of 100 expeditions", math.Round(100*share))
}
