package chart

import (
	"fmt"
	"image/color"
	"math"
	"time"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"coredays/model/result"
	"coredays/output"
	"coredays/output/sheet"
	"coredays/output/words"
)

// calendarChart draws when each site is worked, and how sure that is.
func calendarChart(r *output.Report) *Chart {
	s := r.Summary
	c := &Chart{Name: "calendar", Title: "Calendar of the expedition",
		Key: "Bar: from the median day of arriving to that of leaving. Above it, P10 to P90 of arriving; below it, of leaving. Slanting lines are passages. " +
			"An alternate's bar is open: it is of the expeditions that came to it.",
		Behind: []*sheet.Table{sheet.Sites(s).Only("site", "arrives_p10", "arrives_p50", "arrives_p90", "leaves_p10", "leaves_p50", "leaves_p90",
			"arrives_d_p50", "leaves_d_p50"), sheet.Passages(r)}}
	p := newPlot("days after sailing, and dates (UTC)", "")
	rows := float64(len(s.Sites) + 2)
	end := words.InDays(s.Needed.Total)
	p.X.Min, p.X.Max, p.Y.Min, p.Y.Max = 0, calendarEnd(s), -0.75, rows+0.1
	p.X.Tick.Marker = dateTicks(s.Sails, p.X.Max)
	gridlines(p, true, false)
	days := s.Allotted.SeaDays.Days()
	p.Add(line(draw.LineStyle{Color: ink, Width: 1, Dashes: dashes[2]}, plotter.XYs{{X: days, Y: -0.75}, {X: days, Y: rows - 0.4}}))
	var ticks plot.ConstantTicks
	last := plotter.XY{X: 0, Y: rows - 1}
	ticks = append(ticks, plot.Tick{Value: last.Y, Label: clipped(portOf(r, true), 22)})
	p.Add(hollow(draw.CircleGlyph{}, draw.RingGlyph{}, plum, 2.6, plotter.XYs{last}), remarks(remark{x: 0, y: last.Y, text: "sails", align: 1, dx: 3, dy: 6}))
	for i := range s.Sites {
		row := rows - 2 - float64(i)
		ticks = append(ticks, plot.Tick{Value: row, Label: clipped(s.Sites[i].Name, 22)})
		last = calendarRow(p, &s.Sites[i], row, last)
	}
	ticks = append(ticks, plot.Tick{Value: 0, Label: clipped(portOf(r, false), 22)})
	if words.Defined(end.P50) {
		passage(p, last, plotter.XY{X: end.P50, Y: 0})
		rangeOf(p, end, 0, 0, draw.CircleGlyph{}, draw.RingGlyph{}, plum)
	}
	inHand(p, s, c)
	p.Add(remarks(remark{x: days, y: rows - 0.15, text: words.Given(days) + " sea days", bare: true, inside: true}), rangesKey(days < p.X.Max/2, rows-0.15, s.Replications))
	p.Y.Tick.Marker = ticks
	p.Y.Tick.Length = 0
	c.width, c.height = chartWidth, vg.Length(rows)*0.95*vg.Centimeter+2.4*vg.Centimeter
	c.Desc = calendarWords(s)
	c.alone(p)
	return c
}

// leastInHand is what is told of days in hand: less rounds to nothing.
const leastInHand = 0.05 // d

// inHand draws the days that are left at the end of what gets done within the sea days, before these, if there are any.
func inHand(p *plot.Plot, s *result.Summary, c *Chart) {
	left, days := words.InDays(words.Supported(s.Allotted.InHand)).P50, s.Allotted.SeaDays.Days()
	if !(left >= leastInHand) {
		return
	}
	c.Key += " At the foot: days in hand, P50, of what gets done within the sea days."
	at := plotter.XYs{{X: days - left, Y: -0.45}, {X: days, Y: -0.45}}
	p.Add(line(draw.LineStyle{Color: ink, Width: 3}, at), remarks(remark{x: days - left, y: -0.45, text: words.Fixed(left, words.DayPlaces) + " d in hand", align: -1}))
}

// calendarEnd leaves room for the latest dates, but not for those of an expedition that never ends.
func calendarEnd(s *result.Summary) float64 {
	most := s.Allotted.SeaDays.Days()
	for _, x := range []float64{words.InDays(s.Needed.Total).P90, words.InDays(s.Needed.Total).P50} {
		if words.Defined(x) {
			most = max(most, x)
		}
	}
	return min(most, 5*s.Allotted.SeaDays.Days())*1.08 + 1
}

