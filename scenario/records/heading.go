package records

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"
	"unicode"

	"coredays/model/plaintext"
	"coredays/scenario/document"
	"coredays/scenario/entry"
	"coredays/scenario/fault"
)

// openTable reads the heading, which must have the columns named, in small letters or capitals, their units
// in brackets or not. The error is a fault.List.
func openTable(name string, r io.Reader, columns []string) (*recordTable, error) {
	data, err := io.ReadAll(io.LimitReader(r, document.MostTable+1))
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	if len(data) > document.MostTable {
		return nil, fault.List{{File: name, Wanted: "a table of at most 256 MiB"}}
	}
	text, err := plaintext.Of(data)
	if err != nil {
		return nil, fault.List{document.NotText(name, err)}
	}
	t := &recordTable{csv: csv.NewReader(bytes.NewReader(text)), column: map[string]int{}}
	t.csv.Comma, t.csv.Comment, t.csv.ReuseRecord = dividing(text), '#', true
	head, err := t.csv.Read()
	if err != nil {
		return nil, fault.List{{File: name, Wanted: entry.Because("a heading with the columns "+strings.Join(columns, ", "), noHeading(err))}}
	}
	t.cells = len(head)
	if faults := t.headed(head, columns); len(faults) > 0 {
		line, _ := t.csv.FieldPos(0)
		for i := range faults {
			faults[i].File, faults[i].Line = name, line
		}
		return nil, faults
	}
	return t, nil
}

// noHeading says why there is no first line.
func noHeading(err error) error {
	if err == io.EOF {
		return errors.New("file is empty")
	}
	return fmt.Errorf("one can't be read: %w", err)
}

// headed finds the columns by their headings. Nothing of the heading is repeated but what is like a
// column that is wanted.
func (t *recordTable) headed(head, wanted []string) (faults fault.List) {
	titles := make([]string, len(head))
	for i, title := range head {
		titles[i] = strings.TrimSuffix(plainTitle(title), "_utc") // all times are
		if before, twice := t.column[titles[i]]; twice && titles[i] != "" {
			if slices.Contains(wanted, titles[i]) {
				faults = append(faults, fault.Fault{Wanted: fmt.Sprintf("one column %s; columns %d and %d are headed so", titles[i], before+1, i+1)})
			}
			continue
		}
		t.column[titles[i]] = i
	}
	var missing []string
	for _, c := range wanted {
		if _, found := t.column[c]; found {
			continue
		}
		missing = append(missing, c)
		if other := otherUnit(c, titles, wanted); other != "" {
			faults = append(faults, fault.Fault{Wanted: fmt.Sprintf("a column %s, in %s; there is %s, which is not taken for it", c, unitOf(c), other)})
		}
	}
	if len(missing) > 0 {
		faults = append(fault.List{{Wanted: "the heading has no column " + strings.Join(missing, ", ")}}, faults...)
	}
	return faults
}

// plainTitle is a heading in small letters, with a low line for all that is neither letter nor figure.
func plainTitle(title string) string {
	return strings.Join(strings.FieldsFunc(strings.ToLower(title), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) }), "_")
}

// columnUnits are the units by which the names of columns end.
var columnUnits = []struct{ ending, unit string }{{"_mbsf", "metres below the sea floor"}, {"_m", "metres"}}

// timeColumns have no unit in their names.
var timeColumns = []string{"from", "start", "end", "time_on_deck"}

func unitOf(column string) string {
	for _, u := range columnUnits {
		if strings.HasSuffix(column, u.ending) {
			return u.unit
		}
	}
	return "UTC"
}

// otherUnit is a heading that is that of a column but for its unit, such as depth_ft.
func otherUnit(column string, titles, wanted []string) string {
	stem := column
	for _, u := range columnUnits {
		stem = strings.TrimSuffix(stem, u.ending)
	}
	if stem == column && !slices.Contains(timeColumns, column) {
		return ""
	}
	for _, title := range titles {
		rest, found := strings.CutPrefix(title, stem)
		if found && !slices.Contains(wanted, title) && strings.Count(rest, "_") <= 1 && (rest == "" || rest[0] == '_') {
			return title
		}
	}
	return ""
}

// dividing is what stands between the columns of the heading.
func dividing(text []byte) rune {
	for line := range bytes.Lines(text) {
		if bytes.HasPrefix(line, []byte("#")) || len(bytes.TrimSpace(line)) == 0 {
			continue
		}
		for _, divider := range ";\t" {
			if bytes.ContainsRune(line, divider) && !bytes.ContainsRune(line, ',') {
				return divider
			}
		}
		break
	}
	return ','
}
