package output_test

import (
	"encoding/json"
	"fmt"
	"html"
	"io"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"coredays/model/result"
	"coredays/output/chart"
	jsonout "coredays/output/json"
	"coredays/output/outputtest"
	"coredays/output/page"
	"coredays/output/text/alternatives"
	"coredays/output/words"
)

// pageOf is the page on a comparison.
func pageOf(t *testing.T, c *result.Comparison) string {
	t.Helper()
	return onPage(t, func(w io.Writer) error { return page.Comparison(w, c, "coredays test", "") })
}

func TestEveryComparisonHasAPageThatFetchesNothing(t *testing.T) {
	all := map[string]func() *result.Comparison{"many dates": outputtest.ManyDates, "one order": func() *result.Comparison {
		c := outputtest.ThreeOrders()
		c.Alternatives, c.Best, c.Reference, c.Planned = c.Alternatives[:1], 0, 0, 0
		return c
	}}
	for name, c := range outputtest.Comparisons {
		all[name] = c
	}
	for name, c := range all {
		page := pageOf(t, c())
		for _, bad := range []string{"NaN", "Inf", "ZgotmplZ", "%!", "<script", "<link", "<img", "url(", "src=", "<p></p>", "<ul></ul>"} {
			if strings.Contains(page, bad) {
				t.Errorf("%s: the page holds %s", name, bad)
			}
		}
		if !strings.Contains(page, `content="default-src 'none'; style-src 'unsafe-inline'"`) || !strings.HasPrefix(page, "<!DOCTYPE html>") {
			t.Errorf("%s: nothing keeps a browser from fetching: %.200s", name, page)
		}
		for _, link := range regexp.MustCompile(`href="#([^"]*)"`).FindAllStringSubmatch(page, -1) {
			if strings.Count(page, ` id="`+link[1]+`"`) != 1 {
				t.Errorf("%s: a link goes to %s", name, link[1])
			}
		}
	}
}

func TestThePageSaysWhatTheTextSays(t *testing.T) {
	for name, c := range map[string]*result.Comparison{"plans": outputtest.TwoPlans(), "orders": outputtest.ThreeOrders()} {
		page := html.UnescapeString(pageOf(t, c))
		lines := append(append(alternatives.FirstLines(c), alternatives.StandingLines(c)...), alternatives.MadeOf(c)...)
		if c.Search != nil {
			lines = append(append(lines, alternatives.SearchLines(c)...), alternatives.WhyLines(&c.Alternatives[c.Best], &c.Alternatives[c.Reference])...)
		}
		for _, line := range append(lines, alternatives.Call(c)) {
			if !strings.Contains(page, line) {
				t.Errorf("%s: the page does not say %q", name, line)
			}
		}
	}
}

func TestAPageOfAStoppedComparisonHasNoFigures(t *testing.T) {
	page := pageOf(t, outputtest.Comparisons["stopped"]())
	if !strings.Contains(page, "so there is no answer") || strings.Contains(page, "<svg") || strings.Contains(page, "<dd>") {
		t.Errorf("%.900s", page)
	}
}

// jsonOf is the JSON of a comparison, its alternatives by name.
func jsonOf(t *testing.T, c *result.Comparison) (whole map[string]any, byName map[string]any) {
	t.Helper()
	text := printed(t, func(w io.Writer) error { return jsonout.Comparison(w, c) })
	if err := json.Unmarshal([]byte(text), &whole); err != nil {
		t.Fatal(err)
	}
	byName = map[string]any{}
	for _, a := range whole["alternatives"].([]any) {
		byName[a.(map[string]any)["name"].(string)] = a
	}
	return whole, byName
}

// sameFigure holds a figure of a page against one of the JSON, where null stands for none.
func sameFigure(t *testing.T, what, shown string, want any) {
	t.Helper()
	if want == nil {
		if shown != words.Absent {
			t.Errorf("%s: %q on the page, nothing in the JSON", what, shown)
		}
		return
	}
	got, err := strconv.ParseFloat(shown, 64)
	if err != nil || math.Abs(got-want.(float64)) > 1e-12*math.Abs(got) {
		t.Errorf("%s: %q on the page, %v in the JSON", what, shown, want)
	}
}

