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
	"coredays/output/text/alternatives"
	"coredays/output/words"
)

// Cuts draw the days that each thing takes and what its loss does for the rest.
func Cuts(c *result.Comparison) []*Chart {
	if !alternatives.Answers(c) || len(c.Cuts) == 0 {
		return nil
	}
	var list []*result.Cut
	r := &rowsChart{marked: -1, Chart: Chart{Name: "cuts", Title: "Days saved by leaving out one thing, and the chances of the rest",
		Key: "First panel: mean days saved as a point, P10 to P90 as a line; one thing less may cost days once in a while, where what comes later meets another sea. " +
			"Second: what gets done within the days of what is left; full circle: all of rank 1, open square: everything; broken lines: the same as planned.",
	}, table: sheet.Cuts(c).Only("without", "row", "saves_mean", "saves_p10", "saves_p50", "saves_p90", "core_less_mean", "core_less_low", "core_less_high")}
	for cut := range sheet.CutsInOrder(c) {
		list = append(list, cut)
		saves := words.InDays(words.Supported(cut.Saves))
		a := &cut.Alternative.Allotted
		r.names = append(r.names, alternatives.CutName(cut))
		r.words = append(r.words, fmt.Sprintf("saves %s days on average; of the rest, rank 1 done %s %%, all %s %%", words.SignedFixed(saves.Mean, 1), words.Percent(a.ChancePrimary), words.Percent(a.ChanceAll)))
	}
	r.sides = []rowsPanel{savesPanel(list), restPanel(c, list)}
	return r.sheets()
}

// savesPanel is the days saved.
func savesPanel(list []*result.Cut) rowsPanel {
	low, high := 0.0, 0.1
	for _, cut := range list {
		s := words.InDays(words.Supported(cut.Saves))
		for _, x := range []float64{s.Mean, s.P10, s.P90} {
			if words.Defined(x) {
				low, high = min(low, x), max(high, x)
			}
		}
	}
	margin := 0.04 * (high - low)
	return rowsPanel{width: 0.66, title: "days saved", axis: "days", low: low - margin, high: high + margin, parts: 8,
		row: func(p *plot.Plot, i int, y float64) {
			s := words.InDays(words.Supported(list[i].Saves))
			if words.Spreads(s) {
				pointWithRange(p, s.Mean, s.P10, s.P90, y)
			} else {
				p.Add(lyingBar(deep, 0, s.Mean, y, 0.24))
			}
			upright(p, draw.LineStyle{Color: ink, Width: 1}, 0, y, 0.5)
		}}
}

// restPanel is the chances of what is left, those as planned marked.
func restPanel(c *result.Comparison, list []*result.Cut) rowsPanel {
	panel := chancesPanel(0.34, c.Replications, func(i int) *result.Allotted { return &list[i].Alternative.Allotted })
	marks, planned := panel.row, &c.Alternatives[0].Summary.Allotted
	panel.row = func(p *plot.Plot, i int, y float64) {
		upright(p, draw.LineStyle{Color: deep, Width: 1, Dashes: dashes[1]}, 100*planned.ChancePrimary, y, 0.5)
		upright(p, draw.LineStyle{Color: ochre, Width: 1, Dashes: dashes[2]}, 100*planned.ChanceAll, y, 0.5)
		marks(p, i, y)
	}
	return panel
}

// MoreDays draws the chances against the sea days.
func MoreDays(c *result.Comparison) *Chart {
	if !alternatives.Answers(c) || len(c.Days) == 0 {
		return nil
	}
	ch := &Chart{Name: "sea-days", Title: "Chances by the sea days there are", width: chartWidth, height: 7.5 * vg.Centimeter,
		Key:    "Broken line: as planned. Upright lines: 95 % interval of what is more or less than as planned, replication by replication; it tells nothing of the chance as planned.",
		Behind: []*sheet.Table{sheet.MoreDays(c)}}
	p := newPlot("sea days", "expeditions of 100 in which it is done")
	days, list := c.Alternatives[0].Summary.Allotted.SeaDays.Days(), alternatives.DaysAndPlanned(c)
	p.X.Min, p.X.Max, p.Y.Min, p.Y.Max = days+list[0].Days-0.3, days+list[len(list)-1].Days+0.7, 0, 104
	p.Y.Tick.Marker = evenly(0, 100, 20, func(x float64) string { return fmt.Sprintf("%.0f", x) })
	saysItsStart(&p.X)
	var ticks plot.ConstantTicks
	for _, d := range list {
		ticks = append(ticks, plot.Tick{Value: days + d.Days, Label: words.Given(days + d.Days)})
		ch.Desc += fmt.Sprintf("%s sea days: rank 1 done %s %%, all %s %%. ", words.Given(days+d.Days), words.Percent(d.First), words.Percent(d.All))
	}
	p.X.Tick.Marker = ticks
	gridlines(p, true, true)
	p.Add(line(draw.LineStyle{Color: ink, Width: 1, Dashes: dashes[1]}, plotter.XYs{{X: days, Y: 0}, {X: days, Y: 104}}), remarks(remark{x: days, y: 4, text: "as planned", align: 1}))
	chanceLine(p, list, days, 0, "rank 1", func(d *result.DayMore) (float64, result.Interval) { return d.First, d.FirstMore })
	chanceLine(p, list, days, 1, "all", func(d *result.DayMore) (float64, result.Interval) { return d.All, d.AllMore })
	ch.alone(p)
	return ch
}

// chanceLine draws the n-th chance with the intervals of what it is more than as planned.
func chanceLine(p *plot.Plot, list []result.DayMore, days float64, n int, name string, of func(*result.DayMore) (float64, result.Interval)) {
	var points plotter.XYs
	for i := range list {
		share, more := of(&list[i])
		x, base := days+list[i].Days, share-more.Mean
		points = append(points, plotter.XY{X: x, Y: 100 * share})
		if low, high := 100*(base+more.Low), 100*(base+more.High); !math.IsNaN(low) && !math.IsNaN(high) {
			p.Add(line(draw.LineStyle{Color: shade(n), Width: 1}, plotter.XYs{{X: x, Y: low}, {X: x, Y: high}}))
		}
	}
	last := points[len(points)-1]
	p.Add(line(strokeOf(n), points), hollow(draw.CircleGlyph{}, []draw.GlyphDrawer{draw.CircleGlyph{}, draw.SquareGlyph{}}[n], shade(n), 3, points),
		remarks(remark{x: last.X, y: last.Y, text: name, align: 1, dx: 4, color: shade(n), bare: true}))
}
