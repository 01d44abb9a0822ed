package chart

import (
	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg/draw"
)

// Colours for what a study draws: what was found, what it is held against, and what only fills.
var (
	Found   = deep
	Against = ochre
	Filling = sand2
)

// Study is an empty plot in the look of the other charts, for a study that draws what no report has.
func Study(x, y string) *plot.Plot {
	p := newPlot(x, y)
	gridlines(p, true, true)
	return p
}

// Stroke is a line of a study in a colour of its own.
func Stroke(style *draw.LineStyle) {
	*style = draw.LineStyle{Color: Against, Width: 1.4, Dashes: dashes[1]}
}
