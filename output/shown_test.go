package output_test

import (
	"archive/zip"
	"bytes"
	"encoding/csv"
	"io"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"
	"unicode"

	"github.com/xuri/excelize/v2"

	"coredays/model/activity"
	"coredays/model/result"
	"coredays/output"
	"coredays/output/chart"
	"coredays/output/outputtest"
	"coredays/output/page"
	"coredays/output/sheet"
	"coredays/output/text"
)

// hostile is a name that a terminal, a browser or a spreadsheet would obey, in three places; formula begins it.
func hostile(formula string) string {
	return formula + "HYPERLINK(\"http://x\")\x1b]0;owned\x07\x00\x9b\u009b\r\n<b>&"
}

// hostileReport is a report whose names from files are hostile.
func hostileReport(formula string) *output.Report {
	r := outputtest.ReportOn(outputtest.Ordinary())
	name := hostile(formula)
	r.Summary.Scenario, r.Summary.Ship, r.Program = name, name, name
	r.Summary.Warnings = append(r.Summary.Warnings, name)
	for i := range r.Summary.Sites {
		r.Summary.Sites[i].Name = name
		for j := range r.Summary.Sites[i].Holes {
			r.Summary.Sites[i].Holes[j].Name = name
		}
	}
	for i := range r.Found {
		r.Found[i].Site, r.Found[i].What = name, name
	}
	for i := range r.Basis {
		r.Basis[i].Name, r.Basis[i].Source = name, name
	}
	return r
}

// obeyed are the control characters of a text that something would obey.
func obeyed(text string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsControl(r) && r != '\n' && r != '\t' {
			return r
		}
		return -1
	}, text)
}

func TestNoControlCharacterComesOutWithANameThatHasOne(t *testing.T) {
	r := hostileReport("=")
	for name, write := range map[string]func(io.Writer) error{
		"page": func(w io.Writer) error { return page.Report(w, r) }, "text": func(w io.Writer) error { return text.Simulation(w, r.Summary, text.Detail{All: true}) },
		"check": func(w io.Writer) error { return text.Check(w, r.Plan, r.Found, text.Detail{All: true}) }, "basis": func(w io.Writer) error { return text.Basis(w, r.Plan, r.Basis, r.Summary) },
	} {
		text := printed(t, write)
		if bad := obeyed(text); bad != "" {
			t.Errorf("%s: %q come out", name, bad)
		}
		if !strings.Contains(text, "HYPERLINK") {
			t.Errorf("%s does not show the name", name)
		}
	}
	folder := t.TempDir()
	if err := chart.Files(t.Context(), folder, r); err != nil {
		t.Fatal(err)
	}
	drawings, err := filepath.Glob(filepath.Join(folder, "*.svg"))
	if err != nil || len(drawings) == 0 {
		t.Fatal("no drawings", err)
	}
	for _, file := range drawings {
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		if bad := obeyed(string(text)); bad != "" {
			t.Errorf("%s: %q come out", filepath.Base(file), bad)
		}
	}
}

// runs reports whether a spreadsheet takes a cell for a formula: it begins with one of the signs and is no number.
func runs(cell string) bool {
	_, err := strconv.ParseFloat(cell, 64)
	return cell != "" && strings.ContainsAny(cell[:1], "=+-@\t\r") && err != nil
}

func TestNoCellOfATableIsRun(t *testing.T) {
	for _, formula := range []string{"=", "+", "-", "@", "\t=", "\r=", " ="} {
		r, cells, guarded := hostileReport(formula), 0, 0
		folder := t.TempDir()
		if err := sheet.CSV(t.Context(), folder, r); err != nil {
			t.Fatal(err)
		}
		files, _ := filepath.Glob(filepath.Join(folder, "*.csv"))
		for _, file := range files {
			data, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			rows, err := csv.NewReader(bytes.NewReader(data)).ReadAll()
			if err != nil {
				t.Fatal(err)
			}
			for _, row := range rows {
				for _, cell := range row {
					cells++
					if strings.HasPrefix(cell, "'") {
						guarded++
					}
					if runs(strings.TrimSpace(cell)) || obeyed(cell) != "" {
						t.Errorf("%s: a spreadsheet runs %q", filepath.Base(file), cell)
					}
				}
			}
		}
		if cells == 0 || guarded < 10 {
			t.Errorf("%q: of %d cells %d are guarded", formula, cells, guarded)
		}
	}
}

func TestADiaryKeepsItsNamesGuarded(t *testing.T) {
	d := &result.Diary{Entries: []result.Entry{{From: time.Date(2031, 5, 1, 0, 0, 0, 0, time.UTC), To: time.Date(2031, 5, 1, 1, 0, 0, 0, time.UTC),
		Kind: activity.Kind(0), Place: result.Place{Site: "=1+1", Hole: "-A"}, Note: "+\x1b[2J"}}}
	got := printed(t, func(w io.Writer) error { return sheet.Diary(w, d) })
	if !strings.Contains(got, ",'=1+1,'-A,") || !strings.Contains(got, ",'+\ufffd[2J\n") {
		t.Errorf("written as %q", got)
	}
}

func TestAWorkbookNamesTheProgramAndRunsNothing(t *testing.T) {
	text := printed(t, func(w io.Writer) error { return sheet.Workbook(t.Context(), w, hostileReport("=")) })
	book, err := excelize.OpenReader(strings.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	guarded := 0
	for _, name := range book.GetSheetList() {
		rows, err := book.GetRows(name, excelize.Options{RawCellValue: true})
		if err != nil {
			t.Fatal(err)
		}
		for _, row := range rows {
			for _, cell := range row {
				if strings.HasPrefix(cell, "'=") {
					guarded++
				}
				if runs(cell) || obeyed(cell) != "" {
					t.Errorf("%s: a spreadsheet runs %q", name, cell)
				}
			}
		}
	}
	if guarded < 10 {
		t.Errorf("only %d cells are guarded", guarded)
	}
	files, err := zip.NewReader(strings.NewReader(text), int64(len(text)))
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range files.File {
		r, err := f.Open()
		if err != nil {
			t.Fatal(err)
		}
		data, err := io.ReadAll(r)
		if err != nil {
			t.Fatal(err)
		}
		if lower := strings.ToLower(string(data)); strings.HasPrefix(f.Name, "docProps/") && (strings.Contains(lower, "xuri") || strings.Contains(lower, "excelize")) {
			t.Errorf("%s names another author: %s", f.Name, data)
		}
	}
	if props, err := book.GetDocProps(); err != nil || props.Creator != "coredays" {
		t.Errorf("the author is %+v, %v", props, err)
	}
}
