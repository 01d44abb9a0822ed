package refit

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"coredays/model/score"
)

// The charts of the study are drawn in the look of the reports: their letters, and the colour of what was found.
func TestChartsOfTheStudyHaveTheLookOfTheReports(t *testing.T) {
	var cases []score.Case
	for i := range 40 {
		sample := make([]float64, 100)
		for n := range sample {
			sample[n] = 1 + float64(n)/20
		}
		cases = append(cases, score.Case{Forecast: score.NewForecast(sample), Actual: 0.5 + float64(i)/5})
	}
	folder := t.TempDir()
	classes := []score.Class{{Class: "all"}}
	for name, draw := range map[string]func(string) error{
		"days":  func(file string) error { return againstFact(file, cases) },
		"ranks": func(file string) error { return ranks(file, cases) },
		"ratios": func(file string) error {
			return ratios(file, "tool", classes, func(int) string { return "all" }, cases)
		},
	} {
		file := filepath.Join(folder, name+".svg")
		if err := draw(file); err != nil {
			t.Fatal(err)
		}
		svg, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		for _, mark := range []string{"Liberation Sans", "#165482"} {
			if !strings.Contains(string(svg), mark) {
				t.Errorf("%s has no %s", name, mark)
			}
		}
	}
}
