package chart

import (
	"image/color"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	plottext "gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
)

// drawing is a plotter made of a function.
type drawing func(c draw.Canvas, at func(x, y float64) vg.Point)

// Plot draws.
func (d drawing) Plot(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	d(c, func(a, b float64) vg.Point { return vg.Point{X: x(a), Y: y(b)} })
}

// line draws a line through points.
func line(style draw.LineStyle, points plotter.XYs) drawing {
	return func(c draw.Canvas, at func(x, y float64) vg.Point) {
		c.StrokeLines(style, c.ClipLinesXY(placed(points, at))...)
	}
}

// area fills what points go around.
func area(fill color.Color, points plotter.XYs) drawing {
	return func(c draw.Canvas, at func(x, y float64) vg.Point) {
		c.FillPolygon(fill, c.ClipPolygonXY(placed(points, at)))
	}
}

func placed(points plotter.XYs, at func(x, y float64) vg.Point) []vg.Point {
	list := make([]vg.Point, len(points))
	for i, p := range points {
		list[i] = at(p.X, p.Y)
	}
	return list
}

// spots draws marks.
func spots(shape draw.GlyphDrawer, c color.Color, radius vg.Length, points plotter.XYs) drawing {
	return func(canvas draw.Canvas, at func(x, y float64) vg.Point) {
		for _, p := range points {
			canvas.DrawGlyphNoClip(draw.GlyphStyle{Color: c, Radius: radius, Shape: shape}, at(p.X, p.Y))
		}
	}
}

// hollow draws marks filled with paper, so that lines below them end at their edge.
func hollow(filled, edge draw.GlyphDrawer, c color.Color, radius vg.Length, points plotter.XYs) drawing {
	return func(canvas draw.Canvas, at func(x, y float64) vg.Point) {
		spots(filled, paper, radius, points)(canvas, at)
		spots(edge, c, radius, points)(canvas, at)
	}
}

// remarkSize is that of the letters of a remark.
const remarkSize = 8

// remark is words beside a point; align is where the text stands to it: -1 left of, 0 across, 1 right of it.
type remark struct {
	x, y   float64
	text   string
	align  float64
	dx, dy vg.Length
	color  color.Color
	bare   bool // no halo: the ground is even
	inside bool // moved sideways into the panel where it stands out
}

// remarks writes texts, on a halo of paper so that lines behind them don't spoil them.
func remarks(list ...remark) drawing {
	return func(c draw.Canvas, at func(x, y float64) vg.Point) {
		for _, r := range list {
			r.write(c, at(r.x, r.y))
		}
	}
}

func (r remark) write(c draw.Canvas, p vg.Point) {
	style, at, box := r.set(p)
	if r.inside {
		aside := max(0, c.Min.X-box.Min.X) - max(0, box.Max.X-c.Max.X)
		at.X, box = at.X+aside, box.Add(vg.Point{X: aside})
	}
	if !r.bare {
		box.Min.X, box.Max.X = box.Min.X-1, box.Max.X+1
		c.SetColor(seeThrough(paper, 0.8))
		c.Fill(box.Path())
	}
	c.FillText(style, at, r.text)
}

// set is the lettering of a remark to a point, where it is written and what it covers.
func (r remark) set(p vg.Point) (style plottext.Style, at vg.Point, box vg.Rectangle) {
	if r.color == nil {
		r.color = ink
	}
	style = lettering(remarkSize, r.color)
	style.XAlign, style.YAlign = map[float64]draw.XAlignment{-1: draw.XRight, 0: draw.XCenter, 1: draw.XLeft}[r.align], draw.YCenter
	at = vg.Point{X: p.X + r.dx + vg.Length(r.align)*4, Y: p.Y + r.dy + remarkSize/7} // the middle of a line of text is above that of its letters
	return style, at, style.Rectangle(r.text).Add(at)
}

// box is what a remark to a point covers.
func (r remark) box(p vg.Point) vg.Rectangle {
	_, _, box := r.set(p)
	return box
}

// lyingBar fills a rectangle lying on a row: from and to on the x axis, row on the y axis.
func lyingBar(fill color.Color, from, to, row, half float64) drawing {
	return area(fill, plotter.XYs{{X: from, Y: row - half}, {X: to, Y: row - half}, {X: to, Y: row + half}, {X: from, Y: row + half}})
}

// pointWithRange draws a value with its range, and a faint way to it from nothing: a bar would be cut in slivers by its
// own range.
func pointWithRange(p *plot.Plot, value, low, high, row float64) {
	p.Add(line(draw.LineStyle{Color: faint, Width: 3}, plotter.XYs{{X: 0, Y: row}, {X: value, Y: row}}),
		whisker(draw.LineStyle{Color: ochre, Width: 1.6}, low, high, row, 0.14), spots(draw.CircleGlyph{}, deep, 3.4, plotter.XYs{{X: value, Y: row}}))
}

// whisker draws a range on a row, closed at those ends that lie in the panel.
func whisker(style draw.LineStyle, low, high, row, half float64) drawing {
	return func(c draw.Canvas, at func(x, y float64) vg.Point) {
		for _, l := range []plotter.XYs{{{X: low, Y: row}, {X: high, Y: row}}, {{X: low, Y: row - half}, {X: low, Y: row + half}}, {{X: high, Y: row - half}, {X: high, Y: row + half}}} {
			c.StrokeLines(style, c.ClipLinesXY(placed(l, at))...)
		}
	}
}
