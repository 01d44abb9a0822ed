package geo

import (
	"math"
	"testing"
)

// From the centre a place c away along a great circle lies 2R sin(c/2) off, in its direction (Snyder 1987, p. 182,
// from memory); a quarter of the globe R√2. Across the date line and over a pole nothing jumps.
func TestTheEqualAreaMapHasNoEdgeAtDateLineOrPole(t *testing.T) {
	for _, c := range []struct {
		centre, p   Position
		east, north float64 // of the radius
	}{
		{Position{0, 180}, Position{0, -170}, 2 * math.Sin(5*math.Pi/180), 0},
		{Position{0, 180}, Position{0, 170}, -2 * math.Sin(5*math.Pi/180), 0},
		{Position{0, -179}, Position{60, -179}, 0, 1},
		{Position{90, 0}, Position{0, 90}, math.Sqrt2, 0},
		{Position{80, 20}, Position{80, -160}, 0, 2 * math.Sin(10*math.Pi/180)}, // over the pole
		{Position{-90, 0}, Position{-80, 0}, 0, 2 * math.Sin(5*math.Pi/180)},
		{Position{12, 34}, Position{12, 34}, 0, 0},
	} {
		east, north := Azimuthal{c.centre}.At(c.p)
		if math.Abs(float64(east)/meanRadius-c.east) > 1e-9 || math.Abs(float64(north)/meanRadius-c.north) > 1e-9 {
			t.Errorf("%v from %v: %.6f, %.6f of the radius, want %.6f, %.6f", c.p, c.centre, float64(east)/meanRadius, float64(north)/meanRadius, c.east, c.north)
		}
	}
}

func TestAreasAreTrueEverywhere(t *testing.T) {
	a := Azimuthal{Position{-40, 170}}
	for _, p := range []Position{{-40, 170}, {-75, -100}, {10, -160}, {30, 100}} {
		const d = 0.01
		x0, y0 := a.At(p)
		x1, y1 := a.At(Position{p.Latitude + d, p.Longitude})
		x2, y2 := a.At(Position{p.Latitude, p.Longitude + d})
		area := math.Abs(float64((x1-x0)*(y2-y0) - (x2-x0)*(y1-y0)))
		want := math.Pow(meanRadius*d*math.Pi/180, 2) * math.Cos(p.Latitude*math.Pi/180)
		if math.Abs(area/want-1) > 1e-3 {
			t.Errorf("%v: area of a small cell is %.5f of what it should be", p, area/want)
		}
	}
}

func TestTheMiddleOfPlacesAcrossTheDateLineIsBetweenThem(t *testing.T) {
	c := CentredOn([]Position{{-10, 175}, {-10, -165}}).Centre
	if math.Abs(c.Longitude+175) > 1e-9 || c.Latitude > -10 || c.Latitude < -10.5 {
		t.Errorf("%v", c)
	}
}
