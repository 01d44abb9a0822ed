package unit

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestPeopleAreToldFewDigits(t *testing.T) {
	cases := []struct{ got, want string }{
		{Length(3420).Tell(), "3420 m"},
		{Length(3424.9).Tell(), "3420 m"},
		{Length(28.52).Tell(), "28.5 m"},
		{Length(28).Tell(), "28 m"},
		{Length(0).Tell(), "0 m"},
		{Length(-4.7).Tell(), "-4.7 m"},
		{Length(256_400).Tell(), "256 km"},
		{(324.4 * NauticalMile).TellIn("nmi"), "324 nmi"},
		{Depth(250.04).Tell(), "250 mbsf"},
		{(12 * Minute / 60).Tell(), "12 s"},
		{(31 * Minute).Tell(), "31 min"},
		{(119 * Minute).Tell(), "119 min"},
		{(2 * Hour).Tell(), "2 h"},
		{(13.47 * Hour).Tell(), "13.5 h"},
		{(2 * Day).Tell(), "2 d"},
		{(56.04 * Day).Tell(), "56 d"},
		{(-36 * Hour).Tell(), "-36 h"},
		{(36 * Hour).TellIn("d"), "1.5 d"},
		{(10.43 * Knot).TellIn("kn"), "10.4 kn"},
		{Speed(8.0 / 3600).TellIn("m/h"), "8 m/h"},
		{Speed(4.4).TellIn("m/min"), "264 m/min"},
		{(80_000 * PoundForce).Tell(), "80 klbf (356 kN)"},
		{OfShare.Tell(0.6543, "%"), "65.4 %"},
		{OfStandRate.Tell(22.27/3600, "stands/h"), "22.3 stands/h"},
		{OfCount.Tell(math.Copysign(0, -1), ""), "0"},
	}
	for _, c := range cases {
		if c.got != c.want {
			t.Errorf("told %q, want %q", c.got, c.want)
		}
	}
}

func TestAValueIsToldApartFromItsLimit(t *testing.T) {
	for _, c := range []struct {
		value, limit float64
		want         string
	}{
		{371.3, 371, "371.3 mbsf"}, {371.00004, 371, "371.00004 mbsf"}, {371, 371, "371 mbsf"}, {250.04, 300, "250 mbsf"}, {370.96, 371.3, "371 mbsf"},
	} {
		if got := OfDepth.TellApart(c.value, c.limit, "mbsf"); got != c.want {
			t.Errorf("%v against %v is told as %q, want %q", c.value, c.limit, got, c.want)
		}
	}
}

func TestWhatPeopleAreToldIsWithinHalfAPercent(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d, symbol := drawUnit(t)
		value := rapid.Float64Range(1e-6, 1e12).Draw(t, "value")
		told := d.Tell(value, symbol)
		back, err := d.Parse(told)
		// Half of the third figure of 100, plus the rounding of a float64.
		if err != nil || math.Abs(back/value-1) > 0.005+1e-12 {
			t.Fatalf("%g %s told as %q, that is %g, %v", value, d.Symbols()[0], told, back, err)
		}
		number, _, _ := strings.Cut(told, " ")
		if figures := strings.Trim(strings.Replace(number, ".", "", 1), "0"); len(figures) > peopleDigits {
			t.Fatalf("%q has %s figures", told, strconv.Itoa(len(figures)))
		}
	})
}

func TestDurationCountsInHoursDaysAndMinutes(t *testing.T) {
	d := 36 * Hour
	if d.Hours() != 36 || d.Days() != 1.5 || d.Minutes() != 2160 {
		t.Errorf("36 h are %g h, %g d, %g min", d.Hours(), d.Days(), d.Minutes())
	}
}
