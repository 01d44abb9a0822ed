package words_test

import (
	"math"
	"testing"
	"time"

	"coredays/model/result"
	"coredays/output/outputtest"
	"coredays/output/words"
)

func TestSpreadThatMeansNothingIsOneNumber(t *testing.T) {
	none := math.NaN()
	cases := []struct {
		name string
		s    result.Spread
		want string
	}{
		{"ordinary", result.Spread{N: 9, P10: 220, P50: 267, P90: 310}, "267 (220–310)"},
		{"negative", result.Spread{N: 9, P10: -31, P50: 2, P90: 5}, "2 (−31 to 5)"},
		{"one replication", result.Spread{N: 1, P10: 220, P50: 267, P90: 310}, "267"},
		{"all the same", result.Spread{N: 9, P10: 267, P50: 267, P90: 267}, "267"},
		{"all print the same", result.Spread{N: 9, P10: 266.9, P50: 267, P90: 267.1}, "267"},
		{"lower half the same", result.Spread{N: 9, P10: 0, P50: 0, P90: 4}, "0 (0–4)"},
		{"outer figures undefined", result.Spread{N: 9, P10: none, P50: 267, P90: none}, "267"},
		{"no replication", result.Spread{}, "–"},
	}
	for _, c := range cases {
		if got := words.Ranged(c.s, 0); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}

func TestDatesAreToldWithTheirRange(t *testing.T) {
	sails := time.Date(2027, 1, 14, 8, 0, 0, 0, time.UTC)
	cases := []struct {
		s    result.Spread
		want string
	}{
		{outputtest.SpreadInDays(9, 0, 14, 16, 19, 0), "30 Jan (28 Jan–2 Feb)"},
		{outputtest.SpreadInDays(9, 0, 2, 3, 4, 0), "17 Jan (16–18 Jan)"},
		{outputtest.SpreadInDays(9, 0, 2, 2.1, 2.2, 0), "16 Jan"},
		{outputtest.SpreadInDays(1, 0, 14, 16, 19, 0), "30 Jan"},
		{outputtest.SpreadInDays(9, 0, 350, 352, 366, 0), "1 Jan (30 Dec–15 Jan)"},
		{result.Spread{}, "–"},
		{result.Spread{N: 9, P50: math.MaxFloat64}, "–"},
	}
	for _, c := range cases {
		if got := words.Dates(sails, c.s); got != c.want {
			t.Errorf("%+v: %q, want %q", c.s, got, c.want)
		}
	}
	if got := words.Dates(time.Time{}, cases[0].s); got != "–" {
		t.Errorf("without a date of sailing: %q", got)
	}
}
