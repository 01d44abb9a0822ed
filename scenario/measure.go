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
	kind   string // in the words of the manual
	of     unit.Dimension
	symbol string  // unit in which limits are given
	such   string  // an example, where that of the dimension misleads
	per    string  // "/m" for a strength per metre, which is no dimension of unit
	least  float64 // SI
	most   float64 // SI
	why    string  // the reason of the bounds; empty where they need none
	above  bool    // the least itself is too little
	whole  bool    // whole numbers only
	single bool    // no spread
}

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

// wanted says people what is wanted.
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

// holds reports whether the quantity can have the value.
func (m measure) holds(value float64) bool {
	return value >= m.least && value <= m.most && !(m.above && value == m.least) && !(m.whole && value != math.Trunc(value))
}

// refuses says people what values the quantity can have, and why no others.
func (m measure) refuses() string {
	if m.why == "" {
		return m.limits()
	}
	return m.limits() + "; " + m.why
}

// limits says people what values the quantity can have.
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

// tell writes a bound. Those of times are round in one unit or another.
func (m measure) tell(value float64) string {
	if m.of == unit.OfDuration && value != 0 {
		return unit.Duration(value).Tell()
	}
	return m.of.Format(value, m.symbol) + m.per
}

// chance reports whether the quantity is a share of something and so can't be above 1.
func (m measure) chance() bool { return m.of == unit.OfShare && m.most <= 1 }
