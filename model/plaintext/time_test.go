package plaintext

import (
	"fmt"
	"strings"
	"testing"
	"time"
)

func TestWhatIsNoTimeIsToldByItsKind(t *testing.T) {
	for cell, want := range map[string]string{
		"":                      "an empty cell",
		"31/01/2012 00:00":      "the day or the month first",
		"1/2/12":                "the day or the month first",
		"31.01.2012":            "the day or the month first",
		"01-31-2012 07:00":      "the day or the month first",
		"14 Mar 2027":           "its month in words",
		"March 14, 2027":        "its month in words",
		"07:15":                 "a time of day without its date",
		"2012-01-31 00:00 EST":  "its zone in letters",
		"2012-02-30T00:00":      "the calendar does not have",
		"2012-1-5":              "another form",
		"1327968000000":         "milliseconds",
		"12":                    "a number",
		"48000,25":              "spreadsheets keep dates",
		"yesterday":             "no date",
		"root:x:0:0:root:/root": "no date",
	} {
		got := LikeTime(cell)
		if !strings.Contains(got, want) {
			t.Errorf("%q is told as %s, want %s", cell, got, want)
		}
	}
}

// Day 25,569 of spreadsheets is 1 January 1970: their day 0 is 30 December 1899 from March 1900 on, since
// they have a 29 February 1900 [common knowledge of the trade].
func TestNumbersOfDaysAndSecondsAreToldApart(t *testing.T) {
	zero := time.Date(1899, 12, 30, 0, 0, 0, 0, time.UTC)
	for _, year := range []int{1960, 1975, 2012, 2031, 2090} {
		at := time.Date(year, 7, 1, 6, 0, 0, 0, time.UTC)
		if got := LikeTime(fmt.Sprint(at.Sub(zero).Hours() / 24)); !strings.Contains(got, "spreadsheets keep dates") {
			t.Errorf("days of %d are told as %s", year, got)
		}
		if got := LikeTime(fmt.Sprint(at.Unix())); year > 1973 && !strings.Contains(got, "a number of seconds") {
			t.Errorf("seconds of %d are told as %s", year, got)
		}
	}
}
