package unit

import (
	"errors"
	"fmt"
	"math"
	"math/big"
	"strings"
)

// Dimension says what kind of quantity a text stands for.
type Dimension int

// The dimensions that a scenario can state.
const (
	OfLength Dimension = iota
	OfDepth
	OfDuration
	OfSpeed
	OfForce
	OfPressure
	OfMass
	OfLinearMass
	OfEnergy
	OfShare
	OfStandRate
	OfCount
)

// Wanted says people what a text of this dimension looks like: `a length with its unit, such as "3420 m"`.
func (d Dimension) Wanted() string {
	w := wordings[d]
	if d.mayStandAlone() {
		return fmt.Sprintf("%s, such as %q", w.name, w.example)
	}
	return fmt.Sprintf("%s with its unit, such as %q", w.name, w.example)
}

// mayStandAlone says whether a number without unit is a value of this dimension.
func (d Dimension) mayStandAlone() bool {
	_, found := d.symbol("")
	return found
}

// Parse reads text such as "3420 m" as a value in the SI base unit of the dimension. The error
// says what is wrong with the text; Wanted says what would be right.
func (d Dimension) Parse(text string) (float64, error) {
	number, suffix := split(strings.TrimSpace(text))
	s, found := d.symbol(suffix)
	value, err := wide(number)
	switch {
	case err == errNoNumber && !d.mayStandAlone():
		return 0, errors.New("is not a number with a unit")
	case err != nil:
		return 0, err
	case found:
		return narrow(value.Mul(value, big.NewFloat(s.size)))
	case suffix == "":
		return 0, errors.New("has no unit")
	case suffix[0] == ',':
		return 0, errors.New("has a comma in its number")
	}
	return 0, fmt.Errorf("has the unit %q, which is not one for %s", suffix, wordings[d].name)
}

// Format writes a value given in the SI base unit in the named unit, with the fewest digits that
// Parse reads back as the same number. A symbol that the dimension does not have gives the base unit.
func (d Dimension) Format(value float64, symbol string) string {
	s := d.symbolOrBase(symbol)
	number := fmt.Sprint(value)
	if !math.IsInf(value, 0) && !math.IsNaN(value) {
		number = fewestDigits(value, s.size)
	}
	return strings.TrimSpace(number + " " + s.text)
}

// split parts a number from what follows it: "3420 m" and "3420m" alike.
func split(text string) (number, suffix string) {
	end := strings.IndexFunc(text, func(r rune) bool { return !strings.ContainsRune("0123456789.+-eE", r) })
	if end < 0 {
		return text, ""
	}
	return text[:end], strings.TrimSpace(text[end:])
}
