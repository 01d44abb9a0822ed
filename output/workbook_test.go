package output_test

import (
	"archive/zip"
	"encoding/csv"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"coredays/model/result"
	"coredays/output/outputtest"
	"coredays/output/sheet"
	"coredays/output/text/alternatives"
)

// bookOf opens a workbook, and gives its files as text by name.
func bookOf(t *testing.T, write func(io.Writer) error) (*excelize.File, map[string]string) {
	t.Helper()
	data := printed(t, write)
	book, err := excelize.OpenReader(strings.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	packed, err := zip.NewReader(strings.NewReader(data), int64(len(data)))
	if err != nil {
		t.Fatal(err)
	}
	files := map[string]string{}
	for _, f := range packed.File {
		r, err := f.Open()
		if err != nil {
			t.Fatal(err)
		}
		text, err := io.ReadAll(r)
		if err != nil {
			t.Fatal(err)
		}
		files[f.Name] = string(text)
	}
	return book, files
}

// typeUnder is the type of the first cell under a heading.
func typeUnder(t *testing.T, book *excelize.File, name, heading string) excelize.CellType {
	t.Helper()
	rows, err := book.GetRows(name)
	if err != nil || len(rows) == 0 {
		t.Fatal(name, err)
	}
	for i, h := range rows[0] {
		if h == heading {
			at, _ := excelize.CoordinatesToCellName(i+1, 2)
			kind, err := book.GetCellType(name, at)
			if err != nil {
				t.Fatal(err)
			}
			return kind
		}
	}
	t.Fatalf("%s has no column %q among %q", name, heading, rows[0])
	return 0
}

func TestAWorkbookHasNumbersTruthsFiltersAndCharts(t *testing.T) {
	r := outputtest.ReportOn(outputtest.Ordinary())
	r.Orders = outputtest.ThreeOrders()
	book, files := bookOf(t, func(w io.Writer) error { return sheet.Workbook(t.Context(), w, r) })
	for _, c := range []struct {
		sheet, heading string
		want           excelize.CellType
	}{{"alternatives", "of the scenario", excelize.CellTypeBool}, {"sites", "reached", excelize.CellTypeUnset}, {"chances", "what", excelize.CellTypeInlineString}} {
		if got := typeUnder(t, book, c.sheet, c.heading); got != c.want {
			t.Errorf("%s, %s: cells are of type %v, want %v", c.sheet, c.heading, got, c.want)
		}
	}
	filters := 0
	for _, name := range book.GetDefinedName() {
		if strings.Contains(name.Name, "FilterDatabase") {
			filters++
		}
	}
	if filters < 8 || !strings.Contains(files["xl/worksheets/sheet2.xml"]+files["xl/worksheets/sheet4.xml"], "<autoFilter") {
		t.Errorf("%d sheets have filters", filters)
	}
	if chart := files["xl/charts/chart1.xml"]; !strings.Contains(chart, "days_needed!$B$2:$B$") || !strings.Contains(chart, "days_needed!$A$2:$A$") {
		t.Errorf("the curve is drawn of %.2000s", chart)
	}
	series := regexp.MustCompile(`(?s)<ser>.*?</spPr>|<c:ser>.*?</c:spPr>`).FindString(files["xl/charts/chart1.xml"])
	if !strings.Contains(series, "solidFill") || strings.Contains(series, "noFill") {
		t.Errorf("the line of the curve is not seen: %s", series)
	}
	for _, name := range book.GetSheetList() {
		props, err := book.GetSheetProps(name)
		if rows, _ := book.GetCols(name); err != nil || len(rows) <= 40 && (props.FitToPage == nil || !*props.FitToPage) {
			t.Errorf("%s is not printed as wide as the page: %v", name, err)
		}
	}
	if chart := files["xl/charts/chart2.xml"]; !strings.Contains(chart, "classes!$B$2:$B$") {
		t.Errorf("where the days go is drawn of %.2000s", chart)
	}
}

func TestTheSummaryOfAWorkbookHasItsFiguresAsNumbers(t *testing.T) {
	r := outputtest.ReportOn(outputtest.Ordinary())
	book := readBook(t, r)
	total := r.Summary.Needed.Total.P50 / outputtest.Day
	for _, row := range book["summary"] {
		switch row["what"] {
		case "days needed":
			sameFigure(t, "days needed", row["figure"], total)
			if row["unit"] != "d" {
				t.Errorf("days are in %q", row["unit"])
			}
		case "all of rank 1 within the days":
			sameFigure(t, "rank 1", row["figure"], r.Summary.Allotted.ChancePrimary)
		case "answer":
			if row["figure"] != "" {
				t.Errorf("a sentence has the figure %q", row["figure"])
			}
		}
	}
}

// What is whole is shown as whole, as page and printout have it: 500 replications, not 500.0.
func TestWholeNumbersOfTheSummaryAreShownAsWhole(t *testing.T) {
	r := outputtest.ReportOn(outputtest.Ordinary())
	book, _ := bookOf(t, func(w io.Writer) error { return sheet.Workbook(t.Context(), w, r) })
	shown, err := book.GetRows("summary")
	if err != nil {
		t.Fatal(err)
	}
	exact, err := book.GetRows("summary", excelize.Options{RawCellValue: true})
	if err != nil {
		t.Fatal(err)
	}
	whole, broken := 0, 0
	for i := range exact {
		if i == 0 || len(exact[i]) < 3 || exact[i][2] == "" {
			continue
		}
		switch isWhole := !strings.Contains(exact[i][2], "."); {
		case isWhole && shown[i][2] == exact[i][2]:
			whole++
		case !isWhole && strings.Contains(shown[i][2], "."):
			broken++
		default:
			t.Errorf("%s is %s and is shown as %s", exact[i][0], exact[i][2], shown[i][2])
		}
	}
	if whole < 2 || broken < 2 {
		t.Errorf("%d whole figures and %d with a fraction: this tests little", whole, broken)
	}
}

// Orders have arrows in the workbook's warnings as on the page.
func TestWarningsOfAWorkbookNameOrdersAsThePageDoes(t *testing.T) {
	c := outputtest.Comparisons["orders"]()
	c.Warnings = append(c.Warnings, c.Alternatives[0].Name+": a warning")
	book, _ := bookOf(t, func(w io.Writer) error { return sheet.ComparisonWorkbook(t.Context(), w, c, "coredays") })
	rows, err := book.GetRows("summary")
	if err != nil {
		t.Fatal(err)
	}
	want := alternatives.Named(c, 0) + ": a warning"
	if strings.Contains(want, ",") || !slices.ContainsFunc(rows, func(row []string) bool { return slices.Contains(row, want) }) {
		t.Errorf("the summary does not say %q: %q", want, rows)
	}
}

func TestAComparisonIsWrittenAsTablesAndAsAWorkbook(t *testing.T) {
	for name, c := range outputtest.Comparisons {
		c := c()
		folder := t.TempDir()
		if err := sheet.ComparisonCSV(t.Context(), folder, c, "coredays"); err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		book, files := bookOf(t, func(w io.Writer) error { return sheet.ComparisonWorkbook(t.Context(), w, c, "coredays") })
		rows, err := book.GetRows("summary")
		if err != nil || rows[1][1] != alternatives.AnswerLines(c)[0] {
			t.Errorf("%s: the summary begins with %q, %v", name, rows[1], err)
		}
		table := map[result.Question]string{result.WhatToCut: "cuts"}[c.Question]
		if table == "" {
			table = "alternatives"
		}
		if name == "stopped" {
			if len(files["xl/charts/chart1.xml"]) > 0 {
				t.Error("a chart is drawn of nothing")
			}
			continue
		}
		file, err := os.ReadFile(filepath.Join(folder, table+".csv"))
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		records, err := csv.NewReader(strings.NewReader(string(file))).ReadAll()
		if err != nil || len(records) != 1+len(c.Cuts)+len(c.Alternatives)*(1-min(1, len(c.Cuts))) {
			t.Errorf("%s: %d rows, %v", name, len(records), err)
		}
		inBook, err := book.GetRows(table)
		if err != nil || len(inBook) != len(records) {
			t.Errorf("%s: the workbook has %d rows, the file %d, %v", name, len(inBook), len(records), err)
		}
		if !strings.Contains(files["xl/charts/chart1.xml"], table+"!$") {
			t.Errorf("%s: no chart is drawn of %s", name, table)
		}
		for _, f := range files {
			if strings.Contains(f, "NaN") {
				t.Errorf("%s: a cell is not a number", name)
			}
		}
		entries, err := os.ReadDir(folder)
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range entries {
			listed := false
			for _, known := range sheet.Tables {
				listed = listed || known+".csv" == f.Name()
			}
			if !listed {
				t.Errorf("%s: %s is not in the list of tables that are spared", name, f.Name())
			}
		}
	}
}
