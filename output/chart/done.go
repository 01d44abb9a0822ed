package chart

import (
	"fmt"
	"image/color"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"coredays/model/result"
	"coredays/output/sheet"
	"coredays/output/words"
)

const doneKey = "Full circle: rank 1; square: rank 2; triangle: a later rank. Rank 1 is dropped last. In the order of the visits."

// DoneChart draws the chance of each hole and task within the sea days.
func DoneChart(s *result.Summary) *Chart {
	c := &Chart{Name: "done", Title: fmt.Sprintf("What gets done within the %s sea days", words.Given(s.Allotted.SeaDays.Days())), width: chartWidth,
		Key:    doneKey,
		Behind: []*sheet.Table{sheet.Chances(s)}}
	axis, name := "expeditions of 100 in which it is done", func(x float64) string { return fmt.Sprintf("%.0f", x) }
	step := 20.0
	if s.Replications < 2 {
		axis, name, step = "done in this one expedition", func(x float64) string { return words.Chance(x, 1) }, 100
	}
	p := newPlot(axis, "")
	var ticks plot.ConstantTicks
	row := 0.0
	for i := range s.Sites {
		site := &s.Sites[i]
		for j := range site.Holes {
			h := &site.Holes[j]
			ticks = append(ticks, plot.Tick{Value: -row, Label: clipped(site.Name, 20) + "  " + clipped(h.Name, 18)})
			x := 100 * h.ChanceDone
			p.Add(line(draw.LineStyle{Color: faint, Width: 3}, plotter.XYs{{X: 0, Y: -row}, {X: x, Y: -row}}))
			p.Add(spots(rankGlyph(h.Rank), rankShade(h.Rank), 3.2, plotter.XYs{{X: x, Y: -row}}))
			p.Add(remarks(remark{x: x, y: -row, text: words.Chance(h.ChanceDone, s.Replications), align: 1, dx: 2}))
			c.Desc += fmt.Sprintf("%s %s, rank %d: %s %%. ", words.SiteName(site), h.Name, h.Rank, words.Percent(h.ChanceDone))
			if h.Conditional {
				p.Add(line(draw.LineStyle{Color: faint, Width: 1, Dashes: dashes[2]}, plotter.XYs{{X: 100 * (1 - h.ChanceNotCalled), Y: -row}, {X: 100, Y: -row}}))
				c.Key = doneKey + " Dashed, from the right: not called for, as another hole turned out."
				c.Desc += fmt.Sprintf("Not called for: %s %%. ", words.Percent(h.ChanceNotCalled))
			}
			row++
		}
		row += 0.5
	}
	c.most, c.labels = 100, 26
	p.X.Min, p.X.Max, p.Y.Min, p.Y.Max = -1.5, 108, -row+0.2, 0.7
	p.X.Tick.Marker = evenly(0, 100, step, name)
	p.Y.Tick.Marker, p.Y.Tick.Length, p.Y.LineStyle.Width = ticks, 0, 0
	c.height = vg.Length(row)*0.45*vg.Centimeter + 1.7*vg.Centimeter
	c.alone(p)
	return c
}

func rankGlyph(rank int) draw.GlyphDrawer {
	switch {
	case rank <= 1:
		return draw.CircleGlyph{}
	case rank == 2:
		return draw.SquareGlyph{}
	}
	return draw.TriangleGlyph{}
}

func rankShade(rank int) color.Color {
	if rank <= 1 {
		return deep
	}
	return ochre
}