func TestPageAndJSONOfAComparisonHoldTheSameFigures(t *testing.T) {
	for name, c := range map[string]*result.Comparison{"plans": outputtest.TwoPlans(), "orders": outputtest.ThreeOrders(), "dates": outputtest.ManyDates()} {
		whole, byName := jsonOf(t, c)
		rows := tablesOf(pageOf(t, c))["alternatives"]
		if len(rows) != 2*len(c.Alternatives) { // behind the chart and for itself
			t.Fatalf("%s: %d rows", name, len(rows))
		}
		for _, row := range rows {
			for key, path := range map[string]string{"days_p10": "days_needed.p10", "days_p50": "days_needed.p50", "days_p90": "days_needed.p90", "chance_primary": "chance_primary",
				"chance_all": "chance_all", "track_nmi": "track_nmi", "waiting_mean": "waiting.mean", "recovered_mean": "recovered_m.mean"} {
				if shown, there := row[key]; there {
					sameFigure(t, name+" "+key, shown, at(t, byName[row["alternative"]], path))
				}
			}
			if c.Question == result.WhichOrder {
				more, known := at(t, byName[row["alternative"]], "more_than_order_of_scenario").(map[string]any)
				for key, path := range map[string]string{"chance_primary_more": "chance_primary", "days_more": "days"} {
					if !known {
						sameFigure(t, name+" "+key, row[key+"_mean"], nil)
						continue
					}
					ci := at(t, more, path+".ci").([]any)
					sameFigure(t, name+" "+key, row[key+"_mean"], at(t, more, path+".mean"))
					sameFigure(t, name+" "+key+" low", row[key+"_low"], ci[0])
					sameFigure(t, name+" "+key+" high", row[key+"_high"], ci[1])
				}
				continue
			}
			ci := at(t, byName[row["alternative"]], "days_behind_best.ci").([]any)
			if row["alternative"] == whole["best"] {
				ci = []any{nil, nil}
			}
			sameFigure(t, name+" low", row["days_more_low"], ci[0])
			sameFigure(t, name+" high", row["days_more_high"], ci[1])
			if standing, there := row["standing"]; there && standing != at(t, byName[row["alternative"]], "standing") {
				t.Errorf("%s: %s stands %q on the page", name, row["alternative"], standing)
			}
		}
		best := byName[whole["best"].(string)]
		facts := regexp.MustCompile(`<dd><data value="([^"]+)"`).FindAllStringSubmatch(pageOf(t, c), -1)
		sameFigure(t, name+" headline", facts[0][1], at(t, best, "days_needed.p50"))
		sameFigure(t, name+" headline", facts[2][1], at(t, best, "chance_primary"))
	}
}

func TestPageAndJSONHoldTheSameDifferences(t *testing.T) {
	c := outputtest.TwoPlans()
	whole, _ := jsonOf(t, c)
	want := whole["differences"].([]any)[0].(map[string]any) // a less b; on the page the first is taken away
	row := tablesOf(pageOf(t, c))["differences"][0]
	if row["one"] != want["b"] || row["other"] != want["a"] {
		t.Fatalf("%v", row)
	}
	ci := want["ci"].([]any)
	sameFigure(t, "days", row["days_mean"], -want["mean_days"].(float64))
	sameFigure(t, "from", row["days_low"], -ci[1].(float64))
	sameFigure(t, "to", row["days_high"], -ci[0].(float64))
	sameFigure(t, "core", row["recovered_mean"], -at(t, want, "recovered_m.mean").(float64))
}

func TestPageAndJSONHoldTheSameCutsAndDays(t *testing.T) {
	c := outputtest.FourCuts()
	whole, _ := jsonOf(t, c)
	tables := tablesOf(pageOf(t, c))
	cuts, days := whole["cuts"].([]any), whole["sea_days"].([]any)
	for _, cut := range cuts { // in the order of the plan; the page has them as they are ranked
		name := strings.TrimSpace(fmt.Sprint(at(t, cut, "site"), " ", at(t, cut, "what")))
		n := slices.IndexFunc(tables["cuts"][len(cuts):], func(row map[string]string) bool {
			return strings.HasPrefix(row["without"], name+" (") || row["without"] == name
		})
		if n < 0 {
			t.Errorf("%q is not on the page", name)
			continue
		}
		row := tables["cuts"][len(cuts)+n] // the first are behind the chart
		for key, path := range map[string]string{"saves_mean": "days_saved.mean", "saves_p90": "days_saved.p90", "core_less_mean": "recovered_m_less.mean",
			"chance_primary": "chance_primary_of_rest", "chance_all": "chance_all_of_rest"} {
			sameFigure(t, key, row[key], at(t, cut, path))
		}
	}
	more := append(days[:1:1], nil)
	for i, d := range append(more, days[1:]...) { // as planned is between
		if d == nil {
			continue
		}
		row := tables["sea_days"][i]
		sameFigure(t, "rank 1", row["chance_primary"], at(t, d, "chance_primary"))
		sameFigure(t, "more", row["chance_primary_more_mean"], at(t, d, "chance_primary_more.mean"))
		sameFigure(t, "all", row["chance_all"], at(t, d, "chance_all"))
		sameFigure(t, "core", row["recovered_mean"], at(t, d, "recovered_m"))
	}
}

