package chart

import (
	"fmt"
	"image/color"
	"math"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"coredays/output/sheet"
	"coredays/output/words"
)

// rowsChart is a chart of named rows with panels side by side: alternatives, or things to cut.
type rowsChart struct {
	Chart
	names  []string
	marked int      // row of what the scenario has; -1 for none
	words  []string // of each row, for those who can't see it
	sides  []rowsPanel
	table  *sheet.Table // behind it, a row each
}

// rowsPanel shows one thing of each row.
type rowsPanel struct {
	width     float64 // share of the width, names with the first
	title     string
	axis      string
	low, high float64 // of the x axis
	parts     int     // of the axis, at most
	row       func(p *plot.Plot, i int, y float64)
}

// mostRows is how many rows a sheet of A4 takes; what is more has a further chart of the same axes.
const mostRows = 40

// sheets are as many as the rows need.
func (r *rowsChart) sheets() (list []*Chart) {
	for from := 0; from < len(r.names); from += mostRows {
		c := r.part(from, min(from+mostRows, len(r.names)))
		if from > 0 {
			c.Name += fmt.Sprintf("-%d", from/mostRows+1)
		}
		if len(r.names) > mostRows {
			c.Title += fmt.Sprintf(": rows %d to %d", from+1, min(from+mostRows, len(r.names)))
		}
		list = append(list, c)
	}
	return list
}

// numbered is the name of a row; its number says it in the table.
func numbered(i int, name string) string { return fmt.Sprintf("%d. %s", i+1, name) }

// part is the chart of some rows.
func (r *rowsChart) part(from, to int) *Chart {
	c := r.Chart
	few := *r.table
	few.Rows = few.Rows[from:to]
	c.Behind = []*sheet.Table{&few}
	c.width, c.height = chartWidth, (vg.Length(to-from)*rowHeight(to-from)+2.9+topScale(to-from))*vg.Centimeter
	at := 0.0
	for k, side := range r.sides {
		p := side.plot(from, to)
		if k == 0 {
			c.names = r.margin(from, to)
			p.Y.Tick.Marker = c.names
		}
		c.panels = append(c.panels, panel{p, at, at + side.width})
		at += side.width
	}
	for i := from; i < to; i++ {
		c.Desc += numbered(i, r.names[i]) + ": " + r.words[i] + ". "
	}
	return &c
}

// margin names the rows.
func (r *rowsChart) margin(from, to int) (ticks plot.ConstantTicks) {
	for i := from; i < to; i++ {
		ticks = append(ticks, plot.Tick{Value: float64(from - i), Label: words.OrLess("→ ", i == r.marked) + clipped(numbered(i, r.names[i]), 31)})
	}
	return ticks
}

// rowHeight in centimetres is less where there are many, so that a sheet holds them with heading and key.
func rowHeight(n int) vg.Length { return min(0.75, max(0.45, 18/vg.Length(n))) }

// topScale is the height in centimetres of a second scale above the rows, for so many that the one below
// is far from the first.
func topScale(n int) vg.Length {
	if n > 12 {
		return 0.4
	}
	return 0
}

// scaleOnTop writes the ticks at the upper edge too.
func scaleOnTop(ticks plot.ConstantTicks) drawing {
	return func(c draw.Canvas, at func(x, y float64) vg.Point) {
		for _, t := range ticks {
			p := vg.Point{X: at(t.Value, 0).X, Y: c.Max.Y}
			remark{text: t.Label, dy: -5, bare: true}.write(c, p)
		}
		c.StrokeLine2(draw.LineStyle{Color: stone, Width: 0.5}, c.Min.X, c.Max.Y, c.Max.X, c.Max.Y)
	}
}

// plot draws some rows; room is left above them for names.
func (r *rowsPanel) plot(from, to int) *plot.Plot {
	p := newPlot(r.axis, "")
	titled(p, r.title)
	n := to - from
	p.X.Min, p.X.Max, p.Y.Min, p.Y.Max = r.low, r.high, 0.4-float64(n), 0.5+float64((0.75+topScale(n))/rowHeight(n))
	saysItsStart(&p.X)
	step := roundStep(r.high-r.low, r.parts)
	first := math.Ceil(r.low/step) * step
	ticks := evenly(first, r.high, step, func(x float64) string { return words.Figures(math.Round(x/step) * step) })
	p.X.Tick.Marker = ticks
	if topScale(n) > 0 {
		p.Add(scaleOnTop(ticks))
	}
	p.Y.Tick.Marker, p.Y.Tick.Length, p.Y.LineStyle.Width = plot.ConstantTicks{}, 0, 0
	gridlines(p, true, false)
	for i := 1; i < n; i += 2 {
		p.Add(lyingBar(seeThrough(faint, 0.35), r.low, r.high, -float64(i), 0.5))
	}
	for i := from; i < to; i++ {
		r.row(p, i, float64(from-i))
	}
	return p
}

// upright draws a line across a row at a value.
func upright(p *plot.Plot, style draw.LineStyle, x, y, half float64) {
	p.Add(line(style, plotter.XYs{{X: x, Y: y - half}, {X: x, Y: y + half}}))
}

// nameAbove writes a name above a mark of the first row, so high, and joins the two.
func nameAbove(x, y float64, high vg.Length, text string, c color.Color) drawing {
	return func(canvas draw.Canvas, at func(x, y float64) vg.Point) {
		p := at(x, y)
		canvas.StrokeLine2(draw.LineStyle{Color: c, Width: 0.6}, p.X, p.Y, p.X, p.Y+high-4)
		remark{text: text, dy: high, color: c}.write(canvas, p)
	}
}
