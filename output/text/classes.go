package text

import (
	"cmp"
	"slices"
	"strings"

	"coredays/model/activity"
	"coredays/model/result"
	"coredays/output/words"
)

// classes prints where the days of the whole programme go, the largest class first.
func (p *Printer) classes(s *result.Summary) error {
	total := words.InDays(s.Needed.Total)
	p.Heading("Where the days go (whole programme)")
	p.Say("%s. %s", meanDays(total, s.Replications), words.OrLess("Means add up to it; P10 and P90 do not.", s.Replications >= 2))
	p.WriteByte('\n')
	several := s.Replications >= 2
	cols := []Column{WordColumn("class of time", 24), NumberColumn(meanHeading(several)), NumberColumn("share (%)")}
	if several {
		cols = append(cols, NumberColumn("P10 (d)"), NumberColumn("P90 (d)"))
	}
	cols = append(cols, WordColumn("", barWidth))
	var rows [][]string
	for _, c := range BySize(s.Needed.ByClass) {
		rows = append(rows, classRow(c, words.InDays(s.Needed.ByClass[c]), total.Mean, words.DayPlaces, several))
	}
	return p.Table(cols, rows)
}

func meanDays(total result.Spread, replications int) string {
	if replications < 2 {
		return "All classes together: " + words.Figures(total.Mean) + " d"
	}
	return "Mean of all classes together: " + words.Figures(total.Mean) + " d"
}

func meanHeading(several bool) string {
	if several {
		return "mean (d)"
	}
	return "days (d)"
}

// BySize lists the classes of time, those with the larger mean first.
func BySize(byClass [activity.Classes]result.Spread) []activity.Class {
	var order []activity.Class
	for c := range activity.Classes {
		order = append(order, c)
	}
	slices.SortStableFunc(order, func(a, b activity.Class) int { return cmp.Compare(byClass[b].Mean, byClass[a].Mean) })
	return order
}

// classRow is the row of one class of time.
func classRow(c activity.Class, days result.Spread, total float64, places int, several bool) []string {
	share := days.Mean / total
	row := []string{c.String(), words.Fixed(days.Mean, places), words.Percent(share)}
	if several {
		p10, _, p90 := words.Quantiles(days, places)
		row = append(row, p10, p90)
	}
	return append(row, bar(share))
}

// barWidth is a bar of the whole: one mark for each twentieth.
const barWidth = 20

// bar draws a share as a row of marks.
func bar(share float64) string {
	if !words.Defined(share) || share <= 0 {
		return ""
	}
	return strings.Repeat("#", int(min(share, 1)*barWidth+0.5))
}
