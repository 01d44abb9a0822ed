package output

import (
	"encoding/xml"
	"io"
	"strings"
	"testing"

	"coredays/model/logbook"
)

func TestChartsOfAComparisonTellEveryRowInWords(t *testing.T) {
	for name, c := range map[string]*logbook.Comparison{"plans": twoPlans(), "orders": threeOrders(), "dates": manyDates(), "cuts": fourCuts(), "single": comparisons["single"]()} {
		list := append(alternativesCharts(c), cutsCharts(c)...)
		words := ""
		for _, ch := range list {
			svg, err := ch.svg()
			if err != nil {
				t.Fatal(err)
			}
			if err := xml.Unmarshal([]byte(svg), new(struct{})); err != nil || len(ch.behind) == 0 {
				t.Errorf("%s: %v, %d tables behind", name, err, len(ch.behind))
			}
			words += ch.desc
		}
		rows := len(c.Alternatives)
		if c.Question == logbook.WhatToCut {
			rows = len(c.Cuts)
		}
		if n := strings.Count(words, "all "); len(list) == 0 || n < rows {
			t.Errorf("%s: %d charts, %d of %d rows told: %s", name, len(list), n, rows, words)
		}
	}
}

func TestMoreRowsThanASheetTakesHaveFurtherChartsOfTheSameAxes(t *testing.T) {
	list := alternativesCharts(manyDates())
	if len(list) != 2 || list[0].name == list[1].name || !strings.HasSuffix(list[1].title, "rows 41 to 45") {
		t.Fatalf("%d charts, the last %q", len(list), list[len(list)-1].title)
	}
	for i := range list[0].panels {
		one, other := list[0].panels[i].plot.X, list[1].panels[i].plot.X
		if one.Min != other.Min || one.Max != other.Max {
			t.Errorf("panel %d goes from %v to %v, and from %v to %v", i, one.Min, one.Max, other.Min, other.Max)
		}
	}
}

func TestTheOrderOfTheScenarioIsMarkedInChartAndTable(t *testing.T) {
	c := threeOrders() // the first in the list is that of the scenario, and second by merit
	if svg, _ := alternativesCharts(c)[0].svg(); strings.Count(string(svg), "→") != 1 || !strings.Contains(string(svg), "→ 2. TR-02, TR-01<") {
		t.Error("no arrow at the order of the scenario, or more than one")
	}
	for _, row := range tablesOf(pageOf(t, c))["alternatives"][3:] {
		if is := strings.Contains(row["remarks"], "planned"); is != (row["alternative"] == "TR-02, TR-01") {
			t.Errorf("%v", row)
		}
	}
}

func TestAReportShowsTheOrdersAndItsTablesHaveThem(t *testing.T) {
	r := reportOn(ordinary())
	if page := printed(t, func(w io.Writer) error { return HTML(w, r) }); strings.Contains(page, "Order of the sites") {
		t.Error("nobody looked for an order")
	}
	r.Orders = threeOrders()
	page := printed(t, func(w io.Writer) error { return HTML(w, r) })
	for _, part := range []string{`<h2 id="orders">Order of the sites</h2>`, `href="#orders"`, "First: TR-01, TR-02.", "What was searched", "Why not the shortest track", "The order of the scenario is TR-02, TR-01"} {
		if !strings.Contains(page, part) {
			t.Errorf("the page does not hold %q", part)
		}
	}
	_, byName := jsonOf(t, r.Orders)
	csvs, book := readCSV(t, r), readBook(t, r)
	for _, row := range append(csvs["alternatives"], book["alternatives"]...) {
		sameFigure(t, "rank 1", row["chance_primary"], at(t, byName[row["alternative"]], "chance_primary"))
		sameFigure(t, "days", row["more_mean"], at(t, byName[row["alternative"]], "days_behind_best.mean"))
	}
	if len(csvs["alternatives"]) != 3 || len(book["alternatives"]) != 3 {
		t.Errorf("%d and %d alternatives", len(csvs["alternatives"]), len(book["alternatives"]))
	}
}

func TestAReportTellsOfASearchThatWasStopped(t *testing.T) {
	r := reportOn(ordinary())
	r.Orders = comparisons["stopped"]()
	page := printed(t, func(w io.Writer) error { return HTML(w, r) })
	if _, part, _ := strings.Cut(page, `id="orders"`); !strings.Contains(part[:400], "Stopped before any alternative was sailed") {
		t.Errorf("%.400s", part)
	}
	readCSV(t, r)
	readBook(t, r)
}
