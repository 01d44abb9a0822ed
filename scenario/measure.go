package scenario

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"coredays/model/unit"
)

// measure is what kind of quantity is wanted and what values it can have.
type measure struct {
	of     unit.Dimension
	symbol string  // unit in which limits are told
	such   string  // an example, where that of the dimension misleads
	per    string  // "/m" for a strength per metre, which is no dimension of unit
	least  float64 // SI
	most   float64 // SI
	above  bool    // the least itself is too little
	whole  bool    // whole numbers only
	single bool    // no spread
}

// Values that no expedition has are slips of the unit; where not stated, the bounds are judgement.
var (
	depthMeasure      = measure{of: unit.OfDepth, symbol: "mbsf", above: true, most: 9000} // beyond any riserless string: ODP TN31 drillship sheet gives 8385 m with the water
	waterMeasure      = measure{of: unit.OfLength, symbol: "m", above: true, most: 11_000} // the deepest trench is about 10.9 km, from memory
	offsetMeasure     = measure{of: unit.OfLength, symbol: "m", such: "3 m", most: 9.5}    // a core: more would leave a gap
	seaDaysMeasure    = measure{of: unit.OfDuration, symbol: "d", such: "56 d", least: 0.25 * float64(unit.Day), most: 400 * float64(unit.Day)}
	capMeasure        = measure{of: unit.OfDuration, symbol: "h", such: "9 d", least: 3 * float64(unit.Hour), most: 400 * float64(unit.Day)} // less than positioning and securing take
	inPortMeasure     = measure{of: unit.OfDuration, symbol: "d", such: "5 d", most: 100 * float64(unit.Day)}
	everyMeasure      = measure{of: unit.OfDuration, symbol: "h", such: "20 d", least: 6 * float64(unit.Hour), most: 1e4 * float64(unit.Day)}
	lastsMeasure      = measure{of: unit.OfDuration, symbol: "h", such: "2 d", least: 0.5 * float64(unit.Hour), most: 100 * float64(unit.Day)}
	taskMeasure       = measure{of: unit.OfDuration, symbol: "h", such: "30 h", above: true, most: 100 * float64(unit.Day)}
	heightMeasure     = measure{of: unit.OfLength, symbol: "m", such: "3 m", above: true, most: 30}
	overpullMeasure   = measure{of: unit.OfForce, symbol: "klbf", above: true, most: 2e6} // 450 klbf
	countMeasure      = measure{of: unit.OfCount, least: 1, most: 1000, whole: true}
	numberMeasure     = measure{of: unit.OfCount, above: true, most: 1e6}
	shareMeasure      = measure{of: unit.OfShare, symbol: "%", most: 1}
	partMeasure       = measure{of: unit.OfShare, symbol: "%", above: true, most: 1}
	quantileMeasure   = measure{of: unit.OfShare, symbol: "%", above: true, most: 0.9999} // 1 has no quantile
	persistMeasure    = measure{of: unit.OfCount, most: 0.99}
	commonMeasure     = measure{of: unit.OfCount, least: -1, most: 1}
	rockMeasure       = measure{of: unit.OfPressure, symbol: "MPa", such: "80 MPa", above: true, most: 1e9}
	strengthMeasure   = measure{of: unit.OfPressure, symbol: "kPa", per: "/m", above: true, most: 1e7}
	penetrationRate   = measure{of: unit.OfSpeed, symbol: "m/h", such: "28 m/h", above: true, most: 1000.0 / 3600}
	recoveryMeasure   = measure{of: unit.OfShare, symbol: "%", most: 2}
	hullMeasure       = measure{of: unit.OfLength, symbol: "m", such: "140 m", above: true, most: 500}
	waterLimitMeasure = measure{of: unit.OfLength, symbol: "m", most: 11_000}
)

// parse reads a value in SI.
func (m measure) parse(text string) (float64, error) {
	if m.per != "" {
		rest, found := strings.CutSuffix(strings.TrimSpace(text), m.per)
		if !found {
			return 0, errors.New("is not per metre")
		}
		text = rest
	}
	return m.of.Parse(text)
}

// wanted tells people what is wanted.
func (m measure) wanted() string {
	switch {
	case m.per != "":
		return fmt.Sprintf("a strength per metre below the sea floor, such as %q", "0.6 kPa/m")
	case m.whole:
		return fmt.Sprintf("a whole number, such as %q", "3")
	}
	if before, _, found := strings.Cut(m.of.Wanted(), "such as "); found && m.such != "" {
		return fmt.Sprintf("%ssuch as %q", before, m.such)
	}
	return m.of.Wanted()
}

// holds tells whether the quantity can have the value.
func (m measure) holds(value float64) bool {
	return value >= m.least && value <= m.most && !(m.above && value == m.least) && !(m.whole && value != math.Trunc(value))
}

// limits tells people what values the quantity can have.
func (m measure) limits() string {
	from := "from " + m.tell(m.least) + " to "
	if m.above {
		from = "above " + m.tell(m.least) + " and at most "
	}
	if m.whole {
		from = "a whole number " + from
	}
	return from + m.tell(m.most)
}

func (m measure) tell(value float64) string { return m.of.Format(value, m.symbol) + m.per }

// chance tells whether the quantity is a share of something and so can't be above 1.
func (m measure) chance() bool { return m.of == unit.OfShare && m.most == 1 }
