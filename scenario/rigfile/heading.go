package rigfile

import (
	"coredays/scenario/spreadsheet"
	"fmt"
	"regexp"
	"slices"
	"strings"
	"unicode"
)

// kind is which of the three files a table is.
type kind int

const (
	operations kind = iota
	cores
	recording
)

func (k kind) String() string { return [...]string{"operations log", "core table", "recording"}[k] }

// needs are the columns by which a kind is known.
var needs = [...][]string{{"from", "what"}, {"core", "time_on_deck"}, {"time", "block", "hook_load"}}

// headings are the names under which people have the columns, beside their own.
var headings = map[string]string{
	"start": "from", "time_from": "from", "begin": "from", "start_time": "from", "from_time": "from", "date_time": "from",
	"end": "to", "time_to": "to", "until": "to", "end_time": "to", "to_time": "to",
	"operation": "what", "activity": "what", "description": "what", "operations": "what", "remarks_of_operation": "what",
	"duration": "hours", "hrs": "hours", "h": "hours",
	"well": "hole", "depth": "depth", "depth_mbsf": "depth", "hole_depth_mbsf": "depth", "depth_mbrf": "depth_rig_floor",
	"bit_from": "bit_from", "bit_to": "bit_to", "stand_count": "stands", "remark": "note", "remarks": "note", "comment": "note",
	"core_number": "core", "core_no": "core", "core_type": "type", "tool": "type", "expedition": "leg",
	"top_depth": "top", "top_depth_mbsf": "top", "top_mbsf": "top", "top_depth_mbrf": "top_rig_floor", "top_mbrf": "top_rig_floor",
	"cored": "cored", "advance": "cored", "length_cored": "cored", "recovered": "recovered", "recovery": "recovered",
	"on_deck": "time_on_deck", "deck_time": "time_on_deck", "on_deck_time": "time_on_deck",
	"water_depth": "water", "block_height": "block", "block_position": "block", "hookload": "hook_load",
	"bit_depth": "bit", "wire": "wire", "wire_out": "wire", "line_out": "wire", "wire_depth": "wire", "wireline_depth": "wire", "line_depth": "wire", "seconds": "time", "time_s": "time",
}

// column is where a column stands, and the unit that its heading or the row below says.
type column struct {
	at    int
	unit  string
	local bool // its times are those of a ship's clock
	title string
}

// table is a sheet of which the heading is known.
type table struct {
	*sheet
	kind   kind
	column map[string]column
	rows   []spreadsheet.Row // below the heading
	headed int               // number of the row of the heading
}

// mostAbove is how many rows, such as a title and the ship's name, may stand above the heading.
const mostAbove = 12

// inUnit finds the unit at the end of a heading.
var inUnit = regexp.MustCompile(`^(.*?)[ _]*[\[(/]?\b(mbsf|mbrf|m|ft|min|hours|h|s|n|kn|klbf|klb|klbs|kips|t|kdan|utc|local|lt)\b[\])]?$`)

// tabled finds the heading of a sheet.
func tabled(s *sheet) (*table, error) {
	for i := range min(mostAbove, len(s.Rows)) {
		found := headed(s.Rows[i].Cells)
		for k, wanted := range needs {
			if !slices.ContainsFunc(wanted, func(c string) bool { _, has := found[c]; return !has }) {
				t := &table{sheet: s, kind: kind(k), column: found, rows: s.Rows[i+1:], headed: s.Rows[i].Number}
				t.unitRow()
				return t, nil
			}
		}
	}
	return nil, fmt.Errorf("%s: no heading was found in the first %d rows: an operations log has the columns from and what, a core table core and time_on_deck, a recording time, block_m and hook_load", s.file, mostAbove)
}

// headed are the columns that a row names.
func headed(cells []string) map[string]column {
	found := map[string]column{}
	for i, cell := range cells {
		name := plain(cell)
		unit := ""
		if _, known := headings[name]; !known {
			if m := inUnit.FindStringSubmatch(strings.ToLower(strings.ReplaceAll(cell, "_", " "))); m != nil && plain(m[1]) != "" {
				name, unit = plain(m[1]), m[2]
			}
		} else if m := inUnit.FindStringSubmatch(strings.ToLower(strings.ReplaceAll(cell, "_", " "))); m != nil {
			unit = m[2]
		}
		local := unit == "local" || unit == "lt"
		if also, known := headings[name]; known {
			name = also
		}
		if (name == "top" || name == "depth") && unit == "mbrf" {
			name += "_rig_floor"
		}
		if _, twice := found[name]; !twice && name != "" {
			found[name] = column{i, unit, local, cell}
		}
	}
	return found
}

// unitRow takes a second row of the heading, with units alone, for what it is.
func (t *table) unitRow() {
	if len(t.rows) == 0 {
		return
	}
	units := 0
	for _, cell := range t.rows[0].Cells {
		if cell == "" {
			continue
		}
		if !onlyUnit.MatchString(strings.ToLower(cell)) {
			return
		}
		units++
	}
	if units == 0 {
		return
	}
	for name, c := range t.column {
		if c.at < len(t.rows[0].Cells) {
			unit := strings.Trim(strings.ToLower(t.rows[0].Cells[c.at]), "[]() ")
			if unit != "" {
				c.unit, c.local = unit, c.local || unit == "local" || unit == "lt"
			}
			if (name == "top" || name == "depth") && unit == "mbrf" {
				delete(t.column, name)
				name += "_rig_floor"
			}
			t.column[name] = c
		}
	}
	t.rows = t.rows[1:]
}

var onlyUnit = regexp.MustCompile(`^[\[(]?(mbsf|mbrf|m|ft|min|hours|h|s|n|kn|klbf|klb|klbs|kips|t|kdan|utc|local|lt|-|text|hh:mm|yyyy-mm-dd hh:mm)[\])]?$`)

// plain is a heading in small letters, with a low line for what is neither letter nor figure.
func plain(title string) string {
	return strings.Join(strings.FieldsFunc(strings.ToLower(title), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) }), "_")
}
