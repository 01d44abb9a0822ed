package ground

import (
	"math"

	"coredays/model/unit"
)

// The hole for which a ship's chance of sticking is stated: of mud, so long, and open for so long [from memory].
const (
	usualOpen  = unit.Length(150)
	usualStood = unit.Day
)

// Stickiness is by how much the chance that the string sticks exceeds that of the usual hole. What hangs above the bit falls in
// on it, so gripping is that of the worst layer in the open hole; the chance grows with the open metres, and with the root of
// the time for which they have stood, since a wall fails most in its first days [from memory].
func Stickiness(gripping float64, open unit.Length, stood unit.Duration) float64 {
	return gripping * float64(open/usualOpen) * math.Sqrt(max(0, float64(stood/usualStood)))
}
