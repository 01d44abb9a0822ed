package scenario

import (
	"fmt"
	"slices"
	"time"

	"coredays/model/geo"
	"coredays/model/unit"
)

// reader reads the values of one file and notes every fault. Its methods give a value that can be
// gone on with even where there is a fault, so that all faults of a file are found at once.
type reader struct {
	*outline
	said     []string // paths about which nothing more need be said
	warnings []string
}

// fault notes what is wrong at a path unless the decoder has said so.
func (c *reader) fault(path, value, wanted string) {
	for _, s := range c.said {
		if within(path, s) {
			return
		}
	}
	c.outline.fault(path, value, wanted)
}

// infeasible notes what is asked for and can't be done.
func (c *reader) infeasible(path, value, wanted string) {
	before := len(c.faults)
	c.fault(path, value, wanted)
	for i := before; i < len(c.faults); i++ {
		c.faults[i].Infeasible = true
	}
}

func (c *reader) warn(format string, args ...any) {
	c.warnings = append(c.warnings, fmt.Sprintf(format, args...))
}

// choice is one of the names, the first where none is given.
func (c *reader) choice(path string, t text, names ...string) int {
	if !t.given {
		return 0
	}
	i := slices.Index(names, t.value)
	if i < 0 {
		c.fault(path, t.value, listed(names))
	}
	return max(i, 0)
}

// yes is a yes or no.
func (c *reader) yes(path string, t text, missing bool) bool {
	switch {
	case !t.given:
		return missing
	case t.value == "yes" || t.value == "true":
		return true
	case t.value != "no" && t.value != "false":
		c.fault(path, t.value, "yes or no")
	}
	return false
}

func (c *reader) position(path string, t text) geo.Position {
	if !t.given {
		c.fault(path, "", geo.Wanted)
		return geo.Position{}
	}
	p, err := geo.ParsePosition(t.value)
	if err != nil {
		c.fault(path, t.value, because(geo.Wanted, err))
	}
	return p
}

// because adds to what is wanted what is wrong with what is there.
func because(wanted string, err error) string { return fmt.Sprintf("%s (this %v)", wanted, err) }

// moment is a date and time with its zone.
func (c *reader) moment(path string, t text) time.Time {
	for _, layout := range []string{time.RFC3339, "2006-01-02T15:04Z07:00"} {
		if m, err := time.Parse(layout, t.value); err == nil {
			return m.UTC()
		}
	}
	c.fault(path, t.value, `a date and time in UTC, such as "2027-01-14T08:00Z"`)
	return time.Time{}
}

// number is a single value, 0 with a fault where it is not one.
func (c *reader) number(path string, t text, m measure) float64 {
	if !t.given {
		c.fault(path, "", m.wanted())
		return 0
	}
	value, err := m.parse(t.value)
	if err != nil {
		c.fault(path, t.value, because(m.wanted(), err))
		return 0
	}
	if !m.holds(value) {
		c.fault(path, t.value, m.refuses())
	}
	return value
}

// maybe is a single value, 0 where none is given.
func (c *reader) maybe(path string, t text, m measure) float64 {
	if !t.given {
		return 0
	}
	return c.number(path, t, m)
}

func (c *reader) depth(path string, t text) unit.Depth {
	return unit.Depth(c.maybe(path, t, depthMeasure))
}

// version is the version of the file format.
func (c *reader) version(t text) {
	if t.value != "1" {
		c.fault("version", t.value, "the version of the file format, which is 1")
	}
}
