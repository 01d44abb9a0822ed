package chart

import (
	"fmt"
	"slices"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg/draw"

	"coredays/model/result"
	"coredays/output/sheet"
	"coredays/output/text/alternatives"
	"coredays/output/words"
)

// Alternatives draw the alternatives as rows: days needed, chances within the days, and how
// many days they need more than the first.
func Alternatives(c *result.Comparison) []*Chart {
	if c == nil || !alternatives.Answers(c) || c.Question == result.WhatToCut {
		return nil
	}
	list := alternatives.ByMerit(c)
	r := &rowsChart{marked: slices.Index(list, c.Planned), Chart: Chart{Name: "alternatives", Title: sheet.Titles[c.Question],
		Key: "First panel: days of the whole programme, no deadline: P50 as a circle, P10 to P90 as a line; upright dashes: the sea days. Second: what gets done within the days; full circle: all of rank 1, " +
			"open square: everything. " + words.OrLess("Arrow: the order of the scenario. ", c.Planned >= 0) + moreKey(c),
	}, table: sheet.Alternatives(c).Only(append([]string{"alternative", "row", "sea_days", "days_p10", "days_p50", "days_p90", "chance_primary", "chance_all"}, sheet.ShownMore...)...)}
	for _, i := range list {
		r.names, r.words = append(r.names, alternativeLabel(c, i)), append(r.words, alternativeWords(c, i))
	}
	allotted := func(i int) *result.Allotted { return &c.Alternatives[list[i]].Summary.Allotted }
	r.sides = []rowsPanel{neededPanel(c, list), chancesPanel(0.24, c.Replications, allotted)}
	if len(list) > 1 && c.Replications > 1 {
		r.sides = append(r.sides, morePanel(c, list))
	}
	return r.sheets()
}

// alternativeLabel is a name for the margin; long names of files differ at their end.
func alternativeLabel(c *result.Comparison, i int) string {
	if c.Question != result.WhichPlan {
		return c.Alternatives[i].Name
	}
	return clippedBefore(c.Alternatives[i].Name, mostOfAFile)
}

const mostOfAFile = 26 // columns

// moreKey says how to read the right of the chart.
func moreKey(c *result.Comparison) string {
	if len(c.Alternatives) == 1 || c.Replications < 2 {
		return ""
	}
	return "Third: " + words.OrElse(words.OrLess("mean days", alternatives.ByDays(c)), "points of rank 1 done") + " more than " + alternatives.AgainstName(c) + " (upright line), which decides, with its interval; " +
		"open circle: indistinguishable from the first, full circle: behind it, square: the first; " + alternatives.HeldWords(c) + ". " +
		words.OrLess("The number of a row is in the table too.", len(c.Alternatives) > 2)
}

// alternativeWords says an alternative to those who can't see the chart.
func alternativeWords(c *result.Comparison, i int) string {
	a := &c.Alternatives[i]
	days := words.InDays(words.Supported(a.Summary.Needed.Total))
	line := fmt.Sprintf("%s days needed; within the days rank 1 done %s %%, all %s %%", words.Ranged(days, words.DayPlaces), words.Percent(a.Summary.Allotted.ChancePrimary), words.Percent(a.Summary.Allotted.ChanceAll))
	if i == c.Best {
		line += "; first"
	} else {
		line += "; " + alternatives.Standing(c, i)
	}
	if more := alternatives.MoreWords(c, i); more != "" {
		line += "; " + more
	}
	return line + words.OrLess("; the order of the scenario", i == c.Planned)
}

