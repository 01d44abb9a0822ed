// Package entry reads single values of a scenario: quantities with spread, depths, positions, dates, names. Each has
// bounds of what a planner can mean.
package entry

import (
	"fmt"
	"slices"
	"time"

	"coredays/model/geo"
	"coredays/model/unit"
	"coredays/scenario/document"
	"coredays/scenario/fault"
)

// Reader reads the values of one file and notes every fault. Its methods give a value that can be
// gone on with even where there is a fault, so that all faults of a file are found at once.
type Reader struct {
	*document.Outline
	Said     []string // paths about which nothing more need be said
	Warnings []string
}

// Fault notes what is wrong at a path unless the decoder has said so.
func (c *Reader) Fault(path, value, wanted string) {
	for _, s := range c.Said {
		if document.Within(path, s) {
			return
		}
	}
	c.Outline.Fault(path, value, wanted)
}

// Infeasible notes what is asked for and can't be done.
func (c *Reader) Infeasible(path, value, wanted string) {
	before := len(c.Faults)
	c.Fault(path, value, wanted)
	for i := before; i < len(c.Faults); i++ {
		c.Faults[i].Infeasible = true
	}
}

// Warn notes what is no fault and yet should be known, as fmt.Sprintf has it.
func (c *Reader) Warn(format string, args ...any) {
	c.Warnings = append(c.Warnings, fmt.Sprintf(format, args...))
}

// Choice is one of the names, the first where none is given.
func (c *Reader) Choice(path string, t document.Text, names ...string) int {
	if !t.Given {
		return 0
	}
	i := slices.Index(names, t.Value)
	if i < 0 {
		c.Fault(path, t.Value, fault.Listed(names))
	}
	return max(i, 0)
}

// Yes is a yes or no.
func (c *Reader) Yes(path string, t document.Text, missing bool) bool {
	switch {
	case !t.Given:
		return missing
	case t.Value == "yes" || t.Value == "true":
		return true
	case t.Value != "no" && t.Value != "false":
		c.Fault(path, t.Value, "yes or no")
	}
	return false
}

// Position is one that must be there.
func (c *Reader) Position(path string, t document.Text) geo.Position {
	if !t.Given {
		c.Fault(path, "", geo.Wanted)
		return geo.Position{}
	}
	p, err := geo.ParsePosition(t.Value)
	if err != nil {
		c.Fault(path, t.Value, Because(geo.Wanted, err))
	}
	return p
}

// Because adds to what is wanted what is wrong with what is there.
func Because(wanted string, err error) string { return fmt.Sprintf("%s (this %v)", wanted, err) }

// moment is a date and time with its zone.
func (c *Reader) moment(path string, t document.Text) time.Time {
	for _, layout := range []string{time.RFC3339, "2006-01-02T15:04Z07:00"} {
		if m, err := time.Parse(layout, t.Value); err == nil {
			return m.UTC()
		}
	}
	c.Fault(path, t.Value, `a date and time in UTC, such as "2027-01-14T08:00Z"`)
	return time.Time{}
}

// Number is a single value, 0 with a fault where it is not one.
func (c *Reader) Number(path string, t document.Text, m Measure) float64 {
	if !t.Given {
		c.Fault(path, "", m.Wanted())
		return 0
	}
	value, err := m.parse(t.Value)
	if err != nil {
		c.Fault(path, t.Value, Because(m.Wanted(), err))
		return 0
	}
	if !m.holds(value) {
		c.Fault(path, t.Value, m.refuses())
	}
	return value
}

// Maybe is a single value, 0 where none is given.
func (c *Reader) Maybe(path string, t document.Text, m Measure) float64 {
	if !t.Given {
		return 0
	}
	return c.Number(path, t, m)
}

// Depth is one below the sea floor, 0 where none is given.
func (c *Reader) Depth(path string, t document.Text) unit.Depth {
	return unit.Depth(c.Maybe(path, t, DepthMeasure))
}

// Version is the version of the file format.
func (c *Reader) Version(t document.Text) {
	if t.Value != "1" {
		c.Fault("version", t.Value, "the version of the file format, which is 1")
	}
}
