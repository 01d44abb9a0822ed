package chart

import (
	"math"
	"slices"

	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"

	"coredays/model/sea"
	"coredays/output/words"
)

// mostLines is how many lines with names a panel of the sea takes.
const mostLines = 6

// Widths of a panel of the sea between its axes, and of the longest name beside the lines, from a look
// at them.
const (
	monthsWidth  = 7.6 * vg.Centimeter
	mostNameRoom = 2.4 * vg.Centimeter
)

// namedSeas are the places whose lines are drawn and named.
func namedSeas(seas []*sea.Study) []int {
	means := make([]float64, len(seas))
	for i, s := range seas {
		means[i] = yearMean(s)
	}
	return namedOf(means)
}

// namedOf are all of few, and of many the calmest and the roughest.
func namedOf(means []float64) (list []int) {
	if len(means) > mostLines {
		return slices.Compact([]int{slices.Index(means, slices.Min(means)), slices.Index(means, slices.Max(means))})
	}
	for i := range means {
		list = append(list, i)
	}
	return list
}

// yearMean is the mean significant wave height of the months, m.
func yearMean(s *sea.Study) float64 {
	total := 0.0
	for m := range 12 {
		total += s.MadeYear.Mean(m)
	}
	return total / 12
}

// nameRoom is what the names beside the lines take.
func nameRoom(seas []*sea.Study) vg.Length {
	room, style := vg.Length(0), lettering(8, ink)
	for _, i := range namedSeas(seas) {
		room = max(room, min(style.Width(words.Printable(seas[i].Place)), mostNameRoom))
	}
	return room + 12 // the way from the end of the line
}

// bandOf goes around all lines, month by month.
func bandOf(lines []plotter.XYs) plotter.XYs {
	low, high := map[float64]float64{}, map[float64]float64{}
	var months []float64
	for _, l := range lines {
		for _, xy := range l {
			if _, known := low[xy.X]; !known {
				months = append(months, xy.X)
				low[xy.X], high[xy.X] = math.Inf(1), math.Inf(-1)
			}
			low[xy.X], high[xy.X] = min(low[xy.X], xy.Y), max(high[xy.X], xy.Y)
		}
	}
	slices.Sort(months)
	var around plotter.XYs
	for _, m := range months {
		around = append(around, plotter.XY{X: m, Y: low[m]})
	}
	for _, m := range slices.Backward(months) {
		around = append(around, plotter.XY{X: m, Y: high[m]})
	}
	return around
}
