package geo

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"coredays/model/unit"
)

func TestTrackPassesThroughThePointsOfTheReferenceTool(t *testing.T) {
	for _, row := range rows(t, "tracks.csv") {
		n := numbers(t, row)
		a, b, want := Position{n[0], n[1]}, Position{n[2], n[3]}, Position{n[5], n[6]}
		track := Track([]Position{a, b}, Distance(a, b)/4*1.001) // quarters
		if len(track) != 5 {
			t.Fatalf("%s to %s in quarters has %d points", a, b, len(track))
		}
		if got := track[int(n[4]*4)]; !near(Distance(got, want), 0, 0.001) {
			t.Errorf("%g of %s to %s is at %v, GeodSolve: %v", n[4], a, b, got.point(), want.point())
		}
	}
}

// slack is how much a track may be longer than the legs: rounding, and for opposite points
// the metre within which any way is taken to be as good as another.
func slack(leg unit.Length) unit.Length {
	if halfTurn-leg < 1000 {
		return opposite + rounding(leg)
	}
	return rounding(leg)
}

// opposites draws places at and within some metres of the one opposite.
func opposites(p Position) *rapid.Generator[Position] {
	off := rapid.SampledFrom([]float64{0, 0, 1e-13, 1e-11, 1e-9, 1e-7, 1e-5, 1e-4})
	return rapid.Custom(func(t *rapid.T) Position {
		b := antipode(p)
		b.Latitude -= math.Copysign(off.Draw(t, "off"), b.Latitude)
		b.Longitude -= math.Copysign(off.Draw(t, "off"), b.Longitude)
		return b
	})
}

func TestTrackIsAsLongAsItsLegsInEqualPiecesWithoutAWideGap(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := anywhere().Draw(t, "a")
		b := rapid.OneOf(anywhere(), opposites(a)).Draw(t, "b")
		leg := Distance(a, b)
		every := unit.Length(rapid.Float64Range(50_000, 3_000_000).Draw(t, "every"))
		track := Track([]Position{a, b}, every)
		var length unit.Length
		for i := 1; i < len(track); i++ {
			gap := Distance(track[i-1], track[i])
			if share := leg / unit.Length(len(track)-1); !(gap <= every+slack(leg)) || !near(gap, share, slack(leg)) {
				t.Fatalf("%v to %v is %v m, allowed %v m, an equal share is %v m", track[i-1].point(), track[i].point(), gap, every, share)
			}
			length += gap
		}
		if !near(length, leg, 2*slack(leg)) {
			t.Fatalf("the track is %v m, the leg %v m: %v", length, leg, track)
		}
	})
}

func TestTrackKeepsItsPointsAndStaysOnEarth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		points := rapid.SliceOfN(anywhere(), 0, 5).Draw(t, "points")
		track := Track(points, 500_000)
		rest := points
		for _, p := range track {
			if err := p.check(); err != nil {
				t.Fatalf("%v %v", p.point(), err)
			}
			if len(rest) > 0 && p == rest[0] {
				rest = rest[1:]
			}
		}
		if len(rest) > 0 || len(points) > 0 && (track[0] != points[0] || track[len(track)-1] != points[len(points)-1]) {
			t.Fatalf("%v has lost %v", track, rest)
		}
	})
}

func TestTrackAcrossTheDateLineDoesNotGoRoundTheEarth(t *testing.T) {
	track := Track([]Position{{-45, 170}, {-45, -170}}, 100*unit.NauticalMile)
	for _, p := range track {
		if math.Abs(p.Longitude) < 170 || p.Latitude > -45+1e-9 {
			t.Errorf("%v is off the short way, which bends to the pole", p)
		}
	}
	if middle := track[len(track)/2]; math.Abs(middle.Longitude) != 180 {
		t.Errorf("the middle is at %v, want the date line", middle)
	}
}

func TestSpacingOfNothingAddsNoPoints(t *testing.T) {
	points := []Position{{-42.9, 147.3}, {-48.62, 158.1}}
	for _, every := range []unit.Length{0, -1, unit.Length(math.NaN()), unit.Length(math.Inf(1))} {
		if track := Track(points, every); !slices.Equal(track, points) {
			t.Errorf("every %v m gave %v", every, track)
		}
	}
}
