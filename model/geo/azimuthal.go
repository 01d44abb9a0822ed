package geo

import (
	"math"

	"coredays/model/unit"
)

// Azimuthal is the equal-area projection of Lambert about a centre: areas are true everywhere, directions from
// the centre, and neither the date line nor a pole is an edge. Only the point opposite the centre has no place.
type Azimuthal struct{ Centre Position }

// CentredOn is the projection about the middle of places: the direction of the mean of their unit vectors.
func CentredOn(places []Position) Azimuthal {
	var x, y, z float64
	for _, p := range places {
		sinLat, cosLat := math.Sincos(radians(p.Latitude))
		sinLon, cosLon := math.Sincos(radians(p.Longitude))
		x, y, z = x+cosLat*cosLon, y+cosLat*sinLon, z+sinLat
	}
	if math.Hypot(math.Hypot(x, y), z) < 1e-9*float64(len(places)) || len(places) == 0 {
		return Azimuthal{}
	}
	return Azimuthal{Position{math.Atan2(z, math.Hypot(x, y)) * 180 / math.Pi, math.Atan2(y, x) * 180 / math.Pi}}
}

// At is where a place lies, east and north of the centre (Snyder 1987, USGS Professional Paper 1395, eqs. 22-4,
// 22-5 and 24-2, numbers from memory).
func (a Azimuthal) At(p Position) (east, north unit.Length) {
	sin1, cos1 := math.Sincos(radians(a.Centre.Latitude))
	sin, cos := math.Sincos(radians(p.Latitude))
	sinL, cosL := math.Sincos(radians(p.Longitude - a.Centre.Longitude))
	k := math.Sqrt(2 / math.Max(1+sin1*sin+cos1*cos*cosL, 1e-9)) // 24-2
	return unit.Length(meanRadius * k * cos * sinL), unit.Length(meanRadius * k * (cos1*sin - sin1*cos*cosL))
}

// radians of degrees.
func radians(degrees float64) float64 { return degrees * math.Pi / 180 }
