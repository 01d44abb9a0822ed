package records

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"math"
	"slices"
	"strconv"
	"strings"
	"time"

	"coredays/model/plaintext"
	"coredays/model/record"
	"coredays/scenario/fault"
)

// recordTable reads a table of records by the names of its columns, which commas, semicolons or tabs
// divide. Lines that begin with # are comments. What can't be read of a row is noted; the row is then
// left out whole.
type recordTable struct {
	csv         *csv.Reader
	column      map[string]int
	cells       int // of the heading
	row         []string
	line        int
	rows        int  // that could be read as rows
	decimal     byte // point or comma, whichever comes first
	decimalLine int
	wrong       []string // with the row in hand
	out         []record.LeftOut
}

// next moves to the next row that has as many cells as the heading; empty ones are passed over.
func (t *recordTable) next() bool {
	for {
		row, err := t.csv.Read()
		if err == io.EOF {
			return false
		}
		t.row, t.wrong = row, nil
		if empty := !slices.ContainsFunc(row, func(cell string) bool { return strings.TrimSpace(cell) != "" }); empty && len(row) > 0 {
			continue
		}
		if err == nil {
			t.line, _ = t.csv.FieldPos(0)
			t.rows++
			return true
		}
		line, why := 0, err.Error()
		if parse, ok := errors.AsType[*csv.ParseError](err); ok {
			line, why = parse.StartLine, parse.Err.Error()
		}
		count := errors.Is(err, csv.ErrFieldCount)
		if count {
			why = fmt.Sprintf("%d cells, where the heading has %d", len(row), t.cells)
		}
		t.out = append(t.out, record.LeftOut{Row: line, Why: why})
		if !count {
			return false // a broken quote loses the rest of the file
		}
	}
}

// keep reports whether the row in hand could be read; if not it is listed.
func (t *recordTable) keep() bool {
	if len(t.wrong) > 0 {
		t.out = append(t.out, record.LeftOut{Row: t.line, Why: strings.Join(t.wrong, "; ")})
	}
	return len(t.wrong) == 0
}

// text is what a cell says; the apostrophe before what a spreadsheet would run is not part of it.
func (t *recordTable) text(column string) string {
	return plaintext.Unguarded(strings.TrimSpace(t.row[t.column[column]]))
}

// has reports whether the cell of a column is filled in.
func (t *recordTable) has(column string) bool { return t.text(column) != "" }

func (t *recordTable) fault(column, wanted string) {
	t.wrong = append(t.wrong, fmt.Sprintf("%s %q: wanted %s", column, t.text(column), wanted))
}

// word must be there.
func (t *recordTable) word(column string) string {
	if !t.has(column) {
		t.fault(column, "a name")
	}
	return t.text(column)
}

// oneOf must be one of those known.
func (t *recordTable) oneOf(column string, known []string) {
	if name := t.text(column); !slices.Contains(known, name) {
		wanted, _ := fault.Suggest(name, known, column)
		t.wrong = append(t.wrong, fmt.Sprintf("%s %q: %s", column, name, wanted))
	}
}

// number must be there and lie within limits.
func (t *recordTable) number(column string, least, most float64) float64 {
	x, err := strconv.ParseFloat(t.figures(column), 64)
	if err != nil || math.IsNaN(x) || x < least || x > most {
		t.fault(column, fmt.Sprintf("a number from %g to %g", least, most))
		return 0
	}
	return x
}

// figures are those of a number, its decimal comma made a point where commas do not divide the columns. A
// comma below a point, or the other way round, is a fault: it may stand for thousands.
func (t *recordTable) figures(column string) string {
	text := t.text(column)
	if i := strings.IndexAny(text, ".,"); i >= 0 && t.csv.Comma != ',' {
		if t.decimal == 0 {
			t.decimal, t.decimalLine = text[i], t.line
		}
		if text[i] != t.decimal {
			t.fault(column, fmt.Sprintf("a number with %q before its decimals, as on line %d", t.decimal, t.decimalLine))
		}
	}
	if t.csv.Comma == ',' {
		return text
	}
	return strings.Replace(text, ",", ".", 1)
}

// maybe is number, or 0 for an empty cell.
func (t *recordTable) maybe(column string, least, most float64) float64 {
	if !t.has(column) {
		return 0
	}
	return t.number(column, least, most)
}

// count is a whole number; the sources write some as 3.0.
func (t *recordTable) count(column string, least, most float64) int {
	x := t.number(column, least, most)
	if x != math.Trunc(x) {
		t.fault(column, "a whole number")
	}
	return int(x)
}

// maybeCount is count, or 0 for an empty cell.
func (t *recordTable) maybeCount(column string, most float64) int {
	if !t.has(column) {
		return 0
	}
	return t.count(column, 0, most)
}

// recordTimes are the forms of a time, in UTC.
var recordTimes = []string{"2006-01-02T15:04", "2006-01-02T15:04:05", "2006-01-02 15:04", "2006-01-02 15:04:05", time.RFC3339, "2006-01-02T15:04Z07:00"}

func (t *recordTable) moment(column string) time.Time {
	for _, form := range recordTimes {
		if at, err := time.Parse(form, t.text(column)); err == nil {
			return at.UTC()
		}
	}
	t.fault(column, "a time in UTC, such as 2027-03-18T03:00 (this is "+plaintext.LikeTime(t.text(column))+")")
	return time.Time{}
}

// someRows is the fault of a table that has nothing below its heading.
func (t *recordTable) someRows(name string) error {
	if t.rows > 0 || len(t.out) > 0 {
		return nil
	}
	return fault.List{{File: name, Wanted: "there is no line below the heading"}}
}

// sortedOut lists what was left out, by line.
func sortedOut(out []record.LeftOut) []record.LeftOut {
	slices.SortStableFunc(out, func(a, b record.LeftOut) int { return a.Row - b.Row })
	return out
}
