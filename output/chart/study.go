package chart

import (
	"fmt"
	"path/filepath"
	"strings"

	"gonum.org/v1/plot"

	"coredays/model/result"
	"coredays/output/sheet"
	"coredays/output/text/alternatives"
	"coredays/output/words"
)

// Study draws the plans of a study as rows: days needed, chances within the days, and core.
func Study(s *result.Study) []*Chart {
	if len(s.Plans) == 0 {
		return nil
	}
	r := &rowsChart{marked: -1, Chart: Chart{Name: "plans", Title: "Plans",
		Key: "First panel: days of the whole programme, no deadline: P50 as a circle, P10 to P90 as a line; upright dashes: the sea days. Second: what gets done within the days; full circle: all of rank 1, " +
			"open square: everything. Third: core recovered within the days. The number of a row is in the table too.",
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
	for k, value := range alternatives.PlanValues(s, i) {
		if k == 0 {
			value = strings.TrimSuffix(value, filepath.Ext(value))
		}
		if alternatives.Varies(s, k) {
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
	days := words.InDays(words.Supported(p.Needed))
	return fmt.Sprintf("%s days needed; within the days rank 1 done %s %%, all %s %%, core %s m", words.Ranged(days, words.Places(days.P50)), words.Percent(p.ChancePrimary), words.Percent(p.ChanceAll),
		words.Ranged(words.Supported(p.Recovered), 0))
}

// studyDays is days needed with the sea days.
func studyDays(s *result.Study) rowsPanel {
	var rows []daysRow
	for i := range s.Plans {
		rows = append(rows, daysRow{s.Plans[i].Needed, s.Plans[i].SeaDays})
	}
	return daysPanel(rows, nil)
}

// studyCore is metres recovered within the days.
func studyCore(s *result.Study) rowsPanel {
	high := 0.0
	for i := range s.Plans {
		if core := words.Supported(s.Plans[i].Recovered); words.Defined(core.P90) {
			high = max(high, core.P90)
		}
	}
	return rowsPanel{width: 0.27, title: "core", axis: "m", low: 0, high: 1.05*high + 1, parts: 4,
		row: func(p *plot.Plot, i int, y float64) { spreadAt(p, words.Supported(s.Plans[i].Recovered), y) }}
}
