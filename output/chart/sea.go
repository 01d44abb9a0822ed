package chart

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"time"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"coredays/model/result"
	"coredays/model/sea"
	"coredays/output"
	"coredays/output/sheet"
	"coredays/output/words"
)

// Sea draws the sea and how much of the time coring can go on, month by month; nil where the report has none.
func Sea(r *output.Report) *Chart {
	if len(r.Seas) == 0 {
		return nil
	}
	c := &Chart{Name: "sea", Title: "Sea and time below the limit of coring, by month", width: chartWidth, height: 8.5 * vg.Centimeter,
		Key: "First panel: mean significant wave height (Hs). Second: share of the time below the height at which coring stops. The shaded months are those of the expedition, " +
			"from sailing to P90 of the whole programme. The sea is as the simulation makes it.",
		Behind: []*sheet.Table{sheet.Sea(r.Seas)}}
	heights, work := newPlot("", "mean Hs (m)"), newPlot("", "workable (% of the time)")
	titled(heights, "mean wave height")
	titled(work, "time below the limit of coring")
	monthAxis(heights, r)
	monthAxis(work, r)
	var left, right []plotter.XYs
	var names []string
	for _, s := range r.Seas {
		left = append(left, monthly(func(m int) float64 { return s.MadeYear.Mean(m - 1) }))
		right = append(right, monthly(func(m int) float64 { return workable(s, m) }))
		names = append(names, s.Place)
		c.Desc += fmt.Sprintf("%s: mean Hs %s m in %s. ", s.Place, words.Figures(s.MadeYear.Mean(int(r.Summary.Sails.Month())-1)), r.Summary.Sails.Month())
	}
	if len(names) > mostLines {
		c.Key += fmt.Sprintf(" The band holds all %d places; the line of the calmest and that of the roughest are drawn, by the mean height of the year, and the table has the rest.", len(names))
	}
	named := namedSeas(r.Seas)
	seaLines(heights, left, names, named)
	seaLines(work, right, names, named)
	c.panels = []panel{{heights, 0, 0.5}, {work, 0.5, 1}}
	return c
}

// workable is the share of a month in per cent in which coring goes on; not-a-number where no limit is known.
func workable(s *sea.Study, month int) float64 {
	if s.Coring < 0 {
		return math.NaN()
	}
	return 100 * (1 - s.Work.At(s.Coring, month).ShareAbove())
}

func monthly(of func(month int) float64) (points plotter.XYs) {
	for m := 1; m <= 12; m++ {
		if y := of(m); words.Defined(y) {
			points = append(points, plotter.XY{X: float64(m), Y: y})
		}
	}
	return points
}

// monthAxis is an axis of months, those of the expedition shaded.
func monthAxis(p *plot.Plot, r *output.Report) {
	p.X.Min, p.X.Max = 0.6, 12.4+11.8*float64(nameRoom(r.Seas)/(monthsWidth-nameRoom(r.Seas)))
	p.X.Tick.Marker = evenly(1, 12, 1, func(m float64) string { return time.Month(m).String()[:1] })
	p.Add(drawing(func(c draw.Canvas, at func(x, y float64) vg.Point) {
		for m := range expeditionMonths(r.Summary) {
			left, right := at(float64(m)-0.5, 0).X, at(float64(m)+0.5, 0).X+0.3 // over the seam
			c.FillPolygon(sand, []vg.Point{{X: left, Y: c.Min.Y}, {X: right, Y: c.Min.Y}, {X: right, Y: c.Max.Y}, {X: left, Y: c.Max.Y}})
		}
	}))
}

// expeditionMonths are the months from sailing to P90 of days needed.
func expeditionMonths(s *result.Summary) map[int]bool {
	months := map[int]bool{}
	end, exists := words.DateAfter(s.Sails, words.Supported(s.Needed.Total).P90)
	if !exists {
		end = s.Sails
	}
	for at := s.Sails.UTC(); !at.After(end) && len(months) < 12; at = at.AddDate(0, 0, 1) {
		months[int(at.Month())] = true
	}
	return months
}

// seaLines draws a line a place with its name at the right end, names apart; of many places a band and
// the lines of those named.
func seaLines(p *plot.Plot, lines []plotter.XYs, names []string, named []int) {
	seaScale(p, lines)
	if len(named) < len(lines) {
		p.Add(area(seeThrough(deep, 0.18), bandOf(lines)))
	}
	var few []plotter.XYs
	var theirs []string
	for n, i := range named {
		p.Add(line(strokeOf(n), lines[i]), spots(glyphOf(n), shade(n), 2.2, lines[i]))
		few, theirs = append(few, lines[i]), append(theirs, names[i])
	}
	p.Add(endNames(few, theirs))
}

// seaScale is the axis that all lines fit.
func seaScale(p *plot.Plot, lines []plotter.XYs) {
	low, high := math.Inf(1), math.Inf(-1)
	for _, points := range lines {
		for _, xy := range points {
			low, high = min(low, xy.Y), max(high, xy.Y)
		}
	}
	if low > high {
		low, high = 0, 1
	}
	step := roundStep(max(high-low, 0.1), 5)
	p.Y.Min, p.Y.Max = math.Floor(low/step)*step, math.Ceil(high/step)*step
	saysItsStart(&p.Y)
	p.Y.Tick.Marker = evenly(p.Y.Min, p.Y.Max, step, func(y float64) string { return words.Figures(y) })
	gridlines(p, false, true)
}

// endNames writes the names of lines behind their ends, moved apart where they would touch.
func endNames(lines []plotter.XYs, names []string) drawing {
	return func(c draw.Canvas, at func(x, y float64) vg.Point) {
		var ends []lineEnd
		for i, points := range lines {
			if n := len(points); n > 0 {
				ends = append(ends, lineEnd{i, at(points[n-1].X, points[n-1].Y), at(points[n-1].X, points[n-1].Y)})
			}
		}
		slices.SortFunc(ends, func(a, b lineEnd) int { return cmp.Compare(a.at.Y, b.at.Y) })
		for i := range ends {
			y := ends[i].at.Y
			if i > 0 {
				y = max(y, ends[i-1].at.Y+9)
			}
			ends[i].at.Y = y
		}
		if n := len(ends); n > 0 { // down again by what the topmost stands out
			over := max(0, ends[n-1].at.Y-c.Max.Y)
			for i := range ends {
				ends[i].at.Y -= over
			}
		}
		for _, e := range ends {
			remark{text: trimmed(names[e.line], lettering(8, ink), mostNameRoom), align: 1, dx: 8, color: shade(e.line)}.write(c, e.at)
			c.StrokeLine2(draw.LineStyle{Color: shade(e.line), Width: 0.7}, e.from.X+3, e.from.Y, e.at.X+11, e.at.Y)
		}
	}
}

type lineEnd struct {
	line     int
	from, at vg.Point
}
