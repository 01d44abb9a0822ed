package output

import (
	"iter"
	"math"
	"slices"
	"time"

	"coredays/model/logbook"
)

// sheet is a table behind a chart, of the CSV files and of the workbook: the same rows everywhere,
// in full precision where programs read and rounded where people do.
type sheet struct {
	name   string // of the file and the sheet
	title  string
	fields []field
	long   iter.Seq[[]any] // rows one after the other, where they would take much room; nil for rows
	rows   [][]any         // a cell is a string, a float64 (not-a-number for none), a bool or a time.Time
}

// field is a column of a sheet.
type field struct {
	key     string // its heading for programs
	heading string // its heading for people, without the unit
	kind    kind
	meaning string
}

// kind is what a column holds and in which unit.
type kind int

const (
	ofWords kind = iota
	ofCount
	ofNumber // with its unit in another column, or none
	ofDays
	ofHours
	ofMetres
	ofPercent // 0 to 100 and above
	ofShare   // 0 to 1 for programs, per cent for people
	ofDate
	ofTruth
	ofOrder  // a count, rounded up for people
	ofPoints // a difference of shares, for people in points of a hundred
	ofNauticalMiles
)

// unit is the unit for programs; people read shares in per cent.
func (k kind) unit() string {
	return [...]string{"", "1", "", "d", "h", "m", "%", "1", "UTC", "true or false", "1", "1", "nmi"}[k]
}

// unitForPeople is the unit in a heading.
func (k kind) unitForPeople() string {
	return [...]string{"", "", "", "d", "h", "m", "%", "%", "", "", "", "points", "nmi"}[k]
}

// all goes through the rows.
func (s *sheet) all() iter.Seq[[]any] {
	if s.long != nil {
		return s.long
	}
	return slices.Values(s.rows)
}

func (s *sheet) add(cells ...any) { s.rows = append(s.rows, cells) }

// only is the sheet with some of its columns, in the order given.
func (s *sheet) only(keys ...string) *sheet {
	few := &sheet{name: s.name, title: s.title, rows: make([][]any, len(s.rows))}
	for _, key := range keys {
		for i, f := range s.fields {
			if f.key == key {
				few.fields = append(few.fields, f)
				for r := range s.rows {
					few.rows[r] = append(few.rows[r], s.rows[r][i])
				}
			}
		}
	}
	return few
}

// where is the sheet with the rows that have a text in their column of that key.
func (s *sheet) where(key, text string) *sheet {
	some := &sheet{name: s.name, title: s.title, fields: s.fields}
	for i, f := range s.fields {
		for _, row := range s.rows {
			if f.key == key && row[i] == any(text) {
				some.rows = append(some.rows, row)
			}
		}
	}
	return some
}

// threeFields are the columns of P10, P50 and P90 of a result.
func threeFields(key, heading, meaning string, k kind) []field {
	return []field{{key + "_p10", heading + " P10", k, meaning + ": one in ten stays below"},
		{key + "_p50", heading + " P50", k, meaning + ": half stay below"},
		{key + "_p90", heading + " P90", k, meaning + ": nine in ten stay below"}}
}

// threeOf fills them; a spread of nothing leaves them empty.
func threeOf(s logbook.Spread) []any {
	s = told(s)
	return []any{s.P10, s.P50, s.P90}
}

// threeDates fills them with moments.
func threeDates(sails time.Time, after logbook.Spread) []any {
	after = told(after)
	var cells []any
	for _, seconds := range []float64{after.P10, after.P50, after.P90} {
		at, exists := dateAfter(sails, seconds)
		if !exists {
			cells = append(cells, nil)
			continue
		}
		cells = append(cells, at.Round(time.Second))
	}
	return cells
}

// largest is the largest number of a column, for its decimals.
func (s *sheet) largest(column int) float64 {
	most := 0.0
	for _, row := range s.rows {
		if x, is := row[column].(float64); is && defined(x) {
			most = max(most, math.Abs(x))
		}
	}
	return most
}
