package output_test

import (
	"html"
	"io"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"coredays/output/outputtest"
	"coredays/output/page"
	"coredays/output/text"
	"coredays/output/words"
)

// shownOnPage are the figures of a page as people read them, by table, row and column; in reading order where a table
// stands twice.
func shownOnPage(t *testing.T, markup string) map[string][]map[string]string {
	t.Helper()
	tables := map[string][]map[string]string{}
	whole := regexp.MustCompile(`(?s)<table data-of="([^"]+)">(.*?)</table>`)
	key, row, cell := regexp.MustCompile(`data-key="([^"]+)"`), regexp.MustCompile(`(?s)<tr>(.*?)</tr>`), regexp.MustCompile(`(?s)<t[hd][^>]*>(.*?)</t[hd]>`)
	tag := regexp.MustCompile(`<[^>]*>`)
	for _, table := range whole.FindAllStringSubmatch(markup, -1) {
		var keys []string
		for _, k := range key.FindAllStringSubmatch(table[2], -1) {
			keys = append(keys, k[1])
		}
		for _, r := range row.FindAllStringSubmatch(table[2], -1)[1:] { // the first is the headings
			cells := map[string]string{}
			for i, c := range cell.FindAllStringSubmatch(r[1], -1) {
				cells[keys[i]] = html.UnescapeString(tag.ReplaceAllString(c[1], ""))
			}
			tables[table[1]] = append(tables[table[1]], cells)
		}
	}
	return tables
}

// The same figure has the same value in JSON, CSV and workbook, and is rounded alike in the text, on the page and in the
// sentences of the workbook: walked figure by figure.
func TestAFigureReadsAlikeWhereverItStands(t *testing.T) {
	r := outputtest.ReportOn(outputtest.Ordinary())
	csvs, book, asJSON := readCSV(t, r), readBook(t, r), tree(t, r.Summary)
	markup := onPage(t, func(w io.Writer) error { return page.Report(w, r) })
	shown := shownOnPage(t, markup)
	printout := printed(t, func(w io.Writer) error { return text.Simulation(w, r.Summary, text.Detail{All: true}) })
	walked := 0
	rounded := func(what, onPage string, inText func(string) string) {
		t.Helper()
		walked++
		if want := inText(onPage); !strings.Contains(printout, want) {
			t.Errorf("%s is %q on the page, and the text has no %q", what, onPage, want)
		}
	}
	for i, s := range asJSON["sites"].([]any) {
		name, row := at(t, s, "name").(string), shown["sites-in-short"][i]
		if row["days_p10"] != words.Absent {
			rounded(name+" days", row["days_p50"], func(p50 string) string { return p50 + " (" + row["days_p10"] + "–" + row["days_p90"] + ")" })
		}
		for key, path := range map[string]string{"days_p50": "days.p50", "waiting_p50": "waiting.p50", "recovered_p50": "recovered_m.p50", "chance_reached": "chance_reached"} {
			want, exists := at(t, s, path).(float64)
			for where, table := range map[string][]map[string]string{"CSV": csvs["sites"], "workbook": book["sites"]} {
				if got, err := strconv.ParseFloat(table[i][key], 64); exists && (err != nil || math.Abs(got-want) > 1e-12*math.Abs(want)) { // a workbook keeps 15 digits
					t.Errorf("%s %s: %q in the %s, %v in the JSON", name, key, table[i][key], where, want)
				}
			}
			walked++
		}
		line := regexp.MustCompile(`(?m)^  ` + name + `\b.*$`).FindString(printout) // the first is of the table of sites
		for _, key := range []string{"ranks", "recovered_p50", "recovered_percent_p50", "chance_complete"} {
			if !strings.Contains(line, " "+row[key]) && row[key] != words.Absent {
				t.Errorf("%s %s is %q on the page, not in %q", name, key, row[key], line)
			}
			walked++
		}
	}
	for _, tool := range shown["tools"] {
		rounded(tool["tool"], tool["recovered_percent_p50"], func(p50 string) string {
			return p50 + " (" + tool["recovered_percent_p10"] + "–" + tool["recovered_percent_p90"] + ")"
		})
	}
	for _, f := range text.Facts(r.Summary) {
		if !strings.Contains(markup, ">"+html.EscapeString(f.Value)+"</data>") {
			t.Errorf("%s: %q is not on the page", f.Label, f.Value)
		}
		n := 0
		for _, row := range book["summary"] {
			if row["what"] == f.Label && strings.HasPrefix(row["value"], f.Value) {
				n++
			}
		}
		if n != 1 {
			t.Errorf("%s: %q is not in the workbook", f.Label, f.Value)
		}
		walked++
	}
	days := words.InDays(r.Summary.Needed.Total)
	for _, where := range []string{printout, markup} {
		for _, figure := range []float64{days.P10, days.P50, days.P90} {
			if want := words.Fixed(figure, words.DayPlaces); !strings.Contains(where, want) {
				t.Errorf("days needed, %s, are not told so", want)
			}
		}
	}
	if walked < 30 {
		t.Errorf("only %d figures were walked", walked)
	}
}

