package geo

import (
	"math"

	"github.com/paulmach/orb/geo"

	"coredays/model/unit"
)

// Track is the way through the points along great circles: the points themselves and between
// them points at most every apart. Each leg is halved until its pieces are short enough, so the
// pieces of a leg are equal, and more than half of every where it is cut at all. Longitudes are
// from -180 to 180: a track across the date line jumps from one to the other. An every that is
// not above zero adds no points.
func Track(points []Position, every unit.Length) []Position {
	var track []Position
	for i, p := range points {
		if i > 0 && every > 0 {
			track = appendBetween(track, points[i-1], p, halvings(Distance(points[i-1], p), every))
		}
		track = append(track, p)
	}
	return track
}

// halvings is how often a leg must be halved for pieces of at most every.
func halvings(leg, every unit.Length) int {
	count := 0
	for ; leg > every; leg /= 2 {
		count++
	}
	return count
}

// appendBetween appends the points that halve the leg from a to b so many times over.
func appendBetween(track []Position, a, b Position, times int) []Position {
	if times == 0 {
		return track
	}
	m := midpoint(a, b)
	track = appendBetween(track, a, m, times-1)
	return appendBetween(append(track, m), m, b, times-1)
}

// opposite is how near to each other's antipodes two points may be for any way to be as good as
// another: closer than that the library's midpoint is rounding error.
const opposite unit.Length = 1

// midpoint is half way along the great circle.
func midpoint(a, b Position) Position {
	if halfTurn-Distance(a, b) < opposite {
		// Of all the great circles through opposite points take one whose middle is on the equator.
		return Position{0, wrapped(a.Longitude + 90)}
	}
	m := geo.Midpoint(a.point(), b.point())
	return Position{m.Lat(), wrapped(m.Lon())}
}

// wrapped brings a longitude to the range from -180 to 180.
func wrapped(longitude float64) float64 { return math.Remainder(longitude, 360) }
