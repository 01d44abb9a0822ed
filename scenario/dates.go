package scenario

import (
	"fmt"
	"time"
)

// FirstYear and LastYear bound the dates of an expedition. The first deep sea drilling was in 1961 (Project
// Mohole, from memory); what the sea is like in a century nobody knows.
const (
	FirstYear = 1950
	LastYear  = 2150
)

// date is a moment in the years of scientific drilling.
func (c *reader) date(path string, t text) time.Time {
	before := len(c.faults)
	m := c.moment(path, t)
	if len(c.faults) == before && !Plausible(m) {
		c.fault(path, t.value, fmt.Sprintf("a date from %d to %d", FirstYear, LastYear))
	}
	return m
}

// Plausible reports whether an expedition can be at sea on a date.
func Plausible(m time.Time) bool { return m.Year() >= FirstYear && m.Year() <= LastYear }

// dateForm writes a date as a scenario does.
const dateForm = "2006-01-02T15:04Z07:00"
