package drillstring

import (
	"encoding/csv"
	"fmt"
	"strings"

	"coredays/model/unit"
)

// row is a line of a table, by column name. The first fault found in a cell is kept.
type row struct {
	cells map[string]string
	fault *error
}

// readRows reads a table whose first line names the columns.
func readRows(file string, take func(row)) error {
	lines, err := csv.NewReader(strings.NewReader(file)).ReadAll()
	if err != nil {
		return err
	}
	for _, line := range lines[min(1, len(lines)):] {
		cells := map[string]string{}
		for i, name := range lines[0] {
			cells[name] = line[i]
		}
		take(row{cells, &err})
	}
	return err
}

func (r row) text(column string) string {
	text := r.cells[column]
	if text == "" && *r.fault == nil {
		*r.fault = fmt.Errorf("%s: nothing in column %q", r.cells["name"], column)
	}
	return text
}

// in reads a cell with its unit.
func (r row) in(d unit.Dimension, column string) float64 {
	value, err := d.Parse(r.cells[column])
	if err != nil && *r.fault == nil {
		*r.fault = fmt.Errorf("%s: column %q: %q %w; wanted is %s", r.cells["name"], column, r.cells[column], err, d.Wanted())
	}
	return value
}

func (r row) length(column string) unit.Length { return unit.Length(r.in(unit.OfLength, column)) }

func firstOf(errs ...error) error {
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}
