package output

import (
	"cmp"
	"slices"
	"strings"

	"coredays/model/activity"
	"coredays/model/logbook"
)

// classes prints where the days of the whole programme go, the largest class first.
func (p *page) classes(s *logbook.Summary) error {
	total := inDays(s.Needed.Total)
	p.heading("Where the days go (whole programme)")
	p.say("%s. %s", meanDays(total, s.Replications), orLess("Means add up to it; P10 and P90 do not.", s.Replications >= 2))
	p.WriteByte('\n')
	several := s.Replications >= 2
	cols := []column{words("class of time", 24), numbers(meanHeading(several)), numbers("share (%)")}
	if several {
		cols = append(cols, numbers("P10 (d)"), numbers("P90 (d)"))
	}
	cols = append(cols, words("", barWidth))
	var rows [][]string
	for _, c := range bySize(s.Needed.ByClass) {
		rows = append(rows, classRow(c, inDays(s.Needed.ByClass[c]), total.Mean, places(total.Mean), several))
	}
	return p.table(cols, rows)
}

func meanDays(total logbook.Spread, replications int) string {
	if replications < 2 {
		return "All classes together: " + figures(total.Mean) + " d"
	}
	return "Mean of all classes together: " + figures(total.Mean) + " d"
}

func meanHeading(several bool) string {
	if several {
		return "mean (d)"
	}
	return "days (d)"
}

// bySize lists the classes of time, those with the larger mean first.
func bySize(byClass [activity.Classes]logbook.Spread) []activity.Class {
	var order []activity.Class
	for c := range activity.Classes {
		order = append(order, c)
	}
	slices.SortStableFunc(order, func(a, b activity.Class) int { return cmp.Compare(byClass[b].Mean, byClass[a].Mean) })
	return order
}

// classRow is the row of one class of time.
func classRow(c activity.Class, days logbook.Spread, total float64, places int, several bool) []string {
	share := days.Mean / total
	row := []string{c.String(), fixed(days.Mean, places), percent(share)}
	if several {
		p10, _, p90 := quantiles(days, places)
		row = append(row, p10, p90)
	}
	return append(row, bar(share))
}

// barWidth is a bar of the whole: one mark for each twentieth.
const barWidth = 20

// bar draws a share as a row of marks.
func bar(share float64) string {
	if !defined(share) || share <= 0 {
		return ""
	}
	return strings.Repeat("#", int(min(share, 1)*barWidth+0.5))
}
