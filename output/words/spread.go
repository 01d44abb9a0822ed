package words

import (
	"math"

	"coredays/model/result"
	"coredays/model/unit"
)

// InUnits gives a spread in another unit than the SI base unit, whose size is given.
func InUnits(s result.Spread, size float64) result.Spread {
	for _, value := range []*float64{&s.Mean, &s.SD, &s.P10, &s.P50, &s.P90,
		&s.P10CI[0], &s.P10CI[1], &s.P50CI[0], &s.P50CI[1], &s.P90CI[0], &s.P90CI[1]} {
		*value /= size
	}
	return s
}

func InDays(s result.Spread) result.Spread { return InUnits(s, float64(unit.Day)) }

// InHours is a spread of seconds in hours.
func InHours(s result.Spread) result.Spread { return InUnits(s, float64(unit.Hour)) }

// Spreads reports whether P10 and P90 say more than P50 does.
func Spreads(s result.Spread) bool {
	return s.N >= 2 && Defined(s.P10) && Defined(s.P90) && (s.P10 != s.P50 || s.P90 != s.P50)
}

// Middle is P50 where the spread rests on anything at all.
func Middle(s result.Spread) float64 {
	if s.N < 1 {
		return math.NaN()
	}
	return s.P50
}

// Quantiles writes P10, P50 and P90 in cells of their own; the outer two stay empty where they
// would say nothing.
func Quantiles(s result.Spread, places int) (p10, p50, p90 string) {
	p50 = Fixed(Middle(s), places)
	if Spreads(s) {
		p10, p90 = Fixed(s.P10, places), Fixed(s.P90, places)
	}
	return p10, p50, p90
}

// Ranged writes "P50 (P10–P90)" into one cell, or one number where the three print alike.
func Ranged(s result.Spread, places int) string {
	p10, p50, p90 := Quantiles(s, places)
	if p10 == p90 && (p10 == p50 || p10 == "") {
		return p50
	}
	return p50 + " (" + Between(p10, p90) + ")"
}

// showsFrom is the share of P50 from which its simulation error is given: below it the error
// hides in the third figure. Our choice.
const showsFrom = 0.01

// SimulationError is half the width of the interval of P50, and whether it is worth telling.
func SimulationError(s result.Spread) (half float64, telling bool) {
	low, high := s.P50CI[0], s.P50CI[1]
	if s.N < 2 || !Defined(low) || !Defined(high) || low > s.P50 || high < s.P50 {
		return 0, false // no interval, or one that was never worked out
	}
	half = (high - low) / 2
	return half, half > showsFrom*math.Abs(s.P50)
}

// Supported makes a spread's figures not-a-number where its replications are too few to tell them.
func Supported(s result.Spread) result.Spread {
	none := math.NaN()
	if s.N < 1 {
		s.Mean, s.P50 = none, none
	}
	if s.N < 2 {
		s.SD, s.P10, s.P90 = none, none, none
		s.P10CI, s.P50CI, s.P90CI = [2]float64{none, none}, [2]float64{none, none}, [2]float64{none, none}
	}
	return s
}

const SecondsOfDay = float64(unit.Day)
