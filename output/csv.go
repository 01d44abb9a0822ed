package output

import (
	"context"
	"encoding/csv"
	"errors"
	"io"
	"os"
	"path/filepath"
)

// Tables are the names of all tables that there may be.
var Tables = []string{"alternatives", "basis", "chances", "check", "classes", "consumables", "days_needed", "depth_days", "dictionary", "differences", "drivers",
	"holes", "layers", "logged", "passages", "replications", "results", "run", "sea", "section", "sites"}

// CSV writes all tables into a folder, a file each, and dictionary.csv, which tells what each column is.
// Where the context ends, what is not written yet is not.
func CSV(ctx context.Context, folder string, r *Report) error {
	all := tables(r)
	if r.Replications != nil {
		all = append(all, replicationsSheet(r.Replications, false))
	}
	if err := os.MkdirAll(folder, 0o777); err != nil {
		return err
	}
	var failed []error
	for _, s := range append([]*sheet{dictionary(all, ".csv")}, all...) {
		if ctx.Err() != nil {
			return ctx.Err()
		}
		failed = append(failed, WriteFile(ctx, filepath.Join(folder, s.name+".csv"), s.csv))
	}
	return errors.Join(failed...)
}

// csv writes a sheet as RFC 4180 has it, the keys first.
func (s *sheet) csv(w io.Writer) error {
	out := csv.NewWriter(w)
	record := make([]string, len(s.fields))
	for i, f := range s.fields {
		record[i] = f.key
	}
	if err := out.Write(record); err != nil {
		return err
	}
	for row := range s.all() {
		for i, cell := range row {
			record[i] = exact(cell)
			if cellWords, is := cell.(string); is {
				record[i] = cellText(cellWords)
			}
		}
		if err := out.Write(record); err != nil {
			return err
		}
	}
	out.Flush()
	return out.Error()
}

// dictionary tells of each column of each sheet what it holds; files have an ending.
func dictionary(all []*sheet, ending string) *sheet {
	d := &sheet{name: "dictionary", title: "What each column is", fields: []field{{"table", "table", ofWords, "name of the table"}, {"column", "column", ofWords, "its key"},
		{"unit", "unit", ofWords, "of the figures; 1 for counts and shares from 0 to 1"}, {"meaning", "meaning", ofWords, ""}}}
	d.add("all tables", "all texts", "", aboutTexts)
	for _, s := range append(all, d) {
		for _, f := range s.fields {
			meaning := f.meaning
			if meaning == "" {
				meaning = f.heading
			}
			d.add(s.name+ending, f.key, f.kind.unit(), meaning)
		}
	}
	return d
}
