package sea

import (
	"strconv"
	"strings"
	"time"
)

// Ways to write a moment. A day before its month (or after) is not read: which is which can't be
// stated. A time without a zone is taken as UTC.
var momentLayouts = []string{
	"2006-01-02T15:04Z07:00", time.RFC3339, "2006-01-02 15:04:05", "2006-01-02 15:04", "2006-01-02T15:04:05", "2006-01-02T15:04",
	"2006-01-02 15:04:05Z07:00", "2006-01-02 15:04Z07:00", "2006/01/02 15:04:05", "2006/01/02 15:04", "2006-01-02 15", "2006-01-02T15",
	"20060102 1504", "200601021504", "2006010215", "20060102T150405", "2006-01-02",
}

// Readings must lie in these years; others are slips.
const firstYear, lastYear = 1900, 2100

// moment reads the time of a row, s since 1970.
func (c *columns) moment(fields []string) (int64, bool) {
	at, ok := c.written(fields)
	if !ok && c.parts[0] >= 0 {
		at, ok = c.inParts(fields)
	}
	return at.Unix(), ok && at.Year() >= firstYear && at.Year() <= lastYear
}

// written reads a time in one or two columns.
func (c *columns) written(fields []string) (time.Time, bool) {
	text := strings.TrimSpace(strings.TrimSuffix(c.writtenTime(fields), "UTC"))
	for _, layout := range momentLayouts {
		if len(text) < 8 {
			break
		}
		if at, err := time.Parse(layout, text); err == nil {
			return at.UTC(), true
		}
	}
	return time.Time{}, false
}

// writtenTime is the text of a time in one or two columns.
func (c *columns) writtenTime(fields []string) string {
	if c.day >= 0 {
		return field(fields, c.day) + " " + field(fields, c.time)
	}
	return field(fields, c.time)
}

// inParts reads a time in columns of year, month, day, hour and perhaps minute.
func (c *columns) inParts(fields []string) (time.Time, bool) {
	var n [5]int
	for i, column := range c.parts {
		if column < 0 {
			continue
		}
		x, err := strconv.Atoi(field(fields, column))
		if err != nil {
			return time.Time{}, false
		}
		n[i] = x
	}
	if n[0] >= 50 && n[0] < 100 {
		n[0] += 1900 // old buoy files have two figures
	}
	at := time.Date(n[0], time.Month(n[1]), n[2], n[3], n[4], 0, 0, time.UTC)
	return at, at.Day() == n[2] && int(at.Month()) == n[1] && at.Hour() == n[3] && n[4] < 60
}
