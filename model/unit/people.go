package unit

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// peopleDigits is how many significant figures people are given.
const peopleDigits = 3

// Tell writes a value given in the SI base unit in the named unit, rounded for people to three
// significant figures: "22.3 stands/h". A symbol that the dimension does not have gives the base unit.
func (d Dimension) Tell(value float64, symbol string) string {
	s := d.symbolOrBase(symbol)
	return strings.TrimSpace(rounded(value/s.size) + " " + s.text)
}

// TellApart writes a value as Tell does, but with as many figures as it takes to tell it from another: a value
// above a limit must not read as if it were the limit.
func (d Dimension) TellApart(value, from float64, symbol string) string {
	s := d.symbolOrBase(symbol)
	text := ""
	for digits := peopleDigits; digits <= enoughDigits; digits++ {
		text = roundedTo(digits, value/s.size)
		if value == from || text != roundedTo(digits, from/s.size) {
			break
		}
	}
	return strings.TrimSpace(text + " " + s.text)
}

// Tell writes a length in metres, from 20 km on in kilometres, so that water and pipe stay in metres.
func (l Length) Tell() string {
	if math.Abs(float64(l)) < 20_000 {
		return l.TellIn("m")
	}
	return l.TellIn("km")
}

// TellIn writes a length in the named unit: "324 nmi".
func (l Length) TellIn(symbol string) string { return OfLength.Tell(float64(l), symbol) }

// Tell writes a depth below the sea floor: "250 mbsf".
func (d Depth) Tell() string { return OfDepth.Tell(float64(d), "mbsf") }

// Tell writes a time in seconds below a minute, minutes below two hours, hours below two days,
// and in days from there.
func (d Duration) Tell() string {
	switch span := Duration(math.Abs(float64(d))); {
	case span < Minute:
		return d.TellIn("s")
	case span < 2*Hour:
		return d.TellIn("min")
	case span < 2*Day:
		return d.TellIn("h")
	}
	return d.TellIn("d")
}

// TellIn writes a time in the named unit, for columns that keep one.
func (d Duration) TellIn(symbol string) string { return OfDuration.Tell(float64(d), symbol) }

// TellIn writes a speed in the named unit: "kn" for the ship, "m/h" for the bit, "m/min" for the wire.
func (v Speed) TellIn(symbol string) string { return OfSpeed.Tell(float64(v), symbol) }

// Tell writes a force in the rig's unit and in SI: "80 klbf (356 kN)".
func (f Force) Tell() string {
	return fmt.Sprintf("%s (%s)", OfForce.Tell(float64(f), "klbf"), OfForce.Tell(float64(f), "kN"))
}

// rounded writes a number with at most three significant figures and never an exponent.
func rounded(value float64) string { return roundedTo(peopleDigits, value) }

func roundedTo(digits int, value float64) string {
	few, err := strconv.ParseFloat(strconv.FormatFloat(value, 'g', digits, 64), 64)
	if err != nil {
		few = value // rounding went past the largest float64
	}
	return strconv.FormatFloat(few+0, 'f', -1, 64)
}
