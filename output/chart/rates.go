package chart

import (
	"fmt"
	"math"

	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"coredays/model/rates"
	"coredays/output/sheet"
	"coredays/output/words"
)

// fewestPoints are the observations from which a rate has a chart.
const fewestPoints = 3

// Rates draws each rate of which something was learned: what was observed, along depth or one after the other, with the
// ship's figure and the spread to use.
func Rates(r *rates.Result) (list []*Chart) {
	for i := range r.Rates {
		if x := &r.Rates[i]; x.Identified && len(x.Points) >= fewestPoints {
			list = append(list, rateChart(x))
		}
	}
	return list
}

func rateChart(x *rates.Rate) *Chart {
	m := x.Of.Of()
	inUnit := func(si float64) float64 { return x.Of.InUnit(si) }
	c := &Chart{Name: "rate-" + m.Key, Title: m.Key + ": " + m.What, width: chartWidth, height: 6.5 * vg.Centimeter,
		Key: "Discs are what was observed, triangles are bounds: of work cut short, or where the bench sets the cycle. The band is the spread to use, P10 to P90, with its median; the dashed line is the ship's median.",
		Desc: fmt.Sprintf("%d observations; to use %s, %s, %s %s; ship %s %s.", x.N, words.Figures(inUnit(x.Use[0])), words.Figures(inUnit(x.Use[1])), words.Figures(inUnit(x.Use[2])), m.Unit,
			words.Figures(inUnit(x.Ship[1])), m.Unit),
		Behind: []*sheet.Table{sheet.RatePoints(x)}}
	p := newPlot(x.Along, m.Unit)
	var seen, bounds plotter.XYs
	low, high := inUnit(x.Use[0]), inUnit(x.Use[2])
	left, right := math.Inf(1), math.Inf(-1)
	for _, o := range x.Points {
		xy := plotter.XY{X: o.X, Y: inUnit(o.Y)}
		left, right, low, high = math.Min(left, o.X), math.Max(right, o.X), math.Min(low, xy.Y), math.Max(high, xy.Y)
		if o.Bound {
			bounds = append(bounds, xy)
		} else {
			seen = append(seen, xy)
		}
	}
	low, high = math.Min(low, inUnit(x.Ship[1])), math.Max(high, inUnit(x.Ship[1]))
	if margin := (right - left) / 40; margin > 0 {
		left, right = left-margin, right+margin
	} else {
		left, right = left-1, right+1
	}
	p.X.Min, p.X.Max = left, right
	step := roundStep(math.Max(high-low, 1e-3), 5)
	p.Y.Min, p.Y.Max = math.Floor(low/step)*step, math.Ceil(high/step)*step
	saysItsStart(&p.Y)
	p.Y.Tick.Marker = evenly(p.Y.Min, p.Y.Max, step, func(y float64) string { return words.Figures(y) })
	gridlines(p, false, true)
	across := func(y float64) plotter.XYs { return plotter.XYs{{X: left, Y: inUnit(y)}, {X: right, Y: inUnit(y)}} }
	band := append(across(x.Use[0]), plotter.XY{X: right, Y: inUnit(x.Use[2])}, plotter.XY{X: left, Y: inUnit(x.Use[2])})
	p.Add(area(seeThrough(deep, 0.18), band), line(draw.LineStyle{Color: deep, Width: 1.6}, across(x.Use[1])),
		line(draw.LineStyle{Color: stone, Width: 1.2, Dashes: []vg.Length{5, 3}}, across(x.Ship[1])),
		spots(draw.CircleGlyph{}, ink, 1.6, seen), spots(draw.TriangleGlyph{}, stone, 2.2, bounds))
	c.alone(p)
	return c
}
