package chart

import (
	"math"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg/draw"

	"coredays/model/result"
	"coredays/model/unit"
	"coredays/output/words"
)

// daysRow is days needed and the sea days of a row.
type daysRow struct {
	needed result.Spread // s
	sea    unit.Duration
}

// daysPanel is days needed with the sea days; besides may draw more into a row.
func daysPanel(rows []daysRow, besides func(p *plot.Plot, i int, y float64)) rowsPanel {
	low, high := math.Inf(1), math.Inf(-1)
	for _, r := range rows {
		days, sea := words.InDays(words.Supported(r.needed)), r.sea.Days()
		for _, x := range []float64{sea, days.P10, days.P50, min(days.P90, 3*max(sea, days.P50))} {
			if words.Defined(x) {
				low, high = min(low, x), max(high, x)
			}
		}
	}
	margin := 0.05*(high-low) + 0.5
	return rowsPanel{width: 0.49, title: "days needed", axis: "days", low: max(0, low-margin), high: high + margin, parts: 6,
		row: func(p *plot.Plot, i int, y float64) {
			upright(p, draw.LineStyle{Color: ink, Width: 1, Dashes: dashes[2]}, rows[i].sea.Days(), y, 0.5)
			spreadAt(p, words.InDays(words.Supported(rows[i].needed)), y)
			if besides != nil {
				besides(p, i, y)
			}
		}}
}

// spreadAt draws P10 to P90 as a line and P50 as a circle.
func spreadAt(p *plot.Plot, s result.Spread, y float64) {
	if words.Spreads(s) {
		p.Add(whisker(draw.LineStyle{Color: deep, Width: 1.8}, s.P10, s.P90, y, 0.16))
	}
	p.Add(hollow(draw.CircleGlyph{}, draw.RingGlyph{}, deep, 3, plotter.XYs{{X: s.P50, Y: y}}))
	if s.P90 > p.X.Max {
		p.Add(remarks(remark{x: p.X.Max, y: y, dy: 7, text: "to " + words.Figures(s.P90) + " →", align: -1}))
	}
}
