package entry

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"coredays/model/unit"
)

// Measure is what kind of quantity is wanted and what values it can have.
type Measure struct {
	kind   string // in the words of the manual
	Of     unit.Dimension
	Symbol string  // unit in which limits are given
	such   string  // an example, where that of the dimension misleads
	per    string  // "/m" for a strength per metre, which is no dimension of unit
	Least  float64 // SI
	Most   float64 // SI
	why    string  // the reason of the bounds; empty where they need none
	Above  bool    // the least itself is too little
	Whole  bool    // whole numbers only
	single bool    // no spread
}

// parse reads a value in SI.
func (m Measure) parse(text string) (float64, error) {
	if m.per != "" {
		rest, found := strings.CutSuffix(strings.TrimSpace(text), m.per)
		if !found {
			return 0, errors.New("is not per metre")
		}
		text = rest
	}
	return m.Of.Parse(text)
}

// Wanted says people what is wanted.
func (m Measure) Wanted() string {
	switch {
	case m.per != "":
		return fmt.Sprintf("a strength per metre below the sea floor, such as %q", "0.6 kPa/m")
	case m.Whole:
		return fmt.Sprintf("a whole number, such as %q", "3")
	}
	if before, _, found := strings.Cut(m.Of.Wanted(), "such as "); found && m.such != "" {
		return fmt.Sprintf("%ssuch as %q", before, m.such)
	}
	return m.Of.Wanted()
}

// holds reports whether the quantity can have the value.
func (m Measure) holds(value float64) bool {
	return value >= m.Least && value <= m.Most && !(m.Above && value == m.Least) && !(m.Whole && value != math.Trunc(value))
}

// refuses says people what values the quantity can have, and why no others.
func (m Measure) refuses() string {
	if m.why == "" {
		return m.limits()
	}
	return m.limits() + "; " + m.why
}

// limits says people what values the quantity can have.
func (m Measure) limits() string {
	from := "from " + m.tell(m.Least) + " to "
	if m.Above {
		from = "above " + m.tell(m.Least) + " and at most "
	}
	if m.Whole {
		from = "a whole number " + from
	}
	return from + m.tell(m.Most)
}

// tell writes a bound. Those of times are round in one unit or another.
func (m Measure) tell(value float64) string {
	if m.Of == unit.OfDuration && value != 0 {
		return unit.Duration(value).Tell()
	}
	return m.Of.Format(value, m.Symbol) + m.per
}

// chance reports whether the quantity is a share of something and so can't be above 1.
func (m Measure) chance() bool { return m.Of == unit.OfShare && m.Most <= 1 }
