package geo

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
)

// parts are what an angle is written in, each a sixtieth of the one before.
var parts = [...]string{"degrees", "minutes", "seconds"}

// coordinate reads "48 37.2" of a hemisphere as signed degrees.
func coordinate(name, text, side string) (float64, error) {
	fields := strings.Fields(text)
	if len(fields) == 0 {
		return 0, fmt.Errorf("has no number for the %s", name)
	}
	if len(fields) > len(parts) {
		return 0, fmt.Errorf("has more than degrees, minutes and seconds in the %s", name)
	}
	degrees, size := 0.0, 1.0
	for i, field := range fields {
		value, err := part(name, field, i, i == len(fields)-1)
		if err != nil {
			return 0, err
		}
		degrees += value / size
		size *= 60
	}
	if (side == "S" || side == "W") && degrees != 0 {
		return -degrees, nil
	}
	return degrees, nil
}

// part reads the degrees, minutes or seconds of a coordinate.
func part(name, field string, i int, isLast bool) (float64, error) {
	value, err := number(field)
	switch {
	case err != nil:
		return 0, err
	case strings.ContainsAny(field, "+-"):
		return 0, fmt.Errorf("has both a sign and a hemisphere in the %s", name)
	case !isLast && strings.Contains(field, "."):
		return 0, fmt.Errorf("has decimals in the %s of the %s before its %s", parts[i], name, parts[i+1])
	case i > 0 && value >= 60:
		return 0, fmt.Errorf("has %s %s in the %s; they go up to 60", field, parts[i], name)
	}
	return value, nil
}

var plainNumber = regexp.MustCompile(`^[+-]?[0-9]+(\.[0-9]+)?$`)

// number reads decimals without exponent.
func number(text string) (float64, error) {
	if !plainNumber.MatchString(text) {
		return 0, fmt.Errorf("has %q where a plain number is wanted", text)
	}
	value, _ := strconv.ParseFloat(text, 64) // too long a number is infinite, so out of range later
	return value + 0, nil                    // + 0 makes a negative zero a plain one
}
