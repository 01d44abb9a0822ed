package entry

import (
	"fmt"
	"time"

	"coredays/scenario/document"
)

// FirstYear and LastYear bound the dates of an expedition. The first deep sea drilling was in 1961 (Project
// Mohole, from memory); what the sea is like in a century nobody knows.
const (
	FirstYear = 1950
	LastYear  = 2150
)

// Date is a moment in the years of scientific drilling.
func (c *Reader) Date(path string, t document.Text) time.Time {
	before := len(c.Faults)
	m := c.moment(path, t)
	if len(c.Faults) == before && !Plausible(m) {
		c.Fault(path, t.Value, fmt.Sprintf("a date from %d to %d", FirstYear, LastYear))
	}
	return m
}

// Plausible reports whether an expedition can be at sea on a date.
func Plausible(m time.Time) bool { return m.Year() >= FirstYear && m.Year() <= LastYear }

// DateForm writes a date as a scenario does.
const DateForm = "2006-01-02T15:04Z07:00"
