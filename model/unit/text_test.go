package unit

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// drawUnit draws a dimension and one of its units.
func drawUnit(t *rapid.T) (Dimension, string) {
	d := rapid.SampledFrom(allDimensions()).Draw(t, "dimension")
	return d, rapid.SampledFrom(d.Symbols()).Draw(t, "symbol")
}

func allDimensions() []Dimension {
	var all []Dimension
	for d := range wordings {
		all = append(all, Dimension(d))
	}
	return all
}

func TestEveryValueReadsBackFromItsTextInEveryUnit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d, symbol := drawUnit(t)
		value := rapid.Float64().Draw(t, "value")
		text := d.Format(value, symbol)
		if back, err := d.Parse(text); err != nil || back != value {
			t.Fatalf("%g in %q is %q, reads back as %g, %v", value, symbol, text, back, err)
		}
	})
}

func TestWhatAPersonWroteIsWrittenBackTheSame(t *testing.T) {
	cases := []struct {
		dimension Dimension
		symbol    string
		texts     []string
	}{
		{OfLength, "m", []string{"3420 m", "0.3 m", "28.5 m", "-4.7 m", "1000000 m"}},
		{OfLength, "ft", []string{"31 ft", "0.1 ft", "11220.5 ft"}},
		{OfStandRate, "stands/h", []string{"22 stands/h", "18.3 stands/h"}},
		{OfSpeed, "kn", []string{"10.4 kn", "9.2 kn", "11.7 kn"}},
		{OfDuration, "min", []string{"6.7 min", "31 min"}},
		{OfForce, "klbf", []string{"80 klbf", "33.3 klbf"}},
		{OfShare, "%", []string{"65 %", "0.1 %"}},
		{OfShare, "", []string{"0.65", "0"}},
	}
	for _, c := range cases {
		for _, text := range c.texts {
			value, err := c.dimension.Parse(text)
			if back := c.dimension.Format(value, c.symbol); err != nil || back != text {
				t.Errorf("%q came back as %q, %v", text, back, err)
			}
		}
	}
}

func TestUnknownSymbolIsWrittenInTheBaseUnit(t *testing.T) {
	for _, d := range allDimensions() {
		text := d.Format(0.65, "cubit")
		if back, err := d.Parse(text); err != nil || back != 0.65 {
			t.Errorf("%s: 0.65 became %q, reads back as %g, %v", d.Wanted(), text, back, err)
		}
	}
}

func TestExampleOfEveryDimensionIsOfThatDimension(t *testing.T) {
	for d, w := range wordings {
		if _, err := Dimension(d).Parse(w.example); err != nil {
			t.Errorf("%s: %q %v", w.name, w.example, err)
		}
	}
}

func TestBadTextIsRefusedWithItsReason(t *testing.T) {
	cases := []struct {
		dimension Dimension
		text      string
		want      string
	}{
		{OfLength, "", "is not a number with a unit"},
		{OfLength, "deep", "is not a number with a unit"},
		{OfLength, "m 3420", "is not a number with a unit"},
		{OfLength, "--3 m", "is not a number with a unit"},
		{OfLength, "1..2 m", "is not a number with a unit"},
		{OfLength, "1e m", "is not a number with a unit"},
		{OfLength, "NaN m", "is not a number with a unit"},
		{OfLength, "Inf m", "is not a number with a unit"},
		{OfLength, "1e99999999999999999999 m", "is not a number with a unit"},
		{OfLength, "1e999 m", "is too large a number"},
		{OfLength, "1e308 km", "is too large a number"},
		{OfLength, "3420", "has no unit"},
		{OfLength, "3,420 m", "has a comma in its number"},
		{OfLength, "3420 M", `has the unit "M", which is not one for a length`},
		{OfLength, "250 mbsf", `has the unit "mbsf", which is not one for a length`},
		{OfDepth, "250 m", `has the unit "m", which is not one for a depth below the sea floor`},
		{OfDuration, "5 m", `has the unit "m", which is not one for a time`},
		{OfForce, "80 kips", `has the unit "kips", which is not one for a force`},
		{OfLength, "0x10 m", `has the unit "x10 m", which is not one for a length`},
		{OfShare, "most", "is not a number"},
		{OfCount, "three", "is not a number"},
		{OfCount, "3 m", `has the unit "m", which is not one for a plain number`},
	}
	for _, c := range cases {
		if value, err := c.dimension.Parse(c.text); err == nil || err.Error() != c.want {
			t.Errorf("%q: got %g, %v; want: %s", c.text, value, err, c.want)
		}
	}
}

func TestSpaceAroundNumberAndUnitDoesNotMatter(t *testing.T) {
	for _, text := range []string{"3420m", " 3420 m ", "3420\u00a0m", "3420\u202fm", "+3420 m", "3.42e3 m", "3.42km"} {
		if value, err := OfLength.Parse(text); err != nil || value != 3420 {
			t.Errorf("%q read as %g, %v", text, value, err)
		}
	}
}

func TestZeroHasNoSign(t *testing.T) {
	value, err := OfLength.Parse("-0 m")
	if err != nil || math.Signbit(value) || OfLength.Format(math.Copysign(0, -1), "ft") != "0 ft" {
		t.Errorf("-0 m read as %g, %v, written as %s", value, err, OfLength.Format(math.Copysign(0, -1), "ft"))
	}
}

func FuzzParseGivesAFiniteValueOrAnError(f *testing.F) {
	for d, w := range wordings {
		f.Add(d, w.example)
	}
	f.Add(int(OfLength), "-1e-999999999 m")
	f.Fuzz(func(t *testing.T, d int, text string) {
		dimension := Dimension(uint(d) % uint(len(wordings)))
		value, err := dimension.Parse(text)
		if math.IsNaN(value) || math.IsInf(value, 0) || err != nil && value != 0 {
			t.Errorf("%q read as %g, %v", text, value, err)
		}
	})
}