// pieces are the figures of a line of a printout, ranges and brackets taken apart.
func pieces(line string) []string {
	return strings.FieldsFunc(line, func(r rune) bool { return strings.ContainsRune(" ()–", r) })
}

// Every table that page and printout both have is rounded alike in both, row by row.
func TestTablesOfPageAndPrintoutAreRoundedAlike(t *testing.T) {
	r := outputtest.ReportOn(outputtest.Ordinary())
	shown := shownOnPage(t, onPage(t, func(w io.Writer) error { return page.Report(w, r) }))
	printout := printed(t, func(w io.Writer) error { return text.Simulation(w, r.Summary, text.Detail{All: true}) })
	for _, c := range []struct {
		table, heading string
		row            *regexp.Regexp // of the printout
		columns        []string
	}{
		{"sites-in-short", "Sites in the order", regexp.MustCompile(`(?m)^  TR-\d\d .*$`), []string{"days_p10", "days_p50", "days_p90", "waiting_p50", "waiting_p90", "recovered_p50", "recovered_percent_p50", "chance_reached", "chance_complete"}},
		{"tools", "Recovery by coring tool", regexp.MustCompile(`(?m)^  (?:[A-Z]+|all tools)  .*\d.*$`), []string{"cores_p50", "cored_p50", "recovered_p50", "recovered_percent_p10", "recovered_percent_p50", "recovered_percent_p90"}},
		{"holes", "Holes and tasks of each site", regexp.MustCompile(`(?m)^    \S.*\d.*$`), []string{"days_p10", "days_p50", "days_p90", "depth_p50", "refusal_p50", "chance_done"}},
		{"classes", "Where the days go", regexp.MustCompile(`(?m)^  [a-z -]+  +[<\d].*$`), []string{"mean_d", "share"}},
		{"consumables", "What to have on board", regexp.MustCompile(`(?m)^  .*\d  +\d+$`), []string{"p50", "p90"}},
	} {
		_, section, _ := strings.Cut(printout, "\n"+c.heading)
		section, _, _ = strings.Cut(section, "\n\n\n")
		lines := c.row.FindAllString(section, -1)
		if len(shown[c.table]) == 0 || len(lines) < len(shown[c.table]) {
			t.Errorf("%s: %d rows on the page, %d lines printed", c.table, len(shown[c.table]), len(lines))
			continue
		}
		for i, row := range shown[c.table] {
			for _, column := range c.columns {
				figure, exists := row[column]
				if !exists {
					t.Errorf("%s has no column %s on the page", c.table, column)
				}
				if figure != words.Absent && !slices.Contains(pieces(lines[i]), figure) {
					t.Errorf("%s %s is %q on the page, not in %q", c.table, column, figure, lines[i])
				}
			}
		}
	}
	for label, row := range map[string]string{"days in hand at the end": `days in hand at the end \(d\)`, "core recovered within the days": `core recovered \(m\)`} {
		line := regexp.MustCompile(`(?m)^  ` + row + `.*$`).FindString(printout)
		for _, f := range text.Facts(r.Summary) {
			note, _, _ := strings.Cut(strings.TrimPrefix(f.Note, "P50; P10–P90 "), ";")
			for _, figure := range append(pieces(note), f.Value) {
				figure, _, _ = strings.Cut(figure, " ")
				if f.Label == label && figure != "to" && figure != "m" && figure != "d" && !slices.Contains(pieces(line), figure) {
					t.Errorf("%s has %q on the page, not in %q", label, figure, line)
				}
			}
		}
	}
}

// All tables have the same figures in the CSV files and in the workbook, which keeps 15 digits.
func TestFilesAndWorkbookHaveTheSameFigures(t *testing.T) {
	r := outputtest.ReportOn(outputtest.Ordinary())
	csvs, book := readCSV(t, r), readBook(t, r)
	compared := 0
	for name, rows := range book {
		for i, row := range rows {
			for key, cell := range row {
				got, err := strconv.ParseFloat(cell, 64)
				if err != nil || len(csvs[name]) != len(rows) {
					continue
				}
				if want, err := strconv.ParseFloat(csvs[name][i][key], 64); err == nil {
					compared++
					if math.Abs(got-want) > 1e-12*math.Abs(want) {
						t.Errorf("%s, row %d, %s: %v in the workbook, %v in the file", name, i+1, key, got, want)
					}
				}
			}
		}
	}
	if compared < 500 {
		t.Errorf("only %d figures were compared", compared)
	}
}