// neededPanel is days needed with the sea days, of which the figure stands where it is another than above.
func neededPanel(c *result.Comparison, list []int) rowsPanel {
	var rows []daysRow
	for _, i := range list {
		rows = append(rows, daysRow{c.Alternatives[i].Summary.Needed.Total, c.Alternatives[i].Summary.Allotted.SeaDays})
	}
	return daysPanel(rows, func(p *plot.Plot, i int, y float64) {
		sea := rows[i].sea.Days()
		switch {
		case y == 0:
			p.Add(remarks(remark{x: sea, y: y, dy: 18, text: words.Given(sea) + " sea days", bare: true}))
		case y < 0 && sea != rows[i-1].sea.Days():
			p.Add(remarks(remark{x: sea, y: y, text: words.Given(sea), align: 1, dx: -2, dy: 7}))
		}
	})
}

// chancesPanel is the chances within the days, their marks named at the first row.
func chancesPanel(width float64, replications int, of func(row int) *result.Allotted) rowsPanel {
	axis := "expeditions of 100"
	if replications < 2 {
		axis = "0 no, 100 yes"
	}
	return rowsPanel{width: width, title: "done within the days", axis: axis, low: -9, high: 109, parts: 5,
		row: func(p *plot.Plot, i int, y float64) {
			a := of(i)
			ends := plotter.XYs{{X: 100 * a.ChanceAll, Y: y}, {X: 100 * a.ChancePrimary, Y: y}}
			p.Add(line(draw.LineStyle{Color: stone, Width: 0.8}, ends))
			if y == 0 {
				p.Add(nameAbove(ends[0].X, y, 11, "all", ochre), nameAbove(ends[1].X, y, 20, "rank 1", deep))
			}
			p.Add(hollow(draw.BoxGlyph{}, draw.SquareGlyph{}, ochre, 3.3, ends[:1]), spots(draw.CircleGlyph{}, deep, 2.3, ends[1:]))
		}}
}

// morePanel is what decides: the chance of rank 1, or the days, more than those of the one that all are held against.
func morePanel(c *result.Comparison, list []int) rowsPanel {
	title, axis, of := "rank 1 more than "+alternatives.AgainstName(c), "points", func(i int) result.Interval { return scaledBy(alternatives.MoreChance(c, i), 100) }
	if alternatives.ByDays(c) {
		title, axis, of = "days more than "+alternatives.AgainstName(c), "days", func(i int) result.Interval { return words.DaysInterval(alternatives.MoreDays(c, i)) }
	}
	low, high := 0.0, 0.0
	for _, i := range list {
		for _, x := range threeOfInterval(of(i)) {
			low, high = min(low, x), max(high, x)
		}
	}
	margin := 0.06*(high-low) + 0.05
	return rowsPanel{width: 0.27, title: title, axis: axis, low: low - margin, high: high + margin, parts: 5,
		row: func(p *plot.Plot, row int, y float64) {
			upright(p, draw.LineStyle{Color: ink, Width: 1}, 0, y, 0.5)
			i := list[row]
			if i == alternatives.Against(c) {
				p.Add(remarks(remark{x: 0, y: y, text: alternatives.AgainstName(c)}))
				return
			}
			more := of(i)
			if !words.Defined(more.Mean) {
				return
			}
			if known := threeOfInterval(more); len(known) == 3 {
				p.Add(whisker(draw.LineStyle{Color: plum, Width: 1.4}, more.Low, more.High, y, 0.14))
			}
			at := plotter.XYs{{X: more.Mean, Y: y}}
			switch {
			case i == c.Best:
				p.Add(spots(draw.BoxGlyph{}, plum, 2.8, at))
			case c.Alternatives[i].Alike:
				p.Add(hollow(draw.CircleGlyph{}, draw.RingGlyph{}, plum, 2.8, at))
			default:
				p.Add(spots(draw.CircleGlyph{}, plum, 2.8, at))
			}
		}}
}

func scaledBy(i result.Interval, by float64) result.Interval {
	return result.Interval{Mean: by * i.Mean, Low: by * i.Low, High: by * i.High}
}

// threeOfInterval are the figures of an interval that exist.
func threeOfInterval(i result.Interval) (list []float64) {
	for _, x := range []float64{i.Mean, i.Low, i.High} {
		if words.Defined(x) {
			list = append(list, x)
		}
	}
	return list
}
