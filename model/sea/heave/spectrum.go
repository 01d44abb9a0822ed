package heave

import (
	"math"

	"gonum.org/v1/gonum/integrate/quad"
)

// The spectrum is integrated from 0.4 to 6 times its peak frequency, which leaves out 0.1 % of
// the energy of a fully developed sea, all of it in waves too short to move a ship.
const (
	lowestFrequency  = 0.4
	highestFrequency = 6.0
	frequencies      = 160 // Gauss-Legendre points
)

// peakFactor is how much higher than Pierson-Moskowitz the peak of a sea of height hs in metres
// and peak period in seconds is: DNV-RP-C205 [from memory].
func peakFactor(hs, peak float64) float64 {
	steepness := peak / math.Sqrt(hs)
	switch {
	case steepness <= 3.6:
		return 5
	case steepness >= 5:
		return 1
	}
	return math.Exp(5.75 - 1.15*steepness)
}

// spectrum is the JONSWAP spectrum of unit significant height at x times the peak frequency, per
// unit of x; a peak factor of 1 is Pierson-Moskowitz. Multiply by hs^2.
func spectrum(x, factor float64) float64 {
	pm := 5.0 / 16 * math.Pow(x, -5) * math.Exp(-1.25*math.Pow(x, -4)) // Pierson-Moskowitz by height and peak [textbook]
	if factor == 1 {
		return pm
	}
	width := 0.07 // JONSWAP's widths below and above the peak [textbook]
	if x > 1 {
		width = 0.09
	}
	peak := math.Pow(factor, math.Exp(-0.5*math.Pow((x-1)/width, 2)))
	return (1 - 0.287*math.Log(factor)) * pm * peak // DNV-RP-C205 [from memory]: keeps the height
}

// significant is the significant double amplitude, for a sea of unit significant height, of a
// motion with the given amplification (its amplitude over the wave's) at x times the peak
// frequency: 4 sqrt(m0).
func significant(amplification func(x float64) float64, factor float64) float64 {
	m0 := quad.Fixed(func(x float64) float64 {
		a := amplification(x)
		return a * a * spectrum(x, factor)
	}, lowestFrequency, highestFrequency, frequencies, nil, 0)
	return 4 * math.Sqrt(m0)
}
