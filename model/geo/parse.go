package geo

import (
	"errors"
	"fmt"
	"regexp"
	"strings"
)

// Wanted says people what the text of a position looks like.
const Wanted = `a position, latitude first, such as "48 37.2S 158 06.0E" or "-48.62 158.1"`

// ParsePosition reads a position, latitude first: degrees and minutes "48 37.2S 158 06.0E",
// degrees "42.9S 147.3E", degrees, minutes and seconds "48 37 12S 158 06 00E", or signed degrees
// "-48.62 158.1". The signs of degrees, minutes and seconds and a comma between the coordinates
// are allowed. The error says what is wrong with the text; Wanted says what would be right.
func ParsePosition(text string) (Position, error) {
	position, err := read(spaced.Replace(text))
	if err == nil {
		err = position.check()
	}
	if err != nil {
		return Position{}, err
	}
	return position, nil
}

// spaced takes out what may stand between numbers.
var spaced = strings.NewReplacer(",", " ", "°", " ", "'", " ", "′", " ", "’", " ", `"`, " ", "″", " ", "”", " ", "−", "-")

// stranger is a character that no form of a position has.
var stranger = regexp.MustCompile(`[^0-9NSEWnsew+\-.\s\p{Z}]`)

// hemispheres parts a text into latitude, its hemisphere, longitude, its hemisphere, and what follows.
var hemispheres = regexp.MustCompile(`(?s)^([^NSEW]*)([NSEW])([^NSEW]*)([NSEW]?)(.*)$`)

// read chooses the form.
func read(text string) (Position, error) {
	if strings.TrimSpace(text) == "" {
		return Position{}, errors.New("is empty")
	}
	if odd := stranger.FindString(text); odd != "" {
		return Position{}, fmt.Errorf("has %q, which is no part of a position", odd)
	}
	if parts := hemispheres.FindStringSubmatch(strings.ToUpper(text)); parts != nil {
		return readSided(parts[1], parts[2], parts[3], parts[4], strings.TrimSpace(parts[5]))
	}
	return readSigned(strings.Fields(text))
}

// readSigned reads degrees without hemispheres.
func readSigned(fields []string) (Position, error) {
	if len(fields) != 2 {
		return Position{}, errors.New("has no hemispheres; only signed degrees, latitude and longitude, go without")
	}
	latitude, err := number(fields[0])
	if err != nil {
		return Position{}, err
	}
	longitude, err := number(fields[1])
	return Position{latitude, longitude}, err
}

// readSided reads a latitude and a longitude with their hemispheres.
func readSided(north, northSide, east, eastSide, more string) (Position, error) {
	if err := checkSides(northSide, eastSide); err != nil {
		return Position{}, err
	}
	if more != "" {
		return Position{}, fmt.Errorf("has %q after the longitude", more)
	}
	latitude, err := coordinate("latitude", north, northSide)
	if err != nil {
		return Position{}, err
	}
	longitude, err := coordinate("longitude", east, eastSide)
	return Position{latitude, longitude}, err
}

// checkSides says what is wrong unless a latitude comes before a longitude.
func checkSides(first, second string) error {
	isLatitude := func(side string) bool { return side == "N" || side == "S" }
	switch {
	case second == "" && isLatitude(first):
		return errors.New("has no E or W after the longitude")
	case second == "":
		return errors.New("has no N or S after the latitude")
	case isLatitude(first) && isLatitude(second):
		return errors.New("has two latitudes and no longitude")
	case isLatitude(first):
		return nil
	case isLatitude(second):
		return errors.New("has the longitude before the latitude")
	}
	return errors.New("has two longitudes and no latitude")
}
