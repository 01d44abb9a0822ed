package output_test

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"encoding/xml"
	"fmt"
	"io"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"coredays/model/result"
	"coredays/output"
	"coredays/output/chart"
	jsonout "coredays/output/json"
	"coredays/output/outputtest"
	"coredays/output/page"
	"coredays/output/sheet"
)

func TestReportChartsTablesAndWorkbookOfAnySummaryAreWritten(t *testing.T) {
	none := func() *result.Summary { return &result.Summary{StoppedEarly: true} }
	for name, summary := range map[string]func() *result.Summary{"ordinary": outputtest.Ordinary, "single": outputtest.Single, "never reached": outputtest.NeverReachedAlternate, "long names": outputtest.LongNames, "none": none} {
		r := outputtest.ReportOn(summary())
		html := onPage(t, func(w io.Writer) error { return page.Report(w, r) })
		if bad := regexp.MustCompile(`NaN|Inf|ZgotmplZ|%!`).FindString(html); bad != "" {
			t.Errorf("%s: the page holds %q", name, bad)
		}
		dir := t.TempDir()
		written := []error{sheet.CSV(t.Context(), dir, r), sheet.Workbook(t.Context(), io.Discard, r)}
		if name == "long names" { // pictures take their time
			written = append(written, chart.Files(t.Context(), dir, r))
		}
		for _, err := range written {
			if err != nil {
				t.Errorf("%s: %v", name, err)
			}
		}
	}
}

func TestEveryChartIsXMLWithTitleAndDescriptionAndTheSameEachTime(t *testing.T) {
	charts, again := chart.Of(outputtest.ReportOn(outputtest.LongNames())), chart.Of(outputtest.ReportOn(outputtest.LongNames()))
	if len(charts) < 7 {
		t.Fatalf("%d charts", len(charts))
	}
	for i, c := range charts {
		text, err := c.SVG()
		if err != nil {
			t.Fatal(err)
		}
		var top struct {
			Title string `xml:"title"`
			Desc  string `xml:"desc"`
			Role  string `xml:"role,attr"`
		}
		if err := xml.Unmarshal([]byte(text), &top); err != nil || top.Title == "" || len(top.Desc) < 20 || top.Role != "img" {
			t.Errorf("%s: %v; title %q, description %q, role %q", c.Name, err, top.Title, top.Desc, top.Role)
		}
		if other, _ := again[i].SVG(); other != text {
			t.Errorf("%s is drawn another way the second time", c.Name)
		}
		if len(c.Behind) == 0 || len(c.Behind[0].Fields) == 0 {
			t.Errorf("%s has no table behind it", c.Name)
		}
	}
}

