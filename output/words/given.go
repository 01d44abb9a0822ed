package words

import (
	"math"
	"strconv"
)

// Given writes what a plan states, such as a water depth or sea days, as it stands there; what was turned
// from another unit to a hundredth.
func Given(value float64) string {
	if !Defined(value) {
		return Absent
	}
	return strconv.FormatFloat(math.Round(100*value)/100+0, 'f', -1, 64)
}
