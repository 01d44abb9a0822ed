package refit

import (
	"errors"
	"fmt"
	"math"
	"path/filepath"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"coredays/model/record"
	"coredays/model/score"
	"coredays/output/chart"
)

// charts writes the pictures of testdata/published/HINDCAST.md.
func charts(dir string, j judged, cases []score.Case) error {
	errs := []error{againstFact(filepath.Join(dir, "hindcast_days.svg"), cases), ranks(filepath.Join(dir, "hindcast_ranks.svg"), cases)}
	for name, by := range map[string]int{"tool": 0, "depth": 1, "water": 2, "year": 3} {
		class := record.Classifications[by]
		errs = append(errs, ratios(filepath.Join(dir, "hindcast_"+name+".svg"), class.By, score.Classes(class.By, cases, func(i int) string { return class.Class(&j.Sites[i]) }),
			func(i int) string { return class.Class(&j.Sites[i]) }, cases))
	}
	return errors.Join(errs...)
}

// dayTicks mark days on a logarithmic axis.
var dayTicks = plot.ConstantTicks{{Value: 0.3, Label: "0.3"}, {Value: 1, Label: "1"}, {Value: 3, Label: "3"}, {Value: 10, Label: "10"}, {Value: 30, Label: "30"}, {Value: 100, Label: "100"}}

// againstFact plots what came true against the forecast's median, both logarithmic.
func againstFact(file string, cases []score.Case) error {
	p := chart.Bare("forecast median, days on site", "days on site on record")
	p.X.Scale, p.Y.Scale = plot.LogScale{}, plot.LogScale{}
	p.X.Tick.Marker, p.Y.Tick.Marker = dayTicks, dayTicks
	var points plotter.XYs
	for _, c := range cases {
		points = append(points, plotter.XY{X: c.Forecast.Quantiles(0.5)[0], Y: c.Actual})
	}
	dots, err := plotter.NewScatter(points)
	if err != nil {
		return err
	}
	dots.GlyphStyle = draw.GlyphStyle{Color: chart.Found, Radius: vg.Points(1.6), Shape: draw.CircleGlyph{}}
	even, err := plotter.NewLine(plotter.XYs{{X: 0.4, Y: 0.4}, {X: 60, Y: 60}})
	if err != nil {
		return err
	}
	chart.Stroke(&even.LineStyle)
	p.Add(even, dots)
	p.X.Min, p.Y.Min, p.X.Max, p.Y.Max = 0.2, 0.2, 100, 100
	return p.Save(14*vg.Centimeter, 14*vg.Centimeter, file)
}

// ranks plots how many sites fell into each tenth of their forecast.
func ranks(file string, cases []score.Case) error {
	p := chart.Bare("share of the forecast below the days on record, in tenths", "sites")
	var bars plotter.Values
	var names []string
	for i, n := range score.Judge(cases).RankHistogram {
		bars = append(bars, float64(n))
		names = append(names, fmt.Sprint(i+1))
	}
	tenths, err := plotter.NewBarChart(bars, vg.Points(25))
	if err != nil {
		return err
	}
	tenths.Color, tenths.LineStyle.Width = chart.Found, 0
	even, err := plotter.NewLine(plotter.XYs{{X: -0.5, Y: float64(len(cases)) / 10}, {X: 9.5, Y: float64(len(cases)) / 10}})
	if err != nil {
		return err
	}
	chart.Stroke(&even.LineStyle)
	p.Add(tenths, even)
	p.NominalX(names...)
	p.Y.Min = 0
	return p.Save(14*vg.Centimeter, 8*vg.Centimeter, file)
}

// ratios plots the spread of record over forecast median in each class as a box, logarithm to base 2.
func ratios(file, by string, classes []score.Class, of func(i int) string, cases []score.Case) error {
	p := chart.Bare(by, "record over forecast median, log2")
	var names []string
	for at, class := range classes {
		var values plotter.Values
		for i, c := range cases {
			if of(i) == class.Class {
				values = append(values, math.Log2(c.Actual/c.Forecast.Quantiles(0.5)[0]))
			}
		}
		box, err := plotter.NewBoxPlot(vg.Points(20), float64(at), values)
		if err != nil {
			return err
		}
		box.FillColor, box.MedianStyle.Color, box.MedianStyle.Width = chart.Filling, chart.Found, vg.Points(2)
		p.Add(box)
		names = append(names, class.Class)
	}
	p.NominalX(names...)
	p.X.Min, p.X.Max = -0.6, float64(len(names))-0.4 // room for the names at both ends
	return p.Save(16*vg.Centimeter, 9*vg.Centimeter, file)
}
