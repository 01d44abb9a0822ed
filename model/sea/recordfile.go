package sea

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"strings"

	"coredays/model/plaintext"
)

// ReadRecord reads a table of times and significant wave heights, with a line of headings above.
// Columns may be divided by commas, semicolons, tabs or blanks; which one is what is given by
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
	r, err := gridded(readings, report)
	if err != nil {
		return nil, report.explaining(err)
	}
	return r, nil
}

// Misread is why a record can't be used, with the line that says it.
type Misread struct {
	Line int // 0 where it is not one line
	Why  string
}

// Error says it without the line, which has its own place in a message.
func (m *Misread) Error() string { return m.Why }

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
func readingsOf(data []byte, report *Report) ([]reading, error) {
	text, err := plaintext.Of(data)
	if odd, is := errors.AsType[*plaintext.Odd](err); is {
		return nil, &Misread{odd.Line, odd.Error()}
	}
	if len(bytes.TrimSpace(text)) == 0 {
		return nil, &Misread{Why: "the file is empty"}
	}
	rest := text
	for line := 1; line <= mostPreamble && len(rest) > 0; line++ {
		heading, below, _ := bytes.Cut(rest, []byte("\n"))
		divider := dividerOf(string(heading))
		c, found, err := columnsOf(split(string(heading), divider))
		if found && err != nil {
			return nil, &Misread{line, err.Error()}
		}
		if found {
			return c.read(below, divider, line, report)
		}
		rest = below
	}
	return nil, &Misread{Why: fmt.Sprintf("no line of headings with a time (time, date, or year, month, day, hour) and a height (hs, swh, hm0, wvht) "+
		"among the first %d lines", mostPreamble)}
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

// split divides a line of headings, which may be marked as a remark.
func split(line string, divider rune) []string {
	line = strings.TrimLeft(line, "# ")
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
func (c *columns) read(text []byte, divider rune, before int, report *Report) ([]reading, error) {
	table := newRows(text, divider, before)
	var readings []reading
	for first, fields := true, table.next(); fields != nil; first, fields = false, table.next() {
		if first {
			if units, err := c.takesUnits(fields); err != nil {
				return nil, &Misread{table.line, err.Error()}
			} else if units {
				continue
			}
		}
		if strings.HasPrefix(fields[0], "#") {
			continue // a remark
		}
		report.Rows++
		r, trouble := c.reading(fields, divider != ',')
		if r.line = table.line; trouble != Troubles {
			report.note(trouble, r.line)
			report.noteLooks(trouble, c, fields)
			continue
		}
		readings = append(readings, r)
	}
	report.Issued = c.inWhichUnit()
	if len(readings) == 0 {
		return nil, report.explaining(fmt.Errorf("no row has both a time and a height: %s below the headings", counted(report.Rows, "row")))
	}
	return readings, nil
}
