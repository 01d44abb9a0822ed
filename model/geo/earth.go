package geo

import (
	"math"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/geo"

	"coredays/model/unit"
)

// The WGS 84 ellipsoid, as the manual of GeodSolve (GeographicLib 2.1.2) states it.
const (
	equatorialRadius = 6378137.0 // m
	flattening       = 1 / 298.257223563
	polarRadius      = equatorialRadius * (1 - flattening)
)

// meanRadius is that of the three half-axes of the ellipsoid, 6371.009 km: the usual sphere for
// distances (common practice). On it a short leg is at most 0.56 % too long (along the equator's
// meridians, whose radius of curvature there is b²/a) and 0.45 % too short (at the poles, a²/b).
const meanRadius = (2*equatorialRadius + polarRadius) / 3

// halfTurn is the distance of two points opposite each other.
const halfTurn = math.Pi * meanRadius

// Distance is the length of the great circle between two positions, on a sphere of 6371.009 km:
// within 0.56 % of the way on the ellipsoid. From a place that is nowhere it is not a number.
func Distance(a, b Position) unit.Length {
	// The library's sphere has the radius of the equator, which would be up to 0.67 % too long.
	length := geo.DistanceHaversine(a.point(), b.point()) * (meanRadius / orb.EarthRadius)
	if math.IsNaN(length) && a.check() == nil && b.check() == nil {
		return halfTurn // its haversine of opposite points can round to just above 1
	}
	return unit.Length(length)
}

// point is the position as the library wants it: longitude first.
func (p Position) point() orb.Point { return orb.Point{p.Longitude, p.Latitude} }
