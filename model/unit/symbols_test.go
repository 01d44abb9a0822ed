package unit

import (
	"math"
	"math/big"
	"os/exec"
	"strconv"
	"strings"
	"testing"
)

// definition is what a unit is by its definition. The exact figures were read in the file
// definitions.units of GNU units 2.22 (Debian package units 2.22-2).
type definition struct {
	symbol string
	gnu    string // the same in the notation of GNU units, base unit included: "from → to"
	exact  string // the size in the base unit as products and quotients of exact numbers
	source string
}

const (
	si     = "SI base units and prefixes"
	nonSI  = "units used with the SI: minute of 60 s, hour of 60 min, day of 24 h, tonne of 1000 kg"
	yard   = "international yard and pound of 1959: yard 0.9144 m, pound 0.45359237 kg"
	sea    = "international nautical mile: 1852 m"
	weight = "yard and pound of 1959 with the standard gravity of 1901, 9.80665 m/s2"
	trade  = "a share in a hundred, a stand: count words of plain English"
)

var definitions = map[Dimension][]definition{
	OfLength: {{"m", "m → m", "1", si}, {"km", "km → m", "1000", si}, {"cm", "cm → m", "1/100", si}, {"mm", "mm → m", "1/1000", si},
		{"ft", "ft → m", "0.9144/3", yard}, {"in", "in → m", "0.9144/36", yard}, {"nmi", "nmile → m", "1852", sea},
		{"fathom", "fathom → m", "0.9144*2", yard}, {"fathoms", "fathom → m", "0.9144*2", yard}},
	OfDepth:    {{"mbsf", "m → m", "1", si}},
	OfDuration: {{"s", "s → s", "1", si}, {"min", "min → s", "60", nonSI}, {"h", "hour → s", "3600", nonSI}, {"d", "day → s", "86400", nonSI}},
	OfSpeed: {{"m/s", "m/s → m/s", "1", si}, {"m/min", "m/min → m/s", "1/60", nonSI}, {"m/h", "m/hour → m/s", "1/3600", nonSI},
		{"ft/min", "ft/min → m/s", "0.9144/3/60", yard}, {"ft/h", "ft/hour → m/s", "0.9144/3/3600", yard},
		{"kn", "knot → m/s", "1852/3600", sea}, {"km/h", "km/hour → m/s", "1000/3600", nonSI}},
	OfForce: {{"N", "N → N", "1", si}, {"kN", "kN → N", "1000", si}, {"MN", "MN → N", "1000000", si},
		{"lbf", "lbf → N", "0.45359237*9.80665", weight}, {"klbf", "1000 lbf → N", "453.59237*9.80665", weight}},
	OfPressure: {{"Pa", "Pa → Pa", "1", si}, {"kPa", "kPa → Pa", "1000", si}, {"MPa", "MPa → Pa", "1000000", si},
		{"psi", "psi → Pa", "0.45359237*9.80665/0.0254/0.0254", weight}},
	OfMass: {{"kg", "kg → kg", "1", si}, {"t", "tonne → kg", "1000", nonSI},
		{"lb", "lb → kg", "0.45359237", yard}, {"klb", "1000 lb → kg", "453.59237", yard}},
	OfLinearMass: {{"kg/m", "kg/m → kg/m", "1", si}, {"lb/ft", "lb/ft → kg/m", "0.45359237/0.3048", yard}},
	OfEnergy: {{"J", "J → J", "1", si}, {"MJ", "MJ → J", "1000000", si}, {"GJ", "GJ → J", "1000000000", si},
		{"ton-mile", "2000 lbf mile → J", "2000*0.45359237*9.80665*0.9144*1760", weight}},
	OfShare:     {{"", "1 → 1", "1", trade}, {"%", "percent → 1", "1/100", trade}},
	OfStandRate: {{"stands/s", "1/s → 1/s", "1", trade}, {"stands/min", "1/min → 1/s", "1/60", trade}, {"stands/h", "1/hour → 1/s", "1/3600", trade}},
	OfCount:     {{"", "1 → 1", "1", trade}},
}

func TestEverySymbolHasADefinition(t *testing.T) {
	for _, d := range allDimensions() {
		var defined []string
		for _, definition := range definitions[d] {
			defined = append(defined, definition.symbol)
		}
		if got, want := strings.Join(d.Symbols(), ","), strings.Join(defined, ","); got != want {
			t.Errorf("%s: symbols %q, defined are %q", d.Wanted(), got, want)
		}
	}
}

func TestEverySymbolHasTheSizeOfItsDefinition(t *testing.T) {
	for d, list := range definitions {
		for _, unit := range list {
			got, err := d.Parse("1 " + unit.symbol)
			if want := product(t, unit.exact); err != nil || got != want {
				t.Errorf("1 %s is %.17g, %v; by %s it is %.17g", unit.symbol, got, err, unit.source, want)
			}
		}
	}
}

// product works out "a*b/c" exactly and rounds once.
func product(t *testing.T, text string) float64 {
	result := big.NewRat(1, 1)
	for i, factor := range strings.Split(text, "*") {
		for j, part := range strings.Split(factor, "/") {
			number, ok := new(big.Rat).SetString(part)
			if !ok {
				t.Fatalf("%q: part %d.%d is no number", text, i, j)
			}
			if j > 0 {
				number.Inv(number)
			}
			result.Mul(result, number)
		}
	}
	value, _ := result.Float64()
	return value
}

func TestEverySymbolHasTheSizeThatGNUUnitsGives(t *testing.T) {
	program, err := exec.LookPath("units")
	if err != nil {
		t.Skip("the program units (GNU units) is not installed; sizes are checked against their definitions alone")
	}
	for d, list := range definitions {
		for _, unit := range list {
			from, to, _ := strings.Cut(unit.gnu, " → ")
			output, err := exec.Command(program, "--terse", "--output-format", "%.17g", from, to).Output()
			want, wrong := strconv.ParseFloat(strings.TrimSpace(string(output)), 64)
			if err != nil || wrong != nil {
				t.Errorf("units %q %q: %v, %s", from, to, err, output)
				continue
			}
			got, err := d.Parse("1 " + unit.symbol)
			if err != nil || math.Abs(got/want-1) > 4e-15 { // GNU units rounds at each of several steps
				t.Errorf("1 %s is %.17g, %v; GNU units: %.17g", unit.symbol, got, err, want)
			}
		}
	}
}

func TestNamedSizesAreThoseOfTheirSymbols(t *testing.T) {
	cases := []struct {
		dimension Dimension
		text      string
		want      float64
	}{
		{OfSpeed, "1 kn", float64(Knot)}, {OfLength, "1 nmi", float64(NauticalMile)}, {OfLength, "1 ft", float64(Foot)},
		{OfForce, "1 lbf", float64(PoundForce)}, {OfDuration, "1 min", float64(Minute)},
		{OfDuration, "1 h", float64(Hour)}, {OfDuration, "1 d", float64(Day)},
	}
	for _, c := range cases {
		if got, err := c.dimension.Parse(c.text); err != nil || got != c.want {
			t.Errorf("%s is %g, %v; named constant is %g", c.text, got, err, c.want)
		}
	}
}
