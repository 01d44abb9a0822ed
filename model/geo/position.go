// Package geo holds positions at sea, their distances and the great circles between them.
//
// The earth is a sphere here, which is within 0.56 % of the ellipsoid: far less than a ship's
// speed is known. No route finding: a great circle may cross land.
package geo

import (
	"fmt"
	"math"
	"strconv"
)

// Position is a place on the earth in degrees, north and east positive.
type Position struct{ Latitude, Longitude float64 }

// Limits of the two coordinates, in degrees.
const (
	maxLatitude  = 90
	maxLongitude = 180
)

// String writes degrees and decimal minutes as charts and reports do, "48 37.2S 158 06.0E", to
// at most the fourth decimal, which is 0.2 m.
func (p Position) String() string {
	return chart(p.Latitude, 2, "N", "S") + " " + chart(p.Longitude, 3, "E", "W")
}

// MarshalText writes decimal degrees with the fewest digits that read back as the same position:
// "48.62S 158.1E".
func (p Position) MarshalText() ([]byte, error) {
	if err := p.check(); err != nil {
		return nil, fmt.Errorf("position %v %w", [2]float64{p.Latitude, p.Longitude}, err)
	}
	return []byte(decimal(p.Latitude, "N", "S") + " " + decimal(p.Longitude, "E", "W")), nil
}

// UnmarshalText reads every form that ParsePosition reads.
func (p *Position) UnmarshalText(text []byte) error {
	position, err := ParsePosition(string(text))
	if err != nil {
		return err
	}
	*p = position
	return nil
}

// check says what is wrong with coordinates that no place on earth has.
func (p Position) check() error {
	latitude, longitude := math.Abs(p.Latitude), math.Abs(p.Longitude)
	switch {
	case latitude > maxLatitude && latitude <= maxLongitude && longitude <= maxLatitude:
		return fmt.Errorf("has the latitude %g, beyond 90 degrees; are latitude and longitude swapped?", p.Latitude)
	case !(latitude <= maxLatitude):
		return fmt.Errorf("has the latitude %g, beyond 90 degrees", p.Latitude)
	case !(longitude <= maxLongitude):
		return fmt.Errorf("has the longitude %g, beyond 180 degrees", p.Longitude)
	}
	return nil
}

// chart writes a coordinate in degrees and minutes.
func chart(degrees float64, width int, positive, negative string) string {
	const parts = 60 * 10_000 // ten-thousandths of a minute in a degree
	total := int64(math.Round(math.Abs(degrees) * parts))
	minutes := strconv.FormatFloat(float64(total%parts)/10_000, 'f', -1, 64)
	if total%10_000 == 0 {
		minutes += ".0"
	}
	if total%parts < 10*10_000 {
		minutes = "0" + minutes
	}
	return fmt.Sprintf("%0*d %s%s", width, total/parts, minutes, side(degrees, positive, negative))
}

// decimal writes a coordinate in decimal degrees.
func decimal(degrees float64, positive, negative string) string {
	return strconv.FormatFloat(math.Abs(degrees), 'f', -1, 64) + side(degrees, positive, negative)
}

// side names the hemisphere of a coordinate.
func side(degrees float64, positive, negative string) string {
	if degrees < 0 {
		return negative
	}
	return positive
}
