package output_test

import (
	"io"
	"regexp"
	"strings"
	"testing"

	"coredays/model/result"
	"coredays/output/chart"
	"coredays/output/outputtest"
	"coredays/output/page"
)

// hangingOn has a hole that is drilled in 41 of 100 expeditions, not called for in 27 and dropped in 32.
func hangingOn() *result.Summary {
	s := outputtest.Ordinary()
	s.Sites[0].Holes = append(s.Sites[0].Holes, result.Hole{Name: "C", Rank: 3, Conditional: true, ChanceDone: 0.41, ChanceNotCalled: 0.27, ChanceDropped: 0.32})
	return s
}

func TestWhatIsNotCalledForIsToldApartEverywhere(t *testing.T) {
	printed := textOf(t, hangingOn())
	for _, want := range []string{`\n    C +3 .* 41\n`, `wanted only as another turns out +done \(%\) +not called for \(%\) +dropped \(%\)`, `\n  TR-01 C +41 +27 +32\n`,
		`What is not called for leaves its site complete`} {
		if !regexp.MustCompile(want).MatchString(printed) {
			t.Errorf("no %q in\n%s", want, printed)
		}
	}
	if strings.Contains(textOf(t, outputtest.Ordinary()), "not called for") {
		t.Error("told where no hole hangs on another")
	}

	r := outputtest.ReportOn(hangingOn())
	h := at(t, tree(t, r.Summary), "sites").([]any)[0].(map[string]any)["holes"].([]any)[2]
	csvs, book, html := readCSV(t, r)["holes"][2], readBook(t, r)["holes"][2], readPage(t, r)["holes"][2]
	for key, want := range map[string]string{"chance_done": "0.41", "chance_not_called_for": "0.27", "chance_dropped": "0.32"} {
		if got := at(t, h, key); got != map[string]float64{"0.41": 0.41, "0.27": 0.27, "0.32": 0.32}[want] {
			t.Errorf("%s is %v in JSON", key, got)
		}
		if csvs[key] != want || book[key] != want || html[key] != want {
			t.Errorf("%s is %q in CSV, %q in the workbook, %q on the page; want %s", key, csvs[key], book[key], html[key], want)
		}
	}
	if c := chart.DoneChart(hangingOn()); !strings.Contains(c.Key, "not called for") || !strings.Contains(c.Desc, "Not called for: 27 %") {
		t.Errorf("the chart says %q and %q", c.Key, c.Desc)
	}
	if err := page.Report(io.Discard, r); err != nil {
		t.Error(err)
	}
}
