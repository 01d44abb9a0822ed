package chart

import (
	"fmt"
	"math"
	"time"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg/draw"

	"coredays/model/morning"
	"coredays/model/result"
	"coredays/model/unit"
	"coredays/output/sheet"
	"coredays/output/words"
)

// Morning draws a morning page: what is to come with its dates and chances, and what each choice is worth.
func Morning(m *morning.Page) (list []*Chart) {
	list = morningAhead(m).sheets()
	if len(m.Choices) > 1 {
		list = append(list, morningChoices(m).sheets()...)
	}
	return list
}

// morningAhead is each hole and task to come, and the arrival.
func morningAhead(m *morning.Page) *rowsChart {
	items := sheet.MorningAhead(m)
	r := &rowsChart{marked: -1, Chart: Chart{Name: "morning-ahead", Title: "What is to come",
		Key: "First panel: when each is done, where it is: P50 as a circle, P10 to P90 as a line; upright dashes: the latest arrival in port. Second: how often it is done whole; of the port, how often she is there in time."},
		table: sheet.MorningItems(m)}
	since := func(seconds float64) float64 { return (seconds - m.At.Sub(m.Sails).Seconds()) / float64(unit.Day) }
	late := since(m.ArriveBy.Sub(m.Sails).Seconds())
	var rows []result.Spread
	high := late
	for _, x := range items {
		done := words.Supported(x.Finished)
		done.P10, done.P50, done.P90 = since(done.P10), since(done.P50), since(done.P90)
		rows = append(rows, done)
		if words.Defined(done.P90) {
			high = math.Max(high, done.P90)
		}
		when := "never done"
		if x.Finished.N > 0 {
			when = words.Dates(m.Sails, x.Finished)
		}
		r.names, r.words = append(r.names, x.Site+" "+x.Name), append(r.words, fmt.Sprintf("%s; in %s %% of the expeditions", when, words.Percent(x.Chance)))
	}
	r.sides = []rowsPanel{
		{width: 0.7, title: "done on", axis: "days from " + words.Moment(m.At.Truncate(time.Minute)), low: 0, high: 1.06*high + 0.2, parts: 8,
			row: func(p *plot.Plot, i int, y float64) {
				upright(p, draw.LineStyle{Color: ink, Width: 1, Dashes: dashes[2]}, late, y, 0.5)
				if y == 0 {
					p.Add(remarks(remark{x: late, y: y, dy: 18, text: "latest in port", align: 1, bare: true, inside: true}))
				}
				if items[i].Finished.N > 0 && words.Defined(rows[i].P50) {
					spreadAt(p, rows[i], y)
				}
			}},
		{width: 0.3, title: "done whole", axis: "expeditions of 100", low: -9, high: 109, parts: 5,
			row: func(p *plot.Plot, i int, y float64) {
				p.Add(spots(draw.CircleGlyph{}, deep, 2.6, plotter.XYs{{X: 100 * items[i].Chance, Y: y}}))
			}},
	}
	return r
}

// morningChoices is each choice against going on as planned.
func morningChoices(m *morning.Page) *rowsChart {
	r := &rowsChart{marked: -1, Chart: Chart{Name: "morning-choices", Title: "What each choice is worth, against going on as planned",
		Key: "Differences of expeditions with the same random numbers, with 95 % intervals of the simulation; full circle: told apart from going on (upright line), open circle: no difference."},
		table: sheet.MorningChoices(m)}
	choices := m.Choices[1:]
	for i := range choices {
		c := &choices[i]
		r.names = append(r.names, c.Name)
		r.words = append(r.words, fmt.Sprintf("all of rank 1 %s points, core %s m, days to port %s", words.SignedFixed(100*c.Primary.Mean, 0), words.SignedFixed(c.Metres.Mean, 0),
			words.SignedFixed(c.Days.Mean/float64(unit.Day), 1)))
	}
	r.sides = []rowsPanel{
		differencePanel(0.52, "all of rank 1", "points", choices, 100, func(c *morning.Choice) morning.Difference { return c.Primary }),
		differencePanel(0.24, "core", "m", choices, 1, func(c *morning.Choice) morning.Difference { return c.Metres }),
		differencePanel(0.24, "days to port", "days", choices, 1/float64(unit.Day), func(c *morning.Choice) morning.Difference { return c.Days }),
	}
	return r
}

// differencePanel draws one difference of each choice; by turns it into the unit of the axis.
func differencePanel(width float64, title, axis string, choices []morning.Choice, by float64, of func(*morning.Choice) morning.Difference) rowsPanel {
	low, high := 0.0, 0.0
	for i := range choices {
		d := of(&choices[i])
		low, high = math.Min(low, d.CI[0]*by), math.Max(high, d.CI[1]*by)
	}
	margin := 0.08*(high-low) + 0.1
	return rowsPanel{width: width, title: title, axis: axis, low: low - margin, high: high + margin, parts: 4,
		row: func(p *plot.Plot, i int, y float64) {
			upright(p, draw.LineStyle{Color: ink, Width: 1}, 0, y, 0.5)
			d := of(&choices[i])
			p.Add(whisker(draw.LineStyle{Color: plum, Width: 1.4}, d.CI[0]*by, d.CI[1]*by, y, 0.14))
			at := plotter.XYs{{X: d.Mean * by, Y: y}}
			if d.Told() {
				p.Add(spots(draw.CircleGlyph{}, plum, 2.8, at))
			} else {
				p.Add(hollow(draw.CircleGlyph{}, draw.RingGlyph{}, plum, 2.8, at))
			}
		}}
}
