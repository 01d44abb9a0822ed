package output_test

import (
	"io"
	"math"
	"strings"
	"testing"
	"time"

	"coredays/model/result"
	"coredays/model/unit"
	"coredays/output"
	"coredays/output/outputtest"
	"coredays/output/page"
	"coredays/output/sheet"
	"coredays/output/text"
)

// loggedOrdinary is the ordinary report with a log of its first site: hole A twice as slow as simulated, and a
// hole that nobody planned.
func loggedOrdinary() *output.Report {
	r := outputtest.ReportOn(outputtest.Ordinary())
	site := &r.Summary.Sites[0]
	arrived := time.Date(2027, 2, 1, 6, 0, 0, 0, time.UTC)
	r.Log = &result.Log{File: "log.csv"}
	add := func(days float64, hole string, depth unit.Depth) {
		r.Log.Lines = append(r.Log.Lines, result.LogLine{From: arrived.Add(time.Duration(days * float64(24*time.Hour))), Site: site.Name, Hole: hole, Depth: depth})
	}
	add(0, "A", unit.Depth(math.NaN()))
	for _, m := range site.Holes[0].Marks {
		add(2*m.P50/outputtest.Day, "A", m.Depth)
	}
	add(6, "Z-unplanned", 0)
	add(7, "Z-unplanned", 42)
	return r
}

func TestAHoleTwiceAsSlowIsTwiceAsLateInTheTableBesideItsChart(t *testing.T) {
	r := loggedOrdinary()
	sheet := sheet.Logged(r.Summary, r.Log)
	marks := r.Summary.Sites[0].Holes[0].Marks
	if len(sheet.Rows) != len(marks) {
		t.Fatalf("%d rows, want %d", len(sheet.Rows), len(marks))
	}
	for i, row := range sheet.Rows {
		if logged, p50 := row[3].(float64), row[6].(float64); math.Abs(logged/p50-2) > 1e-6 || p50 != marks[i].P50/outputtest.Day {
			t.Errorf("at %v m: logged after %g d, simulated after %g d", row[2], logged, p50)
		}
	}
}

func TestALogIsDrawnAndToldOnThePageAndInTheTables(t *testing.T) {
	r := loggedOrdinary()
	html := onPage(t, func(w io.Writer) error { return page.Report(w, r) })
	for _, want := range []string{"As logged, hole A: ", "As logged, hole Z-unplanned: 42 m below the sea floor 7.0 days after arriving.", "with a cross at its end",
		"Logged until 8 Feb 2027 06:00 UTC: hole Z-unplanned is 42 m deep 7.0 days after arriving; no simulated hole of that name came so far.", "log.csv"} {
		if !strings.Contains(html, want) {
			t.Errorf("the page does not hold %q", want)
		}
	}
	if rows := readCSV(t, r)["logged"]; len(rows) != 11 || rows[0]["days_logged"] == "" {
		t.Error("no table of the log")
	}
	r.Log.Lines = r.Log.Lines[:len(r.Log.Lines)-2]
	html = onPage(t, func(w io.Writer) error { return page.Report(w, r) })
	if want := "hole A came to"; !strings.Contains(html, want) {
		t.Errorf("the page does not hold %q", want)
	}
}

func TestAPageWithoutALogSpeaksOfNone(t *testing.T) {
	r := outputtest.ReportOn(outputtest.Ordinary())
	html := onPage(t, func(w io.Writer) error { return page.Report(w, r) })
	if strings.Contains(strings.ToLower(html), "as logged") {
		t.Error("the page speaks of a log")
	}
}

func TestALogIsToldInTheTerminalSiteBySite(t *testing.T) {
	r := loggedOrdinary()
	r.Log.Lines = r.Log.Lines[:len(r.Log.Lines)-2] // hole A alone, twice as slow
	got := printed(t, func(w io.Writer) error { return text.Logged(w, r.Summary, r.Log) })
	if site := r.Summary.Sites[0].Name; !strings.Contains(got, "  - "+site+": until ") || !strings.Contains(got, "behind P50.") {
		t.Errorf("got\n%s", got)
	}
	got = printed(t, func(w io.Writer) error { return text.Logged(w, r.Summary, &result.Log{File: "empty.csv"}) })
	if !strings.Contains(got, "As logged in empty.csv") || !strings.Contains(got, "No hole of a site is in it yet.") {
		t.Errorf("got\n%s", got)
	}
}
