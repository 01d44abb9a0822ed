package plaintext

import (
	"regexp"
	"strconv"
	"strings"
)

// LikeTime says what a cell looks like in which a date and time was looked for and not found. It repeats
// nothing of the cell.
func LikeTime(cell string) string {
	cell = strings.ToLower(strings.TrimSpace(cell))
	if x, err := strconv.ParseFloat(strings.Replace(cell, ",", ".", 1), 64); err == nil {
		return likeNumber(x)
	}
	for _, l := range looks {
		if l.form.MatchString(cell) {
			return l.what
		}
	}
	return "no date"
}

var looks = []struct {
	form *regexp.Regexp
	what string
}{
	{regexp.MustCompile(`^$`), "an empty cell"},
	{regexp.MustCompile(`^\d{1,2}[/.-]\d{1,2}[/.-](\d{4}|\d{2})\b`), "a date with the day or the month first, which nobody can tell apart"},
	{regexp.MustCompile(`\d.*(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)|(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec).*\d`), "a date with its month in words"},
	{regexp.MustCompile(`^\d{1,2}:\d{2}`), "a time of day without its date"},
	{regexp.MustCompile(`^\d{4}[-/.]\d{1,2}[-/.]\d{1,2}.*[a-z]{2,}$`), "a time with its zone in letters"},
	{regexp.MustCompile(`^\d{4}[-/.]\d{1,2}[-/.]\d{1,2}`), "a date in another form, or one that the calendar does not have"},
}

// likeNumber says ways to count time. Days from 1900, as spreadsheets count them, are 18,264 on 1 January
// 1950 and 73,051 on 1 January 2100; seconds since 1970 are 1e9 in September 2001.
func likeNumber(x float64) string {
	switch {
	case x >= 18_264 && x < 73_051:
		return "a number of days, as spreadsheets keep dates"
	case x >= 1e8 && x < 1e10:
		return "a number of seconds, as computers count them from 1970"
	case x >= 1e11 && x < 1e13:
		return "a number of milliseconds, as computers count them from 1970"
	}
	return "a number"
}
