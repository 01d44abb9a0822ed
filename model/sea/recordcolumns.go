package sea

import (
	"fmt"
	"strings"
)

// columns are the places of what a record says in its rows, -1 for what it does not.
type columns struct {
	time, day     int    // time alone or with the date; the date beside a time of day
	parts         [5]int // year, month, day, hour, minute
	height        int
	heightUnit    string  // as written, empty for none
	metres        float64 // of the unit of heights
	peak, crossed int     // peak period; mean (zero-crossing) period, s
	count         int     // of the columns
	notes         []string
}

// Headings by what they stand for, in small letters, units and marks taken off. Those of the US
// National Data Buoy Center (WVHT, DPD, APD), of the Copernicus marine service (VHM0, VTPK, VTM02)
// and of ERA5 (swh, pp1d, mwp) are among them [from memory].
var (
	timeHeadings    = []string{"time", "datetime", "date_time", "timestamp", "valid_time", "time_utc", "datetime_utc", "utc", "time_z", "time_gmt", "datetime_gmt"}
	dateHeadings    = []string{"date", "date_utc", "day_utc", "date_gmt"}
	heightHeadings  = []string{"hs", "hm0", "swh", "wvht", "vhm0", "vavh", "h13", "significant_wave_height", "sig_wave_height", "wave_height", "significant_height"}
	peakHeadings    = []string{"tp", "dpd", "vtpk", "pp1d", "peak_period", "peak_wave_period", "dominant_period", "dominant_wave_period"}
	crossedHeadings = []string{"tz", "apd", "tm02", "t02", "vtm02", "mwp", "mean_period", "average_period", "zero_crossing_period"}
	partHeadings    = [5][]string{{"yy", "yyyy", "year", "yr"}, {"mm", "month", "mo"}, {"dd", "day", "dy"}, {"hh", "hour", "hr"}, {"mm", "mn", "min", "minute"}}
)

// columnsOf finds the columns by their headings; found only with a time and a height. It is an error when
// two columns tell the same, or one in a unit that is not known.
func columnsOf(texts []string) (c columns, found bool, err error) {
	s := columnSearch{}
	for _, text := range texts {
		s.headings = append(s.headings, headingOf(text))
	}
	c = columns{count: len(texts), metres: 1}
	c.time, c.day = s.find(timeHeadings, "time", inUTC, "a date and time in UTC"), s.find(dateHeadings, "date", inUTC, "a date in UTC")
	for i := range c.parts {
		c.parts[i] = s.part(partHeadings[i], 0)
	}
	c.parts[4] = s.part(partHeadings[4], c.parts[1]+1) // the month may be headed mm as well
	if c.time < 0 {
		c.time, c.day = c.day, -1
	}
	dated := c.time >= 0 || c.parts[0] >= 0 && c.parts[1] >= 0 && c.parts[2] >= 0 && c.parts[3] >= 0
	known := func(word string) bool { _, known := metresOf(word); return known || word == "" }
	if c.height = s.find(heightHeadings, "height", known, "m, cm, mm, ft, in or fathoms"); c.height < 0 || !dated {
		return c, false, nil
	}
	c.peak, c.crossed = s.find(peakHeadings, "peak period", inSeconds, "s"), s.find(crossedHeadings, "mean period", inSeconds, "s")
	if _, c.heightUnit, _ = s.headings[c.height].is(heightHeadings); c.heightUnit != "" {
		c.metres, _ = metresOf(c.heightUnit)
	}
	c.notes = s.notes
	return c, true, s.err
}

// columnSearch looks for columns; err is the first thing that is wrong with the headings.
type columnSearch struct {
	headings []heading
	notes    []string
	err      error
}

// find is the first column with one of the names. Others of the same name are an error, others that mean
// the same are given.
func (s *columnSearch) find(names []string, what string, mayBe func(unit string) bool, wanted string) int {
	first, firstName := -1, ""
	for i, h := range s.headings {
		name, unit, is := h.is(names)
		switch {
		case !is:
		case first < 0:
			first, firstName = i, name
			if !mayBe(unit) {
				s.fail("the %s is headed %.40q: wanted %s", what, h.text, wanted)
			}
		case name == firstName:
			s.fail("columns %d and %d both tell the %s, as %.40q and %.40q: leave one of them", first+1, i+1, what, s.headings[first].text, h.text)
		default:
			s.notes = append(s.notes, fmt.Sprintf("the %s is taken from column %.40q, not from %.40q", what, s.headings[first].text, h.text))
		}
	}
	return first
}

// part is the first column, from one on, with one of the names.
func (s *columnSearch) part(names []string, from int) int {
	for i := max(0, from); i < len(s.headings); i++ {
		if _, _, is := s.headings[i].is(names); is {
			return i
		}
	}
	return -1
}

func (s *columnSearch) fail(format string, args ...any) {
	if s.err == nil {
		s.err = fmt.Errorf(format, args...)
	}
}

// takesUnits looks whether the row below the headings says the units of the columns, as some programs write
// them, and takes that of the heights from it.
func (c *columns) takesUnits(fields []string) (taken bool, err error) {
	word := wordsOf(strings.ToLower(field(fields, c.height)))
	if _, dated := c.moment(fields); dated || len(word) != 1 {
		return false, nil
	}
	size, known := metresOf(word[0])
	if !known {
		return false, nil
	}
	if c.heightUnit != "" && size != c.metres {
		return true, fmt.Errorf("the heights are in %q by their heading and in %q by the line below it", c.heightUnit, word[0])
	}
	c.heightUnit, c.metres = word[0], size
	return true, nil
}

// inWhichUnit says what heights were taken to be in where it is not plain.
func (c *columns) inWhichUnit() []string {
	switch {
	case c.heightUnit == "":
		return append(c.notes, "no unit is given with the heights: they are taken to be in metres")
	case c.metres != 1:
		return append(c.notes, fmt.Sprintf("heights are in %s and are turned into metres", c.heightUnit))
	}
	return c.notes
}
