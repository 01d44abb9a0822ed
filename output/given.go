package output

import (
	"math"
	"strconv"
)

// given writes what a plan states, such as a water depth or sea days, as it stands there; what was turned
// from another unit to a hundredth.
func given(value float64) string {
	if !defined(value) {
		return absent
	}
	return strconv.FormatFloat(math.Round(100*value)/100+0, 'f', -1, 64)
}
