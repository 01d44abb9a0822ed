package chart

import (
	"fmt"
	"image/color"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/plotter"
	plottext "gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"coredays/output/words"
)

// Colours that keep apart for people who see red and green alike: they differ in lightness, and none
// says anything that a line style, a shape or a label beside it doesn't.
var (
	paper  = color.NRGBA{255, 255, 255, 255}
	ink    = color.NRGBA{28, 38, 50, 255}
	stone  = color.NRGBA{92, 102, 114, 255}
	faint  = color.NRGBA{222, 226, 231, 255}
	deep   = color.NRGBA{22, 84, 130, 255}
	ochre  = color.NRGBA{154, 82, 4, 255}
	plum   = color.NRGBA{122, 52, 116, 255}
	sand   = color.NRGBA{243, 237, 224, 255}
	sand2  = color.NRGBA{232, 221, 198, 255}
	shades = []color.NRGBA{deep, ochre, plum, ink}
	dashes = [][]vg.Length{nil, {6, 2}, {2, 2}, {8, 2, 2, 2}, {12, 3}, {1, 2}}
)

// shade is the colour of the n-th series.
func shade(n int) color.NRGBA { return shades[n%len(shades)] }

// strokeOf is the line of the n-th series: no two of the first dozen are alike.
func strokeOf(n int) draw.LineStyle {
	return draw.LineStyle{Color: shade(n), Width: 1.6, Dashes: dashes[n%len(dashes)]}
}

// glyphOf is the mark of the n-th series.
func glyphOf(n int) draw.GlyphDrawer {
	return []draw.GlyphDrawer{draw.CircleGlyph{}, draw.BoxGlyph{}, draw.PyramidGlyph{}, draw.RingGlyph{}, draw.SquareGlyph{}, draw.TriangleGlyph{}}[n%6]
}

// seeThrough is a colour of which so much is seen, 0 to 1.
func seeThrough(c color.NRGBA, share float64) color.NRGBA {
	c.A = uint8(255 * share)
	return c
}

// lettering is text of a size.
func lettering(size vg.Length, c color.Color) plottext.Style {
	return plottext.Style{Color: c, Font: font.Font{Typeface: "Liberation", Variant: "Sans", Size: size}, Handler: lettersOf}
}

// newPlot is an empty plot with its axes named.
func newPlot(x, y string) *plot.Plot {
	p := plot.New()
	p.BackgroundColor = nil
	for axis, label := range map[*plot.Axis]string{&p.X: x, &p.Y: y} {
		axis.Label.Text = label
		axis.Label.TextStyle.Font, axis.Label.TextStyle.Color = lettering(9, ink).Font, ink
		axis.Tick.Label.Font, axis.Tick.Label.Color, axis.Tick.Label.Handler = lettering(8, ink).Font, ink, lettersOf
		axis.LineStyle.Color, axis.Tick.LineStyle.Color = stone, stone
		axis.Padding = 0
	}
	return p
}

// saysItsStart has the name of an axis that does not begin at zero say where it begins: lengths on it are
// not in the proportion of their values.
func saysItsStart(axis *plot.Axis) {
	if axis.Min > 0 {
		axis.Label.Text += fmt.Sprintf(" (axis from %s)", words.Figures(axis.Min))
	}
}

// titled writes a heading above a panel.
func titled(p *plot.Plot, title string) {
	p.Title.Text = title
	p.Title.TextStyle.Font, p.Title.TextStyle.Color = lettering(9.5, ink).Font, ink
	p.Title.Padding = 4
}

// gridlines draws faint lines at the ticks.
func gridlines(p *plot.Plot, vertical, horizontal bool) {
	g := plotter.NewGrid()
	g.Vertical.Color, g.Horizontal.Color = nil, nil
	if vertical {
		g.Vertical = draw.LineStyle{Color: faint, Width: 0.6}
	}
	if horizontal {
		g.Horizontal = draw.LineStyle{Color: faint, Width: 0.6}
	}
	p.Add(g)
}

// evenly are ticks at whole multiples of a step, with the text of each.
func evenly(from, to, step float64, label func(float64) string) plot.ConstantTicks {
	var ticks plot.ConstantTicks
	for x := from; x <= to+step/1e6; x += step {
		ticks = append(ticks, plot.Tick{Value: x, Label: label(x)})
	}
	return ticks
}

// roundStep is a step of 1, 2 or 5 that divides a range into at most so many parts.
func roundStep(span float64, parts int) float64 {
	step := 1e-3
	for i := 0; span/step > float64(parts); i++ {
		step *= []float64{2, 2.5, 2}[i%3]
	}
	return step
}

// Colours of the charts of a fit: what was found, what it is held against, and what only fills.
var (
	Found   = deep
	Against = ochre
	Filling = sand2
)

// Bare is an empty plot in the look of the other charts, for what no report has.
func Bare(x, y string) *plot.Plot {
	p := newPlot(x, y)
	gridlines(p, true, true)
	return p
}

// Stroke is a line in a colour of its own.
func Stroke(style *draw.LineStyle) {
	*style = draw.LineStyle{Color: Against, Width: 1.4, Dashes: dashes[1]}
}
