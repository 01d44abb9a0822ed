package geo

import (
	"math"
	"testing"
)

func TestPositionIsReadInEveryForm(t *testing.T) {
	cases := []struct {
		text string
		want Position
	}{
		{"48 37.2S 158 06.0E", Position{-(48 + 37.2/60), 158 + 6.0/60}},
		{"42.9S 147.3E", Position{-42.9, 147.3}},
		{"48 37 12S 158 06 00E", Position{-(48 + 37.0/60 + 12.0/3600), 158 + 6.0/60}},
		{"-48.62 158.1", Position{-48.62, 158.1}},
		{"−48.62, +158.1", Position{-48.62, 158.1}},
		{"48°37.2′ S, 158°06.0′ E", Position{-(48 + 37.2/60), 158 + 6.0/60}},
		{`48°37'12.5"N 158°06'00"W`, Position{48 + 37.0/60 + 12.5/3600, -(158 + 6.0/60)}},
		{"37 34.29 N,10 7.57 W", Position{37 + 34.29/60, -(10 + 7.57/60)}},
		{" 63 0 s 67 38 e ", Position{-63, 67 + 38.0/60}},
		{"42.9S\u00a0147.3E", Position{-42.9, 147.3}},
		{"0S 0W", Position{}},
		{"-0 -0.0", Position{}},
		{"90N 180W", Position{90, -180}},
	}
	for _, c := range cases {
		got, err := ParsePosition(c.text)
		if err != nil || got != c.want || math.Signbit(got.Latitude) != (c.want.Latitude < 0) {
			t.Errorf("%q read as %v, %v; want %v", c.text, got.point(), err, c.want.point())
		}
	}
}

func TestBadPositionIsRefusedWithItsReason(t *testing.T) {
	cases := []struct{ text, want string }{
		{"", "is empty"},
		{" , ", "is empty"},
		{"harbour", `has "h", which is no part of a position`},
		{"48-37S 158E", `has "48-37" where a plain number is wanted`},
		{"48. 158.", `has "48." where a plain number is wanted`},
		{"48 37.2 158 06.0", "has no hemispheres; only signed degrees, latitude and longitude, go without"},
		{"-48.62", "has no hemispheres; only signed degrees, latitude and longitude, go without"},
		{"48 37.2S 158 06.0", "has no E or W after the longitude"},
		{"48 37.2 158 06.0E", "has no N or S after the latitude"},
		{"158 06.0E 48 37.2S", "has the longitude before the latitude"},
		{"48S 37N", "has two latitudes and no longitude"},
		{"48E 37W", "has two longitudes and no latitude"},
		{"158.1 -48.62", "has the latitude 158.1, beyond 90 degrees; are latitude and longitude swapped?"},
		{"98.1 147.3", "has the latitude 98.1, beyond 90 degrees"},
		{"91N 5E", "has the latitude 91, beyond 90 degrees; are latitude and longitude swapped?"},
		{"90 00.1N 5E", "has the latitude 90.00166666666667, beyond 90 degrees; are latitude and longitude swapped?"},
		{"5N 180.5W", "has the longitude -180.5, beyond 180 degrees"},
		{"5 211.9", "has the longitude 211.9, beyond 180 degrees"},
		{"S 158E", "has no number for the latitude"},
		{"48S E", "has no number for the longitude"},
		{"-48S 158E", "has both a sign and a hemisphere in the latitude"},
		{"48 60S 158E", "has 60 minutes in the latitude; they go up to 60"},
		{"48S 158 10 75E", "has 75 seconds in the longitude; they go up to 60"},
		{"48.5 10S 158E", "has decimals in the degrees of the latitude before its minutes"},
		{"48 10 20 30S 158E", "has more than degrees, minutes and seconds in the latitude"},
		{"48S 158E 10", `has "10" after the longitude`},
		{"48S 158EE", `has "E" after the longitude`},
		{"1e1 20", "has no N or S after the latitude"},
		{"0x10 20", `has "x", which is no part of a position`},
		{"NaN 20", `has "a", which is no part of a position`},
		{"48;37S 158E", `has ";", which is no part of a position`},
	}
	for _, c := range cases {
		if got, err := ParsePosition(c.text); err == nil || err.Error() != c.want {
			t.Errorf("%q: got %v, %v; want: %s", c.text, got.point(), err, c.want)
		}
	}
}

func FuzzParsePositionGivesAPlaceOrAnError(f *testing.F) {
	for _, text := range []string{"48 37.2S 158 06.0E", "42.9S 147.3E", "48 37 12S 158 06 00E", "-48.62 158.1", `48°37'12.5"N 158°06'00"W`} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		position, err := ParsePosition(text)
		if err != nil {
			return
		}
		marshalled, err := position.MarshalText()
		if err != nil {
			t.Fatalf("%q read as %v, which is nowhere: %v", text, position.point(), err)
		}
		if back, err := ParsePosition(string(marshalled)); err != nil || back != position {
			t.Errorf("%q is %q, reads back as %v, %v", text, marshalled, back.point(), err)
		}
	})
}
