package sitetable

import (
	"coredays/scenario/spreadsheet"
	"regexp"
	"slices"
	"strings"
	"unicode"
)

// coordinate is where the pieces of a latitude or a longitude stand; -1 for none.
type coordinate struct {
	whole, degrees, minutes, seconds, side int
	sided                                  string // hemisphere that the heading gives
}

// columns are where things stand; -1 for nowhere.
type columns struct {
	name, position, depth, target, priority int
	latitude, longitude                     coordinate
	depthUnit, targetUnit                   string
	twice                                   []string // headings that say what another says already
}

func (c *columns) complete() bool {
	known := func(c coordinate) bool { return c.whole >= 0 || c.degrees >= 0 }
	return c.name >= 0 && (c.position >= 0 || known(c.latitude) && known(c.longitude))
}

// mostHeadings is how many lines may stand above the heading.
const mostHeadings = 20

// heading finds the heading, of one row or two, and the first row below it.
func heading(list []spreadsheet.Row) (found columns, below int, ok bool) {
	for i := range min(len(list), mostHeadings) {
		one := columnsOf(list[i].Cells)
		if i+1 < len(list) && isHeading(list[i+1]) && (ofPieces(list[i+1]) || !one.complete() && !complete(list[i+1])) {
			if c := columnsOf(joined(list[i], list[i+1])); c.complete() {
				return c, i + 2, true
			}
		}
		if one.complete() {
			return one, i + 1, true
		}
	}
	return found, 0, false
}

func complete(r spreadsheet.Row) bool {
	c := columnsOf(r.Cells)
	return c.complete()
}

// pieces are what the lower row of a heading says under what spans several columns.
var pieces = []string{"deg", "degrees", "min", "minutes", "sec", "seconds", "ns", "ew", "n", "s", "e", "w", "hemisphere", "m", "metres", "ft", "feet", "km", "mbsf"}

// ofPieces reports whether a row says nothing but pieces and units.
func ofPieces(r spreadsheet.Row) bool {
	for i := range r.Cells {
		for _, word := range words(r.Cell(i)) {
			if !slices.Contains(pieces, word) {
				return false
			}
		}
	}
	return true
}

// isHeading reports whether a row is part of a heading: it has no figure.
func isHeading(r spreadsheet.Row) bool {
	return !slices.ContainsFunc(r.Cells, func(s string) bool { return strings.ContainsAny(s, "0123456789") })
}

// joined puts two rows of a heading together; what spans several columns stands in the first of them.
func joined(upper, lower spreadsheet.Row) (titles []string) {
	above := ""
	for i := range max(len(upper.Cells), len(lower.Cells)) {
		if u := upper.Cell(i); u != "" {
			above = u
		} else if lower.Cell(i) == "" {
			above = ""
		}
		titles = append(titles, above+" "+lower.Cell(i))
	}
	return titles
}

// words are those of a heading in small letters.
func words(title string) []string {
	title = strings.NewReplacer("°", " deg ", "n/s", " ns ", "N/S", " ns ", "e/w", " ew ", "E/W", " ew ", "º", " deg ", "′", " min ", "″", " sec ").Replace(title)
	return strings.FieldsFunc(strings.ToLower(title), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
}

// unitInHeading is a unit in brackets, after a comma or as the last word.
var unitInHeading = regexp.MustCompile(`(?i)\b(m|metres|meters|km|ft|feet|fathoms|mbsf)\b\s*[\])]?\s*$`)

// columnsOf says the columns by their titles.
func columnsOf(titles []string) columns {
	none := coordinate{-1, -1, -1, -1, -1, ""}
	c := columns{name: -1, position: -1, depth: -1, target: -1, priority: -1, latitude: none, longitude: none}
	set := func(at *int, i int) {
		if *at >= 0 {
			c.twice = append(c.twice, strings.TrimSpace(titles[i]))
			return
		}
		*at = i
	}
	for i, title := range titles {
		w := words(title)
		has := func(any ...string) bool {
			return slices.ContainsFunc(w, func(word string) bool { return slices.Contains(any, word) })
		}
		switch {
		case has("latitude", "lat"):
			c.latitude.piece(has, i, set, "n", "s")
		case has("longitude", "long", "lon"):
			c.longitude.piece(has, i, set, "e", "w")
		case has("position", "coordinates"):
			set(&c.position, i)
		case has("target", "penetration", "mbsf"):
			set(&c.target, i)
			c.targetUnit = unitOf(title)
		case has("water", "waterdepth") || has("depth", "seafloor") && !has("approved"):
			set(&c.depth, i)
			c.depthUnit = unitOf(title)
		case has("priority", "rank"):
			set(&c.priority, i)
		case has("site", "name", "station"):
			set(&c.name, i)
		}
	}
	return c
}

// piece notes a column of a coordinate.
func (c *coordinate) piece(has func(...string) bool, i int, set func(*int, int), positive, negative string) {
	switch {
	case has("min", "minutes", "minute"):
		set(&c.minutes, i)
	case has("sec", "seconds", "second"):
		set(&c.seconds, i)
	case has("ns", "ew", "hemisphere", "hem"):
		set(&c.side, i)
	case has("deg", "degrees", "degree"):
		set(&c.degrees, i)
	default:
		set(&c.whole, i)
	}
	if has(positive) != has(negative) {
		c.sided = strings.ToUpper(map[bool]string{true: positive, false: negative}[has(positive)])
	}
}

// unitOf is the unit in a heading, empty for none.
func unitOf(title string) string {
	found := unitInHeading.FindStringSubmatch(strings.TrimSpace(title))
	if found == nil {
		return ""
	}
	switch unit := strings.ToLower(found[1]); unit {
	case "metres", "meters", "mbsf":
		return "m"
	case "feet":
		return "ft"
	default:
		return unit
	}
}
