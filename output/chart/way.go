package chart

import (
	"fmt"
	"image/color"
	"slices"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"

	"coredays/model/result"
	"coredays/output/words"
)

// wayPlot is depth against days, at least so many, with the layers in a strip at its left.
func wayPlot(site *result.Site, days float64, c *Chart) *plot.Plot {
	p := newPlot("days after arriving", "depth below the sea floor (m)")
	titled(p, "depth against days")
	end := max(days, wayEnd(site))
	strip := -0.26 * end
	p.X.Min, p.X.Max = strip, end*1.04
	p.X.Tick.Marker = evenly(0, end, roundStep(end, 8), func(x float64) string { return words.Figures(x) })
	gridlines(p, true, true)
	p.Add(layerStrip(site, strip, -0.01*end))
	for i := range site.Holes {
		holeBand(p, &site.Holes[i], shade(i))
	}
	for i := range site.Holes {
		holeLine(p, &site.Holes[i], i, c)
	}
	return p
}

// usualMarks are the marks of a hole worth drawing: those that half of the holes begun came to. So a line ends at the
// median depth, as the table has it.
func usualMarks(h *result.Hole) (list []result.DepthMark) {
	for _, m := range h.Marks {
		if m.Share > 0 && m.Share >= h.Marks[0].Share/2 {
			list = append(list, m)
		}
	}
	return list
}

func wayEnd(site *result.Site) float64 {
	end := 0.1
	for i := range site.Holes {
		for _, m := range usualMarks(&site.Holes[i]) {
			end = max(end, m.P90/words.SecondsOfDay)
		}
	}
	return end
}

// holeBand fills P10 to P90 of a hole's way down.
func holeBand(p *plot.Plot, h *result.Hole, c color.NRGBA) {
	var around plotter.XYs
	marks := usualMarks(h)
	for _, m := range marks {
		around = append(around, plotter.XY{X: m.P10 / words.SecondsOfDay, Y: float64(m.Depth)})
	}
	for _, m := range slices.Backward(marks) {
		around = append(around, plotter.XY{X: m.P90 / words.SecondsOfDay, Y: float64(m.Depth)})
	}
	if len(marks) > 1 {
		p.Add(area(seeThrough(c, 0.16), around))
	}
}

// holeLine draws the median way down of a hole with its name at the foot.
func holeLine(p *plot.Plot, h *result.Hole, n int, c *Chart) {
	var points plotter.XYs
	for _, m := range usualMarks(h) {
		points = append(points, plotter.XY{X: m.P50 / words.SecondsOfDay, Y: float64(m.Depth)})
	}
	if len(points) == 0 {
		return
	}
	foot := points[len(points)-1]
	p.Add(line(strokeOf(n), points), spots(glyphOf(n), shade(n), 2.6, points[len(points)-1:]))
	p.Add(remarks(remark{x: foot.X, y: foot.Y, text: clipped(h.Name, 12), align: 0, dy: -8, color: shade(n)}))
	c.Desc += fmt.Sprintf("Hole %s: %.0f m below the sea floor %s days after arriving. ", h.Name, foot.Y, words.Figures(foot.X))
}
