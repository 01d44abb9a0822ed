package chart

import (
	"fmt"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"coredays/model/result"
	"coredays/output/words"
)

// loggedKey says how the ways of a log are drawn.
const loggedKey = " As logged: thick and dark, with a cross at its end."

// loggedWays draws the way down of each hole in a log over what was simulated.
func loggedWays(p *plot.Plot, stay *result.Stay, c *Chart) {
	style := draw.LineStyle{Color: ink, Width: 2}
	if len(stay.Ways) > 0 {
		p.Add(legendLine(p.X.Max/50, 0.95*p.Y.Max, "as logged", style))
	}
	for i := range stay.Ways {
		w := &stay.Ways[i]
		var points plotter.XYs
		for _, at := range w.Points {
			points = append(points, plotter.XY{X: at.After / words.SecondsOfDay, Y: float64(at.Depth)})
		}
		foot := points[len(points)-1]
		p.Add(line(draw.LineStyle{Color: paper, Width: 3.6}, points), line(style, points),
			spots(thickCross{}, ink, 4, plotter.XYs{foot}))
		p.Add(remarks(remark{x: foot.X, y: foot.Y, text: clipped(w.Hole, 12), align: 1, dx: 3, dy: 6}))
		c.Desc += fmt.Sprintf("As logged, hole %s: %s m below the sea floor %s days after arriving. ", w.Hole, words.Given(foot.Y), words.Fixed(foot.X, 1))
	}
}

// reach is how far the ways of a log go, in days and metres.
func reach(stay *result.Stay) (days, depth float64) {
	for i := range stay.Ways {
		end := stay.Ways[i].Points[len(stay.Ways[i].Points)-1]
		days, depth = max(days, end.After/words.SecondsOfDay), max(depth, float64(end.Depth))
	}
	return days, depth
}

// thickCross is a mark that no series has.
type thickCross struct{}

// DrawGlyph draws it.
func (thickCross) DrawGlyph(c *draw.Canvas, style draw.GlyphStyle, at vg.Point) {
	half := style.Radius
	for _, side := range []vg.Length{-1, 1} {
		c.StrokeLine2(draw.LineStyle{Color: style.Color, Width: 2}, at.X-half, at.Y-side*half, at.X+half, at.Y+side*half)
	}
}
