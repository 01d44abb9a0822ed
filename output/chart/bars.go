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
	"coredays/output/text"
	"coredays/output/words"
)

// lyingRow is a row of a chart of lying bars.
type lyingRow struct {
	name      string
	value     float64
	low, high float64 // not-a-number for none
	label     string
}

// lyingChart draws values as lying bars, each with its label.
func lyingChart(c *Chart, axis string, rows []lyingRow) {
	p := newPlot(axis, "")
	var ticks plot.ConstantTicks
	most, least := 0.0, 0.0
	for i, r := range rows {
		y := -float64(i)
		ticks = append(ticks, plot.Tick{Value: y, Label: clipped(r.name, 30)})
		end := r.value
		if words.Defined(r.high) {
			end = max(end, r.high)
		}
		most, least = max(most, end), min(least, r.value)
		if words.Defined(r.low) && words.Defined(r.high) {
			pointWithRange(p, r.value, r.low, r.high, y)
		} else {
			p.Add(lyingBar(deep, 0, r.value, y, 0.3))
		}
		p.Add(remarks(remark{x: max(0, end), y: y, text: r.label, align: 1, dx: 2}))
		c.labels = max(c.labels, lettering(8, ink).Width(r.label)+10)
		c.Desc += r.name + ": " + r.label + ". "
	}
	c.most = most
	p.X.Min, p.X.Max, p.Y.Min, p.Y.Max = least*1.1, most*1.25+1e-9, -float64(len(rows))+0.5, 0.6
	step := roundStep(p.X.Max, 8)
	p.X.Tick.Marker = evenly(0, p.X.Max, step, func(x float64) string { return words.Figures(x) })
	p.Y.Tick.Marker, p.Y.Tick.Length = ticks, 0
	p.Add(line(draw.LineStyle{Color: stone, Width: 0.8}, plotter.XYs{{X: 0, Y: p.Y.Min}, {X: 0, Y: p.Y.Max}}))
	p.Y.LineStyle.Width = 0
	c.width, c.height = chartWidth, vg.Length(len(rows))*0.62*vg.Centimeter+1.7*vg.Centimeter
	c.alone(p)
}

// classesChart draws where the days go.
func classesChart(s *result.Summary) *Chart {
	c := &Chart{Name: "classes", Title: "Where the days go",
		Key:    "Point: mean days of the whole programme; the means add up to that of days needed. Line with ends: P10 to P90, which do not add up.",
		Behind: []*sheet.Table{sheet.Classes(s)}}
	total := words.InDays(s.Needed.Total).Mean
	var rows []lyingRow
	for _, k := range text.BySize(s.Needed.ByClass) {
		x := words.InDays(words.Supported(s.Needed.ByClass[k]))
		rows = append(rows, lyingRow{k.String(), x.Mean, x.P10, x.P90, fmt.Sprintf("%s d, %s %%", words.Fixed(x.Mean, 1), words.Percent(x.Mean/total))})
	}
	lyingChart(c, "days", rows)
	return c
}

// driversChart draws what makes days needed uncertain.
func driversChart(s *result.Summary) *Chart {
	shown, negative := text.Shown(s.Drivers)
	if len(shown) == 0 || s.Replications < 2 {
		return nil
	}
	c := &Chart{Name: "drivers", Title: "What drives the spread of days needed", Key: "Share of the variance of days needed from P1 to P99; all causes together make 100 %.",
		Behind: []*sheet.Table{sheet.Drivers(s)}}
	if negative {
		c.Key += " A negative share belongs to a cause that is short where the others are long."
	}
	var rows []lyingRow
	for _, d := range shown {
		rows = append(rows, lyingRow{d.Name, 100 * d.Share, math.NaN(), math.NaN(), words.Percent(d.Share) + " %"})
	}
	lyingChart(c, "share of the variance (%)", rows)
	return c
}
