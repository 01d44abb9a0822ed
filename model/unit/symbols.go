package unit

// symbol is one way to write a unit and its size in the SI base unit of its dimension.
type symbol struct {
	text string
	size float64
}

// wording is how a dimension is read and stated to people.
type wording struct {
	name    string // as a noun, "a length"
	example string
	symbols []symbol // the first is the SI base unit
}

// Sizes in SI units, exact by definition; as in the file definitions.units of GNU units 2.22, which
// says their history too.
const (
	foot          = 0.3048 // international yard and pound agreement 1959
	inch          = foot / 12
	fathom        = 6 * foot
	mile          = 5280 * foot
	nauticalMile  = 1852       // hydrographic conference of 1929 (year from memory)
	pound         = 0.45359237 // international yard and pound agreement 1959
	standardG     = 9.80665    // standard gravity, 1901
	lbf           = pound * standardG
	shortTonForce = 2000 * lbf // the ton of the ton-mile, common practice of the drilling trade
	perMinute     = 1.0 / 60
	perHour       = 1.0 / 3600
)

var wordings = [...]wording{
	OfLength: {"a length", "3420 m", []symbol{{"m", 1}, {"km", 1000}, {"cm", 0.01}, {"mm", 0.001},
		{"ft", foot}, {"in", inch}, {"nmi", nauticalMile}, {"fathom", fathom}, {"fathoms", fathom}}},
	OfDepth:    {"a depth below the sea floor", "250 mbsf", []symbol{{"mbsf", 1}}},
	OfDuration: {"a time", "30 min", []symbol{{"s", 1}, {"min", 60}, {"h", 3600}, {"d", 86400}}},
	OfSpeed: {"a speed", "10.4 kn", []symbol{{"m/s", 1}, {"m/min", perMinute}, {"m/h", perHour},
		{"ft/min", foot * perMinute}, {"ft/h", foot * perHour}, {"kn", nauticalMile * perHour}, {"km/h", 1000 * perHour}}},
	OfForce:      {"a force", "80 klbf", []symbol{{"N", 1}, {"kN", 1000}, {"MN", 1e6}, {"lbf", lbf}, {"klbf", 1000 * lbf}}},
	OfPressure:   {"a pressure or strength", "90 kPa", []symbol{{"Pa", 1}, {"kPa", 1000}, {"MPa", 1e6}, {"psi", lbf / (inch * inch)}}},
	OfMass:       {"a mass", "900 kg", []symbol{{"kg", 1}, {"t", 1000}, {"lb", pound}, {"klb", 1000 * pound}}},
	OfLinearMass: {"a mass per length", "30.7 kg/m", []symbol{{"kg/m", 1}, {"lb/ft", pound / foot}}},
	OfEnergy:     {"drilling-line work", "1500 ton-mile", []symbol{{"J", 1}, {"MJ", 1e6}, {"GJ", 1e9}, {"ton-mile", shortTonForce * mile}}},
	OfShare:      {"a share", "65 %", []symbol{{"", 1}, {"%", 0.01}}},
	OfStandRate:  {"a tripping rate", "22 stands/h", []symbol{{"stands/s", 1}, {"stands/min", perMinute}, {"stands/h", perHour}}},
	OfCount:      {"a plain number", "3", []symbol{{"", 1}}},
}

// Symbols lists the units that a text of this dimension may carry, the SI base unit first. An
// empty symbol means that the number may stand alone.
func (d Dimension) Symbols() []string {
	var texts []string
	for _, s := range wordings[d].symbols {
		texts = append(texts, s.text)
	}
	return texts
}

// symbol finds a unit of the dimension by its text.
func (d Dimension) symbol(text string) (symbol, bool) {
	for _, s := range wordings[d].symbols {
		if s.text == text {
			return s, true
		}
	}
	return symbol{}, false
}

// symbolOrBase is the unit of that text, or the SI base unit where the dimension has no such unit.
func (d Dimension) symbolOrBase(text string) symbol {
	if s, found := d.symbol(text); found {
		return s
	}
	return wordings[d].symbols[0]
}
