package geo

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"coredays/model/unit"
)

// rounding of float64 in a distance: the haversine of nearly opposite points is near 1, where
// its last bit, 2⁻⁵², is an angle of 3e-8, 0.2 m.
func rounding(length unit.Length) unit.Length {
	if halfTurn-length < 1000 {
		return 0.2
	}
	return 0.001
}

// near is false for what is not a number.
func near(got, want, within unit.Length) bool { return math.Abs(float64(got-want)) <= float64(within) }

func antipode(p Position) Position { return Position{-p.Latitude, wrapped(p.Longitude + 180)} }

func TestDistanceIsTheSameBothWaysAndFromAnyPole(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := anywhere().Draw(t, "a"), anywhere().Draw(t, "b")
		there, back := Distance(a, b), Distance(b, a)
		if !near(there, back, rounding(there)) {
			t.Fatalf("%v m there, %v m back", there, back)
		}
		pole := Distance(Position{90, b.Longitude}, a)
		if want := unit.Length((90 - a.Latitude) / 180 * halfTurn); !near(pole, want, rounding(pole)) {
			t.Fatalf("pole to %s is %v m, want %v m", a, pole, want)
		}
	})
}

func TestWayToAPointAndOnToTheOppositeIsHalfATurn(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := anywhere().Draw(t, "a"), anywhere().Draw(t, "b")
		by, straight := Distance(a, b)+Distance(b, antipode(a)), Distance(a, antipode(a))
		if !near(by, halfTurn, rounding(halfTurn)) || !near(straight, halfTurn, rounding(halfTurn)) {
			t.Fatalf("%s by %s to its opposite is %v m; straight %v m; half a turn is %v m", a, b, by, straight, halfTurn)
		}
	})
}

func TestDateLineHasTwoNamesAndIsOnePlace(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anywhere().Draw(t, "p")
		latitude := rapid.Float64Range(-90, 90).Draw(t, "latitude")
		east, west := Distance(p, Position{latitude, 180}), Distance(p, Position{latitude, -180})
		if !near(east, west, rounding(east)) {
			t.Fatalf("%v m to 180 E, %v m to 180 W", east, west)
		}
	})
}

func TestDistanceFromNowhereIsNotANumber(t *testing.T) {
	for _, nowhere := range []Position{{math.NaN(), 0}, {0, math.NaN()}, {0, math.Inf(1)}} {
		if got := Distance(nowhere, Position{}); !math.IsNaN(float64(got)) {
			t.Errorf("from %v it is %v m", nowhere.point(), got)
		}
	}
}
