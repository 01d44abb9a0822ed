package chart

import (
	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg/draw"
)

// Colours of the charts of a fit: what was found, what it is held against, and what only fills.
var (
	Found   = deep
	Against = ochre
	Filling = sand2
)

// Bare is an empty plot in the look of the other charts, for what no report has.
func Bare(x, y string) *plot.Plot {
	p := newPlot(x, y)
	gridlines(p, true, true)
	return p
}

// Stroke is a line in a colour of its own.
func Stroke(style *draw.LineStyle) {
	*style = draw.LineStyle{Color: Against, Width: 1.4, Dashes: dashes[1]}
}
