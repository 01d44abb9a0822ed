package chart

import (
	"fmt"
	"math"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"coredays/model/result"
	"coredays/output/sheet"
)

// sectionPlot is recovery and section by depth.
func sectionPlot(site *result.Site) *plot.Plot {
	p := newPlot("per cent", "")
	titled(p, "recovered, and section")
	gridlines(p, true, true)
	var covered, recovered plotter.XYs
	most := 100.0
	for i := range site.Section {
		s := &site.Section[i]
		covered = append(covered, plotter.XY{X: 100 * s.Covered, Y: float64(s.From)}, plotter.XY{X: 100 * s.Covered, Y: float64(s.To)})
		if x := sheet.RecoveredPercent(s); !math.IsNaN(x) {
			recovered = append(recovered, plotter.XY{X: x, Y: float64(s.From)}, plotter.XY{X: x, Y: float64(s.To)})
			most = max(most, x)
		}
	}
	filled := append(plotter.XYs{{X: 0, Y: 0}}, covered...)
	filled = append(filled, plotter.XY{X: 0, Y: covered[len(covered)-1].Y})
	p.Add(area(seeThrough(deep, 0.15), filled), line(strokeOf(0), covered), line(strokeOf(1), recovered))
	deepest := float64(site.Target)
	p.Add(legendLine(4, deepest*0.1, "section", strokeOf(0)), legendLine(4, deepest*0.17, "recovered", strokeOf(1)))
	p.X.Min, p.X.Max = 0, most*1.03
	p.X.Tick.Marker = evenly(0, most, 25, func(x float64) string { return fmt.Sprintf("%.0f", x) })
	return p
}

// legendLine says what a line is, at a place where there is mostly room.
func legendLine(x, depth float64, text string, style draw.LineStyle) drawing {
	return func(c draw.Canvas, at func(x, y float64) vg.Point) {
		p := at(x, depth)
		remark{text: text, align: 1, dx: 20}.write(c, p)
		c.StrokeLine2(style, p.X, p.Y, p.X+20, p.Y)
	}
}
