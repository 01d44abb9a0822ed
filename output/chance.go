package output

import (
	"fmt"
	"math"
)

// percent writes a share as a whole number of per cent. Only all is 100 and only nothing is 0.
func percent(share float64) string {
	switch {
	case !defined(share):
		return absent
	case share > 0 && share < 0.01:
		return "<1"
	case share > 0.99 && share < 1:
		return ">99"
	}
	return fixed(math.Round(100*share), 0) // as inHundred rounds
}

// chance writes a chance in per cent, and the outcome where there was one replication only.
func chance(share float64, replications int) string {
	if replications >= 2 || !defined(share) {
		return percent(share)
	}
	if share > 0 {
		return "yes"
	}
	return "no"
}

// happens is a sentence that tells a chance: "The programme fits in 38 of 100 expeditions.". A single
// replication takes the other wording where it did not happen.
func happens(share float64, replications int, does, doesNot string) string {
	if replications == 1 && share == 0 {
		return doesNot + " in this one expedition."
	}
	return does + " " + often(share, replications) + "."
}

// often tells a chance within a sentence. Fewer than a hundred replications are not blown up to a
// hundred.
func often(share float64, replications int) string {
	switch {
	case !defined(share):
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
