package output

import (
	"fmt"
	"image/color"
	"math"
	"slices"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"coredays/model/logbook"
)

// siteChart draws a site by depth: the layers, when each hole came how deep, and what comes up.
func siteChart(s *logbook.Summary, n int) *chart {
	site := &s.Sites[n]
	bottom := float64(site.Target)
	if len(site.Section) == 0 || bottom <= 0 {
		return nil
	}
	c := &chart{name: fmt.Sprintf("site-%d", n+1), title: siteName(site) + ": depth against days, and what comes up", width: chartWidth, height: 7.8 * vg.Centimeter,
		key: "Left: layers, and each hole's way down, P50 as a line and P10 to P90 as a band; depths that fewer than half of the visits came to are left out. Tasks and logging take the time between. " +
			"Right: by depth, the share of what was cored that came up (dashes) and of the section that came up in at least one hole (line, filled).",
		behind: []*sheet{waySheet(s).where("site", site.Name).only("hole", "depth_m", "share", "days_p10", "days_p50", "days_p90"),
			sectionSheet(s).where("site", site.Name).only("from_m", "to_m", "cored_m", "recovered_m", "recovered_percent", "covered"),
			layersSheet(s).where("site", site.Name).only("layer", "bottom_m")}}
	way, section := wayPlot(site, c), sectionPlot(site)
	for _, p := range []*plot.Plot{way, section} {
		p.Y.Min, p.Y.Max, p.Y.Scale = 0, bottom*1.11, plot.InvertedScale{Normalizer: plot.LinearScale{}}
		p.Y.Tick.Marker = evenly(0, bottom, roundStep(bottom, 7), func(x float64) string { return fmt.Sprintf("%.0f", x) })
	}
	c.panels = []panel{{way, 0, 0.7}, {section, 0.7, 1}}
	c.desc += fmt.Sprintf("P50 of the section recovered in at least one hole: %s %%.", percent(middle(site.Coverage)))
	return c
}

// wayPlot is depth against days with the layers in a strip at its left.
func wayPlot(site *logbook.Site, c *chart) *plot.Plot {
	p := newPlot("days after arriving", "depth below the sea floor (m)")
	titled(p, "depth against days")
	end := wayEnd(site)
	strip := -0.26 * end
	p.X.Min, p.X.Max = strip, end*1.04
	p.X.Tick.Marker = evenly(0, end, roundStep(end, 8), func(x float64) string { return figures(x) })
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

// usualMarks are the marks of a hole worth drawing: those that half of the visits came to.
func usualMarks(h *logbook.Hole) (list []logbook.DepthMark) {
	for _, m := range h.Marks {
		if m.Share >= 0.5 {
			list = append(list, m)
		}
	}
	return list
}

func wayEnd(site *logbook.Site) float64 {
	end := 0.1
	for i := range site.Holes {
		for _, m := range usualMarks(&site.Holes[i]) {
			end = max(end, m.P90/secondsOfDay)
		}
	}
	return end
}

// holeBand fills P10 to P90 of a hole's way down.
func holeBand(p *plot.Plot, h *logbook.Hole, c color.NRGBA) {
	var around plotter.XYs
	marks := usualMarks(h)
	for _, m := range marks {
		around = append(around, plotter.XY{X: m.P10 / secondsOfDay, Y: float64(m.Depth)})
	}
	for _, m := range slices.Backward(marks) {
		around = append(around, plotter.XY{X: m.P90 / secondsOfDay, Y: float64(m.Depth)})
	}
	if len(marks) > 1 {
		p.Add(area(seeThrough(c, 0.16), around))
	}
}

// holeLine draws the even way down of a hole with its name at the foot.
func holeLine(p *plot.Plot, h *logbook.Hole, n int, c *chart) {
	var points plotter.XYs
	for _, m := range usualMarks(h) {
		points = append(points, plotter.XY{X: m.P50 / secondsOfDay, Y: float64(m.Depth)})
	}
	if len(points) == 0 {
		return
	}
	foot := points[len(points)-1]
	p.Add(line(strokeOf(n), points), spots(glyphOf(n), shade(n), 2.6, points[len(points)-1:]))
	p.Add(remarks(remark{x: foot.X, y: foot.Y, text: clipped(h.Name, 12), align: 0, dy: -8, color: shade(n)}))
	c.desc += fmt.Sprintf("Hole %s: %.0f m below the sea floor %s days after arriving. ", h.Name, foot.Y, figures(foot.X))
}

// layerStrip draws the layers with their names.
func layerStrip(site *logbook.Site, from, to float64) drawing {
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
		lines = wrap(name, 12)
	}
	if vg.Length(len(lines))*8 > a.Y-b.Y {
		return
	}
	for i, l := range lines {
		c.FillText(style, vg.Point{X: (a.X + b.X) / 2, Y: (a.Y+b.Y)/2 + vg.Length(float64(len(lines)-1)/2-float64(i))*8}, l)
	}
}

// sectionPlot is recovery and section by depth.
func sectionPlot(site *logbook.Site) *plot.Plot {
	p := newPlot("per cent", "")
	titled(p, "recovered, and section")
	gridlines(p, true, true)
	var covered, recovered plotter.XYs
	most := 100.0
	for i := range site.Section {
		s := &site.Section[i]
		covered = append(covered, plotter.XY{X: 100 * s.Covered, Y: float64(s.From)}, plotter.XY{X: 100 * s.Covered, Y: float64(s.To)})
		if x := recoveredPercent(s); !math.IsNaN(x) {
			recovered = append(recovered, plotter.XY{X: x, Y: float64(s.From)}, plotter.XY{X: x, Y: float64(s.To)})
			most = max(most, x)
		}
	}
	filled := append(plotter.XYs{{X: 0, Y: 0}}, covered...)
	filled = append(filled, plotter.XY{X: 0, Y: covered[len(covered)-1].Y})
	p.Add(area(seeThrough(deep, 0.15), filled), line(strokeOf(0), covered), line(strokeOf(1), recovered))
	deepest := float64(site.Target)
	p.Add(legendLine(deepest*0.1, "section", strokeOf(0)), legendLine(deepest*0.17, "recovered", strokeOf(1)))
	p.X.Min, p.X.Max = 0, most*1.03
	p.X.Tick.Marker = evenly(0, most, 25, func(x float64) string { return fmt.Sprintf("%.0f", x) })
	return p
}

// legendLine says what a line is, at a depth where there is mostly room left of it.
func legendLine(depth float64, text string, style draw.LineStyle) drawing {
	return func(c draw.Canvas, at func(x, y float64) vg.Point) {
		p := at(4, depth)
		remark{text: text, align: 1, dx: 20}.write(c, p)
		c.StrokeLine2(style, p.X, p.Y, p.X+20, p.Y)
	}
}