// calendarRow draws a site and returns where it is left.
func calendarRow(p *plot.Plot, site *result.Site, row float64, last plotter.XY) plotter.XY {
	arrives, leaves := words.InDays(words.Supported(site.Arrives)), words.InDays(words.Supported(site.Leaves))
	if site.Days.N < 1 {
		p.Add(remarks(remark{x: p.X.Max / 2, y: row, text: "not reached", align: 0, color: stone}))
		return last
	}
	fill, edge := deep, draw.LineStyle{Color: deep, Width: 1.2}
	if site.Alternate {
		fill, edge.Dashes = paper, dashes[1]
	} else {
		passage(p, last, plotter.XY{X: arrives.P50, Y: row + 0.15})
	}
	p.Add(lyingBar(fill, arrives.P50, leaves.P50, row, 0.15))
	p.Add(line(edge, plotter.XYs{{X: arrives.P50, Y: row - 0.15}, {X: leaves.P50, Y: row - 0.15}, {X: leaves.P50, Y: row + 0.15}, {X: arrives.P50, Y: row + 0.15}, {X: arrives.P50, Y: row - 0.15}}))
	rangeOf(p, arrives, row, 0.3, draw.PyramidGlyph{}, draw.TriangleGlyph{}, ochre)
	rangeOf(p, leaves, row, -0.3, draw.BoxGlyph{}, draw.SquareGlyph{}, plum)
	if site.Alternate {
		return last
	}
	return plotter.XY{X: leaves.P50, Y: row - 0.15}
}

// rangesKey says above the rows what the two ranges are, at the end that the sea days leave free.
func rangesKey(right bool, y float64, replications int) drawing {
	of := words.OrLess(", P10 to P90", replications > 1)
	return func(c draw.Canvas, at func(x, y float64) vg.Point) {
		of, each := of, vg.Length(100)
		if c.Max.X-c.Min.X < phoneWidth {
			of, each = "", 46 // what they reach from and to is in the words above
		}
		left := c.Min.X + 6
		if right {
			left = c.Max.X - 2*each + 10
		}
		for i, name := range []string{"arrives" + of, "leaves" + of} {
			p := vg.Point{X: left + vg.Length(i)*each, Y: at(0, y).Y}
			remark{text: name, align: 1, dx: 2, color: []color.Color{ochre, plum}[i], bare: true}.write(c, p)
			c.DrawGlyphNoClip(draw.GlyphStyle{Color: []color.Color{ochre, plum}[i], Radius: 2.6, Shape: []draw.GlyphDrawer{draw.TriangleGlyph{}, draw.SquareGlyph{}}[i]}, p)
		}
	}
}

// passage draws the way between places.
func passage(p *plot.Plot, from, to plotter.XY) {
	p.Add(line(draw.LineStyle{Color: stone, Width: 0.9}, plotter.XYs{from, to}))
}

// rangeOf draws P10 to P90 beside a row with a mark at P50.
func rangeOf(p *plot.Plot, s result.Spread, row, off float64, filled, edge draw.GlyphDrawer, c color.Color) {
	style := draw.LineStyle{Color: c, Width: 1.4}
	if words.Spreads(s) {
		p.Add(whisker(style, s.P10, s.P90, row+off, 0.07))
	}
	p.Add(hollow(filled, edge, c, 2.6, plotter.XYs{{X: s.P50, Y: row + off}}))
}

// dateTicks are whole weeks or months after sailing with the day and, below, the date.
func dateTicks(sails time.Time, end float64) plot.ConstantTicks {
	step := 7.0
	for end/step > 12 {
		step *= 2
	}
	return evenly(0, end, step, func(x float64) string {
		text := fmt.Sprintf("%.0f", x)
		if at, exists := words.DateAfter(sails, x*words.SecondsOfDay); exists {
			text += "\n" + words.Day(at)
		}
		return text
	})
}

// portOf is the first or the last port.
func portOf(r *output.Report, first bool) string {
	switch {
	case r.Plan == nil:
		return "port"
	case first:
		return words.OrElse(r.Plan.From.Name, "port")
	}
	return words.OrElse(r.Plan.To.Name, "port")
}

// calendarWords says the calendar to those who can't see it.
func calendarWords(s *result.Summary) string {
	text := ""
	for i := range s.Sites {
		site := &s.Sites[i]
		if site.Days.N < 1 {
			text += words.SiteName(site) + ": not reached. "
			continue
		}
		text += fmt.Sprintf("%s: arrives %s, leaves %s. ", words.SiteName(site), words.Dates(s.Sails, site.Arrives), words.Dates(s.Sails, site.Leaves))
	}
	if !math.IsNaN(words.Middle(s.Needed.Total)) {
		text += "Last port: " + words.Dates(s.Sails, s.Needed.Total) + "."
	}
	return text
}
