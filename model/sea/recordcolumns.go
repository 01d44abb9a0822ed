package sea

import (
	"math"
	"slices"
	"strconv"
	"strings"
)

// columns are the places of what a record tells in its rows, -1 for what it does not.
type columns struct {
	time, day     int    // time alone or with the date; the date beside a time of day
	parts         [5]int // year, month, day, hour, minute
	height        int
	feet          bool
	peak, crossed int // peak period; mean (zero-crossing) period
}

// Headings by what they stand for, in small letters, units and marks taken off. Those of the US
// National Data Buoy Center (WVHT, DPD, APD), of the Copernicus marine service (VHM0, VTPK, VTM02)
// and of ERA5 (swh, pp1d, mwp) are among them [from memory].
var (
	timeHeadings    = []string{"time", "datetime", "date_time", "timestamp", "valid_time", "time_utc", "datetime_utc", "utc", "time_z"}
	dateHeadings    = []string{"date", "date_utc", "day_utc"}
	heightHeadings  = []string{"hs", "hm0", "swh", "wvht", "vhm0", "vavh", "h13", "significant_wave_height", "sig_wave_height", "wave_height", "significant_height"}
	peakHeadings    = []string{"tp", "dpd", "vtpk", "pp1d", "peak_period", "peak_wave_period", "dominant_period", "dominant_wave_period"}
	crossedHeadings = []string{"tz", "apd", "tm02", "t02", "vtm02", "mwp", "mean_period", "average_period", "zero_crossing_period"}
	partHeadings    = [5][]string{{"yy", "yyyy", "year", "yr"}, {"mm", "month", "mo"}, {"dd", "day", "dy"}, {"hh", "hour", "hr"}, {"mm", "mn", "min", "minute"}}
)

// columnsOf finds the columns by their headings; found only with a time and a height.
func columnsOf(headings []string) (c columns, found bool) {
	names := make([]string, len(headings))
	units := make([]string, len(headings))
	for i, h := range headings {
		names[i], units[i] = plainHeading(h)
	}
	find := func(wanted []string, from int) int {
		for i := max(0, from); i < len(names); i++ {
			if slices.Contains(wanted, names[i]) {
				return i
			}
		}
		return -1
	}
	c = columns{time: find(timeHeadings, 0), day: find(dateHeadings, 0), height: find(heightHeadings, 0), peak: find(peakHeadings, 0), crossed: find(crossedHeadings, 0)}
	for i := range c.parts {
		c.parts[i] = find(partHeadings[i], 0)
	}
	c.parts[4] = find(partHeadings[4], c.parts[1]+1) // the month may be headed mm as well
	if c.time < 0 {
		c.time, c.day = c.day, -1
	}
	if c.height >= 0 {
		c.feet = slices.Contains([]string{"ft", "feet"}, units[c.height])
	}
	dated := c.time >= 0 || c.parts[0] >= 0 && c.parts[1] >= 0 && c.parts[2] >= 0 && c.parts[3] >= 0
	return c, dated && c.height >= 0
}

// lengthUnits are what may stand at the end of a heading.
var lengthUnits = []string{"m", "metre", "metres", "meter", "meters", "ft", "feet", "s", "sec", "seconds"}

// plainHeading is a heading in small letters without marks, and the unit that it ends with.
func plainHeading(heading string) (name, unit string) {
	words := strings.FieldsFunc(strings.ToLower(heading), func(r rune) bool {
		return !(r >= 'a' && r <= 'z' || r >= '0' && r <= '9')
	})
	if n := len(words); n > 1 && slices.Contains(lengthUnits, words[n-1]) {
		words, unit = words[:n-1], words[n-1]
	}
	return strings.Join(words, "_"), unit
}

// reading reads one row; trouble is Troubles where there is none. A decimal comma is read where
// commas do not divide the columns.
func (c columns) reading(fields []string, comma bool) (r reading, trouble Trouble) {
	at, ok := c.moment(fields)
	if !ok {
		return r, BadTime
	}
	r.at = at
	height, trouble := quantity(field(fields, c.height), comma)
	if c.feet {
		height *= 0.3048
	}
	switch r.height = height; {
	case trouble != Troubles:
		return r, trouble
	case height < 0 || height > highestSea:
		return r, Impossible
	}
	if p, t := quantity(field(fields, c.peak), comma); t == Troubles {
		r.period = p
	} else if p, t := quantity(field(fields, c.crossed), comma); t == Troubles {
		r.period = 1.4 * p // Tp = 1.4 Tz of a fully developed sea [from memory]
	}
	return r, Troubles
}

// highestSea is above any significant height measured: 19.0 m is the highest by a buoy (World
// Meteorological Organization 2016) [from memory].
const highestSea = 25.0

func field(fields []string, i int) string {
	if i < 0 || i >= len(fields) {
		return ""
	}
	return strings.TrimSpace(fields[i])
}

var (
	fillWords = []string{"", "-", "--", "mm", "na", "n/a", "nan", "null", "none", "missing"}
	fillCodes = []float64{99, 999, 9999, 99999, 99.9, 99.99, 999.9, 999.99, 9999.9, 32767, -9, -9.9, -9.99, -99, -99.9, -99.99, -999, -999.9, -999.99, -9999, -32767, -32768, -99999}
)

// quantity reads a number and tells fill codes from it.
func quantity(text string, comma bool) (float64, Trouble) {
	if slices.Contains(fillWords, strings.ToLower(text)) {
		return 0, FillCode
	}
	if comma {
		text = strings.Replace(text, ",", ".", 1)
	}
	x, err := strconv.ParseFloat(text, 64)
	switch {
	case err != nil && !math.IsInf(x, 0):
		return 0, BadNumber
	case slices.Contains(fillCodes, x) || math.Abs(x) > 1e15: // 1e20 and the like
		return 0, FillCode
	}
	return x, Troubles
}
