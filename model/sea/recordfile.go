package sea

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"strings"
)

// ReadRecord reads a table of times and significant wave heights, with a line of headings above.
// Columns may be divided by commas, semicolons, tabs or blanks; which one is what is told by
// their headings (see columnsOf). Bad readings are left out and reported; it fails where nothing
// useful remains, or less than a year.
func ReadRecord(from io.Reader) (*Record, error) {
	text, err := io.ReadAll(io.LimitReader(from, mostRecord+1))
	if err != nil {
		return nil, fmt.Errorf("the record can't be read: %w", err)
	}
	if len(text) > mostRecord {
		return nil, errors.New("the record is larger than 256 MiB; hourly heights are enough")
	}
	var report Report
	readings, err := readingsOf(text, &report)
	if err != nil {
		return nil, err
	}
	readings = screened(readings, &report)
	return gridded(readings, report)
}

// mostRecord is far more than hourly heights of a century need.
const mostRecord = 256 << 20

// reading is one row of a record.
type reading struct {
	at     int64   // s since 1970, UTC
	height float64 // m
	period float64 // peak period, s; 0 for none
	line   int
}

// mostPreamble is how many lines may come before the headings.
const mostPreamble = 60

// readingsOf finds the headings and reads the rows below them.
func readingsOf(text []byte, report *Report) ([]reading, error) {
	text = bytes.TrimPrefix(text, []byte("\ufeff"))
	rest := text
	var first string
	for line := 1; line <= mostPreamble && len(rest) > 0; line++ {
		heading, below, _ := bytes.Cut(rest, []byte("\n"))
		if first == "" {
			first = strings.TrimSpace(string(heading))
		}
		divider := dividerOf(string(heading))
		if c, found := columnsOf(split(string(heading), divider)); found {
			return c.read(below, divider, line, report)
		}
		rest = below
	}
	return nil, fmt.Errorf("no line of headings with a time (time, date, or year, month, day, hour) and a height (hs, swh, hm0, wvht): "+
		"the first line is %.60q", first)
}

// dividerOf is what stands between the columns of a line.
func dividerOf(line string) rune {
	for _, d := range "\t;," {
		if strings.ContainsRune(line, d) {
			return d
		}
	}
	return ' '
}

// split divides a line of headings.
func split(line string, divider rune) []string {
	if divider == ' ' {
		return strings.Fields(line)
	}
	return strings.Split(strings.TrimRight(line, "\r"), string(divider))
}

// rows is a table row by row with the number of the line of each.
type rows struct {
	divided *csv.Reader
	text    []byte // for columns divided by blanks
	line    int    // of the last row
	before  int    // lines above the table
}

func newRows(text []byte, divider rune, before int) *rows {
	r := &rows{text: text, line: before, before: before}
	if divider != ' ' {
		r.divided = csv.NewReader(bytes.NewReader(text))
		r.divided.Comma, r.divided.LazyQuotes, r.divided.FieldsPerRecord, r.divided.ReuseRecord = divider, true, -1, true
	}
	return r
}

// next is the next row, nil at the end.
func (r *rows) next() []string {
	if r.divided != nil {
		fields, err := r.divided.Read()
		if fields == nil && err != nil {
			return nil // the end: lazy quotes and free numbers of fields leave no other error
		}
		line, _ := r.divided.FieldPos(0)
		r.line = r.before + line
		return fields
	}
	for len(r.text) > 0 {
		line, rest, _ := bytes.Cut(r.text, []byte("\n"))
		r.text = rest
		r.line++
		if fields := strings.Fields(string(line)); len(fields) > 0 {
			return fields
		}
	}
	return nil
}

// read reads the rows of a table.
func (c columns) read(text []byte, divider rune, before int, report *Report) ([]reading, error) {
	table := newRows(text, divider, before)
	var readings []reading
	for fields := table.next(); fields != nil; fields = table.next() {
		if strings.HasPrefix(fields[0], "#") {
			continue // units below the headings, or a remark
		}
		report.Rows++
		r, trouble := c.reading(fields, divider != ',')
		if r.line = table.line; trouble != Troubles {
			report.note(trouble, r.line)
			continue
		}
		readings = append(readings, r)
	}
	if len(readings) == 0 {
		return nil, fmt.Errorf("no row has both a time and a height: %d rows below the headings", report.Rows)
	}
	return readings, nil
}
