package chart

import (
	"fmt"

	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"coredays/model/result"
	"coredays/output/sheet"
	"coredays/output/words"
)

// curveChart draws the days that the whole programme needs by chance, the sea days marked.
func curveChart(s *result.Summary) *Chart {
	if len(s.Needed.Curve) < 2 || s.Replications < 2 {
		return nil
	}
	c := &Chart{Name: "days-needed", Title: "Days needed: how many expeditions in 100 are done by then", width: chartWidth, height: 8.5 * vg.Centimeter,
		Key:    "Whole programme, no deadline, port to port. Full square: so many need no more than the sea days; open square: so many get it done within them, since the crew turns for port by its own estimate and forecast.",
		Behind: []*sheet.Table{coarse(sheet.Curve(s), 10)}}
	p := newPlot("days from leaving port to reaching port", "expeditions done, of 100")
	var points plotter.XYs
	for i, x := range s.Needed.Curve {
		points = append(points, plotter.XY{X: x / words.SecondsOfDay, Y: 100 * float64(i) / float64(len(s.Needed.Curve)-1)})
	}
	days, share := s.Allotted.SeaDays.Days(), 100*s.Needed.Fits
	p.X.Min, p.X.Max = curveRange(points, days)
	p.Y.Min, p.Y.Max = 0, 113 // the sea days are named above the curve
	saysItsStart(&p.X)
	step := roundStep(p.X.Max-p.X.Min, 10)
	p.X.Tick.Marker = evenly(0, p.X.Max, step, func(x float64) string { return words.Figures(x) })
	p.Y.Tick.Marker = evenly(0, 100, 20, func(x float64) string { return fmt.Sprintf("%.0f", x) })
	p.Add(area(sand, plotter.XYs{{X: p.X.Min, Y: 0}, {X: days, Y: 0}, {X: days, Y: 104}, {X: p.X.Min, Y: 104}}))
	gridlines(p, true, true)
	p.Add(line(draw.LineStyle{Color: ink, Width: 1, Dashes: dashes[2]}, plotter.XYs{{X: days, Y: 0}, {X: days, Y: 104}}))
	p.Add(line(draw.LineStyle{Color: deep, Width: 2.2}, points))
	t := words.InDays(s.Needed.Total)
	decimals := words.DayPlaces
	marks := plotter.XYs{{X: t.P10, Y: 10}, {X: t.P50, Y: 50}, {X: t.P90, Y: 90}}
	p.Add(spots(draw.CircleGlyph{}, deep, 3.2, marks), spots(draw.BoxGlyph{}, ochre, 3.2, plotter.XYs{{X: days, Y: share}}))
	p.Add(remarks(remark{x: days, y: 108.5, text: words.Given(days) + " sea days", bare: true, inside: true}))
	var names []remark
	for _, m := range marks {
		names = append(names, remark{x: m.X, y: m.Y, text: fmt.Sprintf("P%.0f %s d", m.Y, words.Fixed(m.X, decimals)), bare: true})
	}
	if share > 0 && share < 100 {
		names = append(names, remark{x: days, y: share, text: words.Percent(share/100) + " of 100 need no more", bare: true})
	}
	if done := 100 * s.Allotted.ChanceAll; done >= 1 && share-done >= 1 {
		p.Add(hollow(draw.BoxGlyph{}, draw.SquareGlyph{}, ochre, 3.2, plotter.XYs{{X: days, Y: done}}))
		names = append(names, remark{x: days, y: done, text: words.Percent(done/100) + " get done", bare: true})
	}
	if p.X.Max < s.Needed.Curve[len(s.Needed.Curve)-1]/words.SecondsOfDay {
		longest := words.Figures(s.Needed.Curve[len(s.Needed.Curve)-1] / words.SecondsOfDay)
		c.Key += fmt.Sprintf(" The longest, up to %s days, are not drawn.", longest)
		p.Add(remarks(remark{x: p.X.Max, y: 108.5, text: "goes on to " + longest + " d →", align: -1, bare: true}))
	}
	p.Add(whereFree(names, points, plotter.XYs{{X: days, Y: 0}, {X: days, Y: 104}}))
	c.Desc = fmt.Sprintf("One expedition in ten needs less than %s days, half less than %s, nine in ten less than %s; %s of 100 need no more than the %s sea days.",
		words.Fixed(t.P10, decimals), words.Fixed(t.P50, decimals), words.Fixed(t.P90, decimals), words.Percent(share/100), words.Given(days))
	c.alone(p)
	return c
}

// curveRange leaves the last hundredth out where it is far away.
func curveRange(points plotter.XYs, days float64) (from, to float64) {
	n := len(points) - 1
	from, to = points[0].X, points[n].X
	if far := points[n*198/200].X; to-far > (far-from)/2 {
		to = far
	}
	from, to = min(from, days), max(to, days)
	margin := 0.04*(to-from) + 0.5
	return max(0, from-margin), to + margin
}

// coarse is every n-th row of a sheet, the last one too where it is one of them.
func coarse(s *sheet.Table, n int) *sheet.Table {
	few := &sheet.Table{Name: s.Name, Title: s.Title, Fields: s.Fields}
	for i := 0; i < len(s.Rows); i += n {
		few.Rows = append(few.Rows, s.Rows[i])
	}
	return few
}
