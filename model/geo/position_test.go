package geo

import (
	"encoding/json"
	"math"
	"testing"

	"pgregory.net/rapid"
)

// anywhere draws positions, often the awkward ones: poles, equator, date line.
func anywhere() *rapid.Generator[Position] {
	latitude := rapid.OneOf(rapid.Float64Range(-90, 90), rapid.SampledFrom([]float64{-90, 0, 90, 89.9999999}))
	longitude := rapid.OneOf(rapid.Float64Range(-180, 180), rapid.SampledFrom([]float64{-180, -90, 0, 90, 180, 179.9999999}))
	return rapid.Custom(func(t *rapid.T) Position {
		return Position{latitude.Draw(t, "latitude"), longitude.Draw(t, "longitude")}
	})
}

func TestPositionIsWrittenInDegreesAndMinutes(t *testing.T) {
	cases := []struct {
		position Position
		want     string
	}{
		{Position{-48.62, 158.1}, "48 37.2S 158 06.0E"},
		{Position{-42.9, 147.3}, "42 54.0S 147 18.0E"},
		{Position{0, 0}, "00 00.0N 000 00.0E"},
		{Position{math.Copysign(0, -1), -180}, "00 00.0N 180 00.0W"},
		{Position{90, 5.05}, "90 00.0N 005 03.0E"},
		{Position{18 + 56.1064/60, 85 + 41.9823/60}, "18 56.1064N 085 41.9823E"},
		{Position{-0.9999999999, 9.9999999999}, "01 00.0S 010 00.0E"},
		{Position{0.15, -0.1667}, "00 09.0N 000 10.002W"},
	}
	for _, c := range cases {
		if got := c.position.String(); got != c.want {
			t.Errorf("%v is written %q, want %q", c.position.point(), got, c.want)
		}
	}
}

func TestMarshalledPositionReadsBackExactly(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		position := anywhere().Draw(t, "position")
		text, err := json.Marshal(position)
		var back Position
		if err == nil {
			err = json.Unmarshal(text, &back)
		}
		if err != nil || back != position {
			t.Fatalf("%s reads back as %v, %v", text, back.point(), err)
		}
	})
}

func TestWrittenPositionReadsBackToTheLastFigure(t *testing.T) {
	const half = 0.00005/60 + 1e-12 // half of the fourth decimal of a minute, and rounding
	rapid.Check(t, func(t *rapid.T) {
		position := anywhere().Draw(t, "position")
		back, err := ParsePosition(position.String())
		if err != nil || math.Abs(back.Latitude-position.Latitude) > half || math.Abs(back.Longitude-position.Longitude) > half {
			t.Fatalf("%s reads back as %v, %v", position, back.point(), err)
		}
	})
}

func TestPlaceThatIsNowhereIsNotMarshalled(t *testing.T) {
	for _, position := range []Position{{91, 0}, {0, 181}, {math.NaN(), 0}, {0, math.NaN()}, {0, math.Inf(-1)}} {
		if text, err := position.MarshalText(); err == nil {
			t.Errorf("%v was written as %q", position.point(), text)
		}
	}
}