func TestPageWorkbookCSVAndJSONHoldTheSameFigures(t *testing.T) {
	r := outputtest.ReportOn(outputtest.Ordinary())
	csvs, book, html, asJSON := readCSV(t, r), readBook(t, r), readPage(t, r), tree(t, r.Summary)
	compared := 0
	same := func(what string, want any, got ...string) {
		t.Helper()
		for _, g := range got {
			x, err := strconv.ParseFloat(g, 64)
			if err != nil || math.Abs(x-want.(float64)) > 1e-12*math.Abs(x) {
				t.Errorf("%s: JSON has %v, another has %q (of %q)", what, want, g, got)
			}
			compared++
		}
	}
	for i, s := range asJSON["sites"].([]any) {
		name := at(t, s, "name").(string)
		for _, q := range []string{"p10", "p50", "p90"} {
			for key, path := range map[string]string{"days": "days", "waiting": "waiting", "recovered": "recovered_m", "section": "section_coverage", "arrives_d": "arrives_after_days"} {
				if want := at(t, s, path+"."+q); want != nil {
					same(name+" "+key, want, csvs["sites"][i][key+"_"+q], book["sites"][i][key+"_"+q])
				}
			}
		}
		if want := at(t, s, "arrives_after_days.p50"); want != nil {
			same(name+" arrives", want, html["sites"][i]["arrives_d_p50"])
		}
		same(name+" reached", at(t, s, "chance_reached"), csvs["sites"][i]["chance_reached"], book["sites"][i]["chance_reached"])
	}
	n := 0
	for _, s := range asJSON["sites"].([]any) {
		for _, h := range s.(map[string]any)["holes"].([]any) {
			same("done", at(t, h, "chance_done"), csvs["holes"][n]["chance_done"], book["holes"][n]["chance_done"], html["holes"][n]["chance_done"])
			if want := at(t, h, "days.p50"); want != nil {
				same("days of a hole", want, csvs["holes"][n]["days_p50"], book["holes"][n]["days_p50"], html["holes"][n]["days_p50"])
			}
			n++
		}
	}
	total := at(t, asJSON, "days_needed.total").(map[string]any)
	for _, q := range []string{"mean", "sd", "p10", "p50", "p90"} {
		same("days needed "+q, total[q], csvs["results"][0][q], book["results"][0][q])
	}
	same("whole programme", at(t, asJSON, "within_allotted.chance_all"), csvs["chances"][0]["chance"], book["chances"][0]["chance"], html["chances"][0]["chance"])
	for i, d := range asJSON["drivers"].([]any) {
		same("driver", at(t, d, "share"), csvs["drivers"][i]["share"], book["drivers"][i]["share"], html["drivers"][i]["share"])
	}
	for i, c := range asJSON["consumables"].([]any) {
		same("consumable", at(t, c, "p90"), csvs["consumables"][i]["p90"], book["consumables"][i]["p90"], html["consumables"][i]["p90"])
	}
	same("days of replication 1", 44.5, csvs["replications"][1]["whole.needed"], book["replications"][1]["whole.needed"])
	facts := regexp.MustCompile(`<dd><data value="([^"]+)"`).FindAllStringSubmatch(onPage(t, func(w io.Writer) error { return page.Report(w, r) }), -1)
	same("headline", total["p50"], facts[0][1])
	same("headline", at(t, asJSON, "within_allotted.chance_primary"), facts[2][1])
	if compared < 100 {
		t.Errorf("only %d figures were compared", compared)
	}
}

// table is rows by key.
type table []map[string]string

func readCSV(t *testing.T, r *output.Report) map[string]table {
	t.Helper()
	dir, all := t.TempDir(), map[string]table{}
	if err := sheet.CSV(t.Context(), dir, r); err != nil {
		t.Fatal(err)
	}
	files, _ := filepath.Glob(dir + "/*.csv")
	for _, file := range files {
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		records, err := csv.NewReader(bytes.NewReader(text)).ReadAll()
		if err != nil {
			t.Fatalf("%s: %v", file, err)
		}
		for _, record := range records[1:] {
			row := map[string]string{}
			for i, key := range records[0] {
				row[key] = record[i]
			}
			name := strings.TrimSuffix(filepath.Base(file), ".csv")
			all[name] = append(all[name], row)
		}
	}
	return all
}

