package sheet

import (
	"iter"
	"math"
	"slices"
	"time"

	"coredays/model/result"
	"coredays/output/words"
)

// Table is a table behind a chart, of the CSV files and of the workbook: the same rows everywhere,
// in full precision where programs read and rounded where people do.
type Table struct {
	Name   string // of the file and the sheet
	Title  string
	Fields []Field
	long   iter.Seq[[]any] // rows one after the other, where they would take much room; nil for rows
	Rows   [][]any         // a cell is a string, a float64 (not-a-number for none), a bool or a time.Time
}

// Field is a column of a sheet.
type Field struct {
	Key     string // its heading for programs
	Heading string // its heading for people, without the unit
	Kind    Kind
	Meaning string
}

// Kind is what a column holds and in which unit.
type Kind int

const (
	OfWords Kind = iota
	ofCount
	ofNumber // with its unit in another column, or none
	ofDays
	ofHours
	ofMetres
	ofPercent // 0 to 100 and above
	ofShare   // 0 to 1 for programs, per cent for people
	ofDate
	OfTruth
	ofOrder  // a count, rounded up for people
	ofPoints // a difference of shares, for people in points of a hundred
	ofNauticalMiles
)

// Unit is the unit for programs; people read shares in per cent.
func (k Kind) Unit() string {
	return [...]string{"", "1", "", "d", "h", "m", "%", "1", "UTC", "true or false", "1", "1", "nmi"}[k]
}

// unitForPeople is the unit in a heading.
func (k Kind) unitForPeople() string {
	return [...]string{"", "", "", "d", "h", "m", "%", "%", "", "", "", "points", "nmi"}[k]
}

// all goes through the rows.
func (s *Table) all() iter.Seq[[]any] {
	if s.long != nil {
		return s.long
	}
	return slices.Values(s.Rows)
}

func (s *Table) Add(cells ...any) { s.Rows = append(s.Rows, cells) }

// Only is the sheet with some of its columns, in the order given.
func (s *Table) Only(keys ...string) *Table {
	few := &Table{Name: s.Name, Title: s.Title, Rows: make([][]any, len(s.Rows))}
	for _, key := range keys {
		for i, f := range s.Fields {
			if f.Key == key {
				few.Fields = append(few.Fields, f)
				for r := range s.Rows {
					few.Rows[r] = append(few.Rows[r], s.Rows[r][i])
				}
			}
		}
	}
	return few
}

// Where is the sheet with the rows that have a text in their column of that key.
func (s *Table) Where(key, text string) *Table {
	some := &Table{Name: s.Name, Title: s.Title, Fields: s.Fields}
	for i, f := range s.Fields {
		for _, row := range s.Rows {
			if f.Key == key && row[i] == any(text) {
				some.Rows = append(some.Rows, row)
			}
		}
	}
	return some
}

// threeFields are the columns of P10, P50 and P90 of a result.
func threeFields(key, heading, meaning string, k Kind) []Field {
	return []Field{{key + "_p10", heading + " P10", k, meaning + ": one in ten stays below"},
		{key + "_p50", heading + " P50", k, meaning + ": half stay below"},
		{key + "_p90", heading + " P90", k, meaning + ": nine in ten stay below"}}
}

// threeOf fills them; a spread of nothing leaves them empty.
func threeOf(s result.Spread) []any {
	s = words.Supported(s)
	return []any{s.P10, s.P50, s.P90}
}

// threeDates fills them with moments.
func threeDates(sails time.Time, after result.Spread) []any {
	after = words.Supported(after)
	var cells []any
	for _, seconds := range []float64{after.P10, after.P50, after.P90} {
		at, exists := words.DateAfter(sails, seconds)
		if !exists {
			cells = append(cells, nil)
			continue
		}
		cells = append(cells, at.Round(time.Second))
	}
	return cells
}

// largest is the largest number of a column, for its decimals.
func (s *Table) largest(column int) float64 {
	most := 0.0
	for _, row := range s.Rows {
		if x, is := row[column].(float64); is && words.Defined(x) {
			most = max(most, math.Abs(x))
		}
	}
	return most
}
