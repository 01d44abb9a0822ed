package chart

import (
	"fmt"
	"math"
	"path/filepath"
	"strings"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg/draw"

	"coredays/model/result"
	"coredays/output/sheet"
	"coredays/output/text"
	"coredays/output/words"
)

// Study draws the plans of a study as rows: days needed, chances within the days, and core.
func Study(s *result.Study) []*Chart {
	if len(s.Plans) == 0 {
		return nil
	}
	r := &rowsChart{marked: -1, Chart: Chart{Name: "plans", Title: "Plans",
		Key: "Left: days of the whole programme, no deadline: P50 as a circle, P10 to P90 as a line; upright dashes: the sea days. Middle: what gets done within the days; full circle: all of rank 1, " +
			"open square: everything. Right: core recovered within the days. The number of a row is in the table too.",
	}, table: sheet.StudyForPeople(s)}
	for i := range s.Plans {
		r.names, r.words = append(r.names, planLabel(s, i)), append(r.words, planWords(s, i))
	}
	allotted := func(i int) *result.Allotted {
		return &result.Allotted{ChancePrimary: s.Plans[i].ChancePrimary, ChanceAll: s.Plans[i].ChanceAll}
	}
	r.sides = []rowsPanel{studyDays(s), chancesPanel(0.24, s.Replications, allotted), studyCore(s)}
	return r.sheets()
}

// planLabel is a plan for the margin: values alone, which the table names.
func planLabel(s *result.Study, i int) string {
	var list []string
	for k, value := range text.PlanValues(s, i) {
		if k == 0 {
			value = strings.TrimSuffix(value, filepath.Ext(value))
		}
		if text.Varies(s, k) {
			list = append(list, value)
		}
	}
	if len(list) == 0 {
		return s.Plans[i].Scenario
	}
	return strings.Join(list, ", ")
}

// planWords says a plan to those who can't see the chart.
func planWords(s *result.Study, i int) string {
	p := &s.Plans[i]
	days := words.InDays(words.Issued(p.Needed))
	return fmt.Sprintf("%s days needed; within the days rank 1 done %s %%, all %s %%, core %s m", words.Ranged(days, words.Places(days.P50)), words.Percent(p.ChancePrimary), words.Percent(p.ChanceAll),
		words.Ranged(words.Issued(p.Recovered), 0))
}

// studyDays is days needed with the sea days.
func studyDays(s *result.Study) rowsPanel {
	low, high := math.Inf(1), math.Inf(-1)
	for i := range s.Plans {
		days, sea := words.InDays(words.Issued(s.Plans[i].Needed)), s.Plans[i].SeaDays.Days()
		for _, x := range []float64{sea, days.P10, days.P50, min(days.P90, 3*max(sea, days.P50))} {
			if words.Defined(x) {
				low, high = min(low, x), max(high, x)
			}
		}
	}
	margin := 0.05*(high-low) + 0.5
	return rowsPanel{width: 0.49, title: "days needed", axis: "days", low: max(0, low-margin), high: high + margin, parts: 6,
		row: func(p *plot.Plot, i int, y float64) {
			upright(p, draw.LineStyle{Color: ink, Width: 1, Dashes: dashes[2]}, s.Plans[i].SeaDays.Days(), y, 0.5)
			spreadAt(p, words.InDays(words.Issued(s.Plans[i].Needed)), y)
		}}
}

// studyCore is metres recovered within the days.
func studyCore(s *result.Study) rowsPanel {
	high := 0.0
	for i := range s.Plans {
		if core := words.Issued(s.Plans[i].Recovered); words.Defined(core.P90) {
			high = max(high, core.P90)
		}
	}
	return rowsPanel{width: 0.27, title: "core", axis: "m", low: 0, high: 1.05*high + 1, parts: 4,
		row: func(p *plot.Plot, i int, y float64) { spreadAt(p, words.Issued(s.Plans[i].Recovered), y) }}
}

// spreadAt draws P10 to P90 as a line and P50 as a circle.
func spreadAt(p *plot.Plot, s result.Spread, y float64) {
	if words.Spreads(s) {
		p.Add(whisker(draw.LineStyle{Color: deep, Width: 1.8}, s.P10, s.P90, y, 0.16))
	}
	p.Add(hollow(draw.CircleGlyph{}, draw.RingGlyph{}, deep, 3, plotter.XYs{{X: s.P50, Y: y}}))
}