// readBook reads the workbook; its headings are for people, so that keys come from the dictionary.
func readBook(t *testing.T, r *output.Report) map[string]table {
	t.Helper()
	text := printed(t, func(w io.Writer) error { return sheet.Workbook(t.Context(), w, r) })
	book, err := excelize.OpenReader(strings.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	rows := func(name string) [][]string {
		list, err := book.GetRows(name, excelize.Options{RawCellValue: true})
		if err != nil {
			t.Fatal(err)
		}
		return list[min(1, len(list)):] // the sheet of the charts has none
	}
	keys := map[string][]string{}
	for _, row := range rows("dictionary") {
		keys[row[0]] = append(keys[row[0]], row[1])
	}
	all := map[string]table{}
	for _, name := range book.GetSheetList() {
		for _, row := range rows(name) {
			cells := map[string]string{}
			for i, cell := range row {
				cells[keys[name][i]] = cell
			}
			all[name] = append(all[name], cells)
		}
	}
	return all
}

// readPage reads the values of the data elements of all tables of the page.
func readPage(t *testing.T, r *output.Report) map[string]table {
	t.Helper()
	return tablesOf(onPage(t, func(w io.Writer) error { return page.Report(w, r) }))
}

// tablesOf are the tables of a page.
func tablesOf(html string) map[string]table {
	all := map[string]table{}
	for _, part := range strings.Split(html, "<table data-of=")[1:] {
		part, _, _ = strings.Cut(part, "</table>")
		name, _, _ := strings.Cut(strings.TrimPrefix(part, `"`), `"`)
		head, body, _ := strings.Cut(part, "<tbody>")
		keys := regexp.MustCompile(`data-key="([^"]*)"`).FindAllStringSubmatch(head, -1)
		for _, line := range strings.Split(body, "<tr>")[1:] {
			row := map[string]string{}
			for i, cell := range regexp.MustCompile(`(?s)<t[dh][^>]*>(.*?)</t[dh]>`).FindAllStringSubmatch(line, -1) {
				row[keys[i][1]] = cell[1]
				if value := regexp.MustCompile(`value="([^"]*)"`).FindStringSubmatch(cell[1]); value != nil {
					row[keys[i][1]] = value[1]
				}
			}
			all[name] = append(all[name], row)
		}
	}
	return all
}

func TestTheDictionaryTellsEveryColumnOfEveryFile(t *testing.T) {
	all := readCSV(t, outputtest.ReportOn(outputtest.Ordinary()))
	told := map[string]bool{}
	for _, row := range all["dictionary"] {
		told[row["table"]+" "+row["column"]] = row["meaning"] != ""
	}
	for name, rows := range all {
		for key := range rows[0] {
			if !told[name+".csv "+key] {
				t.Errorf("%s.csv: the dictionary doesn't tell %s", name, key)
			}
		}
	}
}

func TestNothingOnThePageIsFetchedOrRun(t *testing.T) {
	html := onPage(t, func(w io.Writer) error { return page.Report(w, outputtest.ReportOn(outputtest.LongNames())) })
	for _, bad := range []string{"<script", "<link", "<img", "@import", "url(", "src=", "xlink:href", "javascript:"} {
		if strings.Contains(html, bad) {
			t.Errorf("the page holds %s", bad)
		}
	}
	for _, href := range regexp.MustCompile(`href="([^"]*)"`).FindAllStringSubmatch(html, -1) {
		if !strings.HasPrefix(href[1], "#") || !strings.Contains(html, `id="`+href[1][1:]+`"`) {
			t.Errorf("a link goes to %s", href[1])
		}
	}
	if !strings.Contains(html, `content="default-src 'none'; style-src 'unsafe-inline'"`) {
		t.Error("nothing keeps a browser from fetching")
	}
}

func TestNamesFromFilesAreTextOnThePage(t *testing.T) {
	s := outputtest.Ordinary()
	s.Scenario, s.Sites[0].Name, s.Drivers[0].Name = `<script>alert("x")</script>`, `"><b>bold`, "<i>"
	html := onPage(t, func(w io.Writer) error { return page.Report(w, outputtest.ReportOn(s)) })
	for _, bad := range []string{"<script", "<b>", "<i>", "<chert>", "<hand>"} {
		if strings.Contains(html, bad) {
			t.Errorf("a name became %s of the page", bad)
		}
	}
	var v any
	if err := json.Unmarshal([]byte(printed(t, func(w io.Writer) error { return jsonout.Simulation(w, s) })), &v); err != nil {
		t.Error(fmt.Errorf("the JSON of the same names: %w", err))
	}
}

func TestDistancesHaveTheirUnit(t *testing.T) {
	units := map[string]string{}
	for _, row := range readCSV(t, outputtest.ReportOn(outputtest.Ordinary()))["dictionary"] {
		units[row["column"]] = row["unit"]
	}
	if units["distance_nmi"] != "nmi" {
		t.Errorf("the distance is in %q", units["distance_nmi"])
	}
	unit := "no column"
	for _, f := range sheet.Alternatives(outputtest.ThreeOrders()).Fields {
		if f.Key == "track_nmi" {
			unit = f.Kind.Unit()
		}
	}
	if unit != "nmi" {
		t.Errorf("the track is in %q", unit)
	}
}
