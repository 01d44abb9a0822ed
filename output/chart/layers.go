package chart

import (
	"image/color"

	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"coredays/model/result"
	"coredays/output/words"
)

// layerStrip draws the layers with their names.
func layerStrip(site *result.Site, from, to float64) drawing {
	return func(c draw.Canvas, at func(x, y float64) vg.Point) {
		top := 0.0
		for i, l := range site.Layers {
			bottom := min(float64(l.Bottom), float64(site.Target))
			if bottom <= top {
				break
			}
			a, b := at(from, top), at(to, bottom)
			c.FillPolygon([]color.Color{sand, sand2}[i%2], []vg.Point{a, {X: b.X, Y: a.Y}, b, {X: a.X, Y: b.Y}})
			c.StrokeLine2(draw.LineStyle{Color: stone, Width: 0.6}, a.X, b.Y, b.X, b.Y)
			layerName(c, l.Name, a, b)
			top = bottom
		}
	}
}

// layerName writes the name of a layer into its part of the strip, on two lines where one is too
// short; where there is no room the table has it.
func layerName(c draw.Canvas, name string, a, b vg.Point) {
	style := lettering(7, ink)
	style.XAlign, style.YAlign = draw.XCenter, draw.YCenter
	lines := []string{clipped(name, 30)}
	if style.Width(lines[0]) > b.X-a.X-2 {
		lines = words.Wrap(name, 12)
	}
	if vg.Length(len(lines))*8 > a.Y-b.Y {
		return
	}
	for i, l := range lines {
		c.FillText(style, vg.Point{X: (a.X + b.X) / 2, Y: (a.Y+b.Y)/2 + vg.Length(float64(len(lines)-1)/2-float64(i))*8}, l)
	}
}
