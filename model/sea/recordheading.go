package sea

import (
	"slices"
	"strings"

	"coredays/model/unit"
)

// heading is the head of a column, taken apart.
type heading struct {
	text    string   // as it stands
	words   []string // in small letters
	outside int      // how many of them come before a bracket, or all
	bracket string   // what the bracket holds, in small letters
}

func headingOf(text string) heading {
	h := heading{text: strings.TrimSpace(text)}
	before, inside, found := strings.Cut(strings.ToLower(h.text), "(")
	if !found {
		before, inside, found = strings.Cut(strings.ToLower(h.text), "[")
	}
	h.words = wordsOf(before)
	h.outside = len(h.words)
	if found {
		inside, _, _ = strings.Cut(strings.Map(func(r rune) rune {
			if r == ']' {
				return ')'
			}
			return r
		}, inside), ")")
		h.bracket = strings.TrimSpace(inside)
		h.words = append(h.words, wordsOf(inside)...)
	}
	return h
}

// wordsOf are the words of a heading without marks.
func wordsOf(text string) []string {
	return strings.FieldsFunc(text, func(r rune) bool { return !(r >= 'a' && r <= 'z' || r >= '0' && r <= '9') })
}

// is reports whether the heading has one of the names, and the unit that it says after it.
func (h heading) is(names []string) (name, unit string, is bool) {
	all := strings.Join(h.words, "_")
	if slices.Contains(names, all) {
		return all, "", true
	}
	if name = strings.Join(h.words[:h.outside], "_"); h.bracket != "" && slices.Contains(names, name) {
		return name, h.bracket, true
	}
	if n := len(h.words); n > 1 && slices.Contains(unitWords, h.words[n-1]) {
		name = strings.Join(h.words[:n-1], "_")
		return name, h.words[n-1], slices.Contains(names, name)
	}
	return "", "", false
}

// unitWords may end a heading; hs_min is no unit but the least.
var unitWords = []string{"m", "metre", "metres", "meter", "meters", "cm", "mm", "km", "dm", "ft", "foot", "feet", "in", "inch", "inches", "yd", "fathom", "fathoms",
	"s", "sec", "second", "seconds", "hz"}

// lengthSymbols are the units of heights by the words for them.
var lengthSymbols = map[string]string{"m": "m", "metre": "m", "metres": "m", "meter": "m", "meters": "m", "cm": "cm", "mm": "mm",
	"ft": "ft", "foot": "ft", "feet": "ft", "in": "in", "inch": "in", "inches": "in", "fathom": "fathom", "fathoms": "fathom"}

// metresOf is the length of a unit of heights, m; false where it is not known.
func metresOf(word string) (float64, bool) {
	symbol, known := lengthSymbols[word]
	if !known {
		return 0, false
	}
	size, err := unit.OfLength.Parse("1 " + symbol)
	return size, err == nil
}

// inSeconds reports whether a unit of periods is that.
func inSeconds(word string) bool {
	return slices.Contains([]string{"", "s", "sec", "second", "seconds"}, word)
}

// inUTC reports whether what stands beside the heading of a time leaves it a date and time in UTC: nothing,
// the zone, or the form, such as yyyy-mm-dd.
func inUTC(word string) bool {
	return slices.Contains([]string{"", "utc", "gmt", "z", "iso", "iso 8601"}, word) || strings.HasPrefix(word, "yyyy") || strings.HasPrefix(word, "hh")
}
