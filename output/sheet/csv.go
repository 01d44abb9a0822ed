package sheet

import (
	"context"
	"encoding/csv"
	"errors"
	"io"
	"os"
	"path/filepath"

	"coredays/output"
	"coredays/output/words"
)

// Tables are the names of all tables that there may be.
var Tables = []string{"alternatives", "basis", "chances", "check", "classes", "compared", "consumables", "cuts", "days_needed", "depth_days", "dictionary", "differences", "drivers",
	"holes", "items", "layers", "logged", "passages", "replications", "results", "run", "sea", "sea_days", "section", "sites", "visits"}

// CSV writes all tables into a folder, a file each, and dictionary.csv, which says what each column is.
// Where the context ends, what is not written yet is not.
func CSV(ctx context.Context, folder string, r *output.Report) error {
	all := OfReport(r)
	if r.Replications != nil {
		all = append(all, replicationsSheet(r.Replications, false))
	}
	return writeCSV(ctx, folder, all)
}

// writeCSV writes tables and a dictionary of their columns into a folder.
func writeCSV(ctx context.Context, folder string, all []*Table) error {
	if err := os.MkdirAll(folder, 0o777); err != nil {
		return err
	}
	var failed []error
	for _, s := range append([]*Table{dictionary(all, ".csv")}, all...) {
		if ctx.Err() != nil {
			return ctx.Err()
		}
		failed = append(failed, output.WriteFile(ctx, filepath.Join(folder, s.Name+".csv"), s.csv))
	}
	return errors.Join(failed...)
}

// csv writes a sheet as RFC 4180 has it, the keys first.
func (s *Table) csv(w io.Writer) error {
	out := csv.NewWriter(w)
	record := make([]string, len(s.Fields))
	for i, f := range s.Fields {
		record[i] = f.Key
	}
	if err := out.Write(record); err != nil {
		return err
	}
	for row := range s.all() {
		for i, cell := range row {
			record[i] = words.Exact(cell)
			if cellWords, is := cell.(string); is {
				record[i] = words.CellText(cellWords)
			}
		}
		if err := out.Write(record); err != nil {
			return err
		}
	}
	out.Flush()
	return out.Error()
}

// dictionary gives each column of each sheet what it holds; files have an ending.
func dictionary(all []*Table, ending string) *Table {
	d := &Table{Name: "dictionary", Title: "What each column is", Fields: []Field{{"table", "table", OfWords, "name of the table"}, {"column", "column", OfWords, "its key"},
		{"unit", "unit", OfWords, "of the figures; 1 for counts and shares from 0 to 1"}, {"meaning", "meaning", OfWords, ""}}}
	d.Add("all tables", "all texts", "", words.AboutTexts)
	for _, s := range append(all, d) {
		for _, f := range s.Fields {
			meaning := f.Meaning
			if meaning == "" {
				meaning = f.Heading
			}
			d.Add(s.Name+ending, f.Key, f.Kind.Unit(), meaning)
		}
	}
	return d
}