func TestNamesOfAlternativesAreTextOnThePage(t *testing.T) {
	c := outputtest.ThreeOrders()
	c.Title, c.Alternatives[0].Name, c.Alternatives[1].Name, c.Alternatives[2].Name = "<script>", `"><b>bold`, "<i>", strings.Repeat("深海の峰", 30)
	if bad := regexp.MustCompile(`<script|<b>|<i>`).FindString(pageOf(t, c)); bad != "" {
		t.Errorf("a name became %s of the page", bad)
	}
}

func TestThePageOfAPlanLeadsWithAnOrderThatIsBetter(t *testing.T) {
	const lead = "Another order of the sites does better: TR-01 → TR-02. With it everything of rank 1 at the primary sites gets done in 90 of 100 expeditions."
	c := outputtest.ThreeOrders()
	c.Alternatives[0].Alike = false
	for name, orders := range map[string]*result.Comparison{lead: c, "": outputtest.ThreeOrders()} { // alike: nothing is said to be better
		r := outputtest.ReportOn(outputtest.Ordinary())
		r.Orders = orders
		page := onPage(t, func(w io.Writer) error { return page.Report(w, r) })
		if got := strings.Contains(page, "does better"); got != (name != "") || !strings.Contains(page, name) {
			t.Errorf("the page says of a better order: %t, want %q", got, name)
		}
	}
}

func TestTheOrderOfTheScenarioIsMarkedInChartAndTable(t *testing.T) {
	c := outputtest.ThreeOrders() // the first in the list is that of the scenario, above those by merit
	if svg, _ := chart.Alternatives(c)[0].SVG(); strings.Count(string(svg), "→") != 1 || !strings.Contains(string(svg), "→ 1. TR-02, TR-01<") {
		t.Error("no arrow at the order of the scenario, or more than one")
	}
	for _, row := range tablesOf(pageOf(t, c))["alternatives"][3:] {
		if is := strings.Contains(row["remarks"], "planned"); is != (row["alternative"] == "TR-02, TR-01") {
			t.Errorf("%v", row)
		}
	}
}

func TestAReportShowsTheOrdersAndItsTablesHaveThem(t *testing.T) {
	r := outputtest.ReportOn(outputtest.Ordinary())
	if page := onPage(t, func(w io.Writer) error { return page.Report(w, r) }); strings.Contains(page, "Order of the sites") {
		t.Error("nobody looked for an order")
	}
	r.Orders = outputtest.ThreeOrders()
	page := onPage(t, func(w io.Writer) error { return page.Report(w, r) })
	for _, part := range []string{`<h2 id="orders">Order of the sites</h2>`, `href="#orders"`, "Best order: TR-01 → TR-02.", "What was searched", "Why not the shortest track", "The order of the scenario is TR-02 → TR-01"} {
		if !strings.Contains(page, part) {
			t.Errorf("the page does not hold %q", part)
		}
	}
	_, byName := jsonOf(t, r.Orders)
	csvs, book := readCSV(t, r), readBook(t, r)
	for _, row := range append(csvs["alternatives"], book["alternatives"]...) {
		sameFigure(t, "rank 1", row["chance_primary"], at(t, byName[row["alternative"]], "chance_primary"))
		more, _ := at(t, byName[row["alternative"]], "more_than_order_of_scenario").(map[string]any)
		if more != nil {
			sameFigure(t, "days", row["days_more_mean"], at(t, more, "days.mean"))
		}
	}
	if len(csvs["alternatives"]) != 3 || len(book["alternatives"]) != 3 {
		t.Errorf("%d and %d alternatives", len(csvs["alternatives"]), len(book["alternatives"]))
	}
}

func TestAReportTellsOfASearchThatWasStopped(t *testing.T) {
	r := outputtest.ReportOn(outputtest.Ordinary())
	r.Orders = outputtest.Comparisons["stopped"]()
	page := onPage(t, func(w io.Writer) error { return page.Report(w, r) })
	if _, part, _ := strings.Cut(page, `id="orders"`); !strings.Contains(part[:400], "Stopped before any alternative was sailed") {
		t.Errorf("%.400s", part)
	}
	readCSV(t, r)
	readBook(t, r)
}
