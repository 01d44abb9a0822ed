package chart

import (
	"fmt"
	"math"

	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"coredays/model/geo"
	"coredays/model/places"
)

// mostStrips is about how many rows of cells a map is made of: more would be finer than can be seen, and a heavy
// page.
const mostStrips = 130

// land fills the cells of land on a map, those of a row that touch as one strip.
func land(s *sheetOf) drawing {
	var strips []plotter.XYs
	step := places.ReliefGrid.Degrees * math.Max(1, math.Ceil((s.high-s.low)/111/places.ReliefGrid.Degrees/mostStrips))
	beyond := *s // a cell further, which is cut off at the edge
	margin := 2 * 111 * step
	beyond.west, beyond.east, beyond.low, beyond.high = s.west-margin, s.east+margin, s.low-margin, s.high+margin
	for south := -90.0; south < 90; south += step {
		from, open := 0.0, false
		for west := -180.0; west <= 180; west += step {
			centre := geo.Position{Latitude: south + step/2, Longitude: west + step/2}
			is := west < 180 && beyond.holds(s.at(centre)) && places.ReliefAt(centre).MostlyLand()
			if is && !open {
				from, open = west, true
			}
			if !is && open {
				strips, open = append(strips, s.strip(south, south+step, from, west, step)), false
			}
		}
	}
	return func(c draw.Canvas, at func(x, y float64) vg.Point) {
		for _, around := range strips {
			points := c.ClipPolygonXY(placed(around, at))
			c.FillPolygon(sand2, points)
			if len(points) > 1 { // so that no hairline is left between strips
				c.StrokeLines(draw.LineStyle{Color: sand2, Width: 0.4}, append(points, points[0]))
			}
		}
	}
}

// strip goes around the cells of a row.
func (s *sheetOf) strip(south, north, west, east, step float64) (around plotter.XYs) {
	for x := west; x <= east+1e-9; x += step {
		around = append(around, s.at(geo.Position{Latitude: south, Longitude: x}))
	}
	for x := east; x >= west-1e-9; x -= step {
		around = append(around, s.at(geo.Position{Latitude: north, Longitude: x}))
	}
	return around
}

// graticule draws meridians and parallels, each with its degrees at the edge of the map.
func graticule(s *sheetOf) drawing {
	step := latticeStep((s.high - s.low) / 111)
	var lines []plotter.XYs
	var labels []remark
	add := func(text string, upright bool, place func(i float64) geo.Position) {
		var run plotter.XYs
		var edge *plotter.XY
		for i := 0.0; i <= 1; i += 1.0 / 720 {
			at := s.at(place(i))
			if !s.holds(at) {
				if len(run) > 1 {
					lines = append(lines, run)
				}
				run = nil
				continue
			}
			run = append(run, at)
			if edge == nil || upright && at.Y < edge.Y || !upright && at.X < edge.X {
				edge = &at
			}
		}
		if len(run) > 1 {
			lines = append(lines, run)
		}
		if edge != nil && s.room(*edge, labels) {
			labels = append(labels, remark{x: edge.X, y: edge.Y, text: text, align: 1, dx: 2, dy: 3, color: stone})
		}
	}
	for longitude := -180.0; longitude < 180; longitude += step {
		add(degrees(longitude, "E", "W"), true, func(i float64) geo.Position {
			return geo.Position{Latitude: -89 + 178*i, Longitude: longitude}
		})
	}
	for latitude := -90 + step; latitude < 90; latitude += step {
		add(degrees(latitude, "N", "S"), false, func(i float64) geo.Position {
			return geo.Position{Latitude: latitude, Longitude: -180 + 360*i}
		})
	}
	return func(c draw.Canvas, at func(x, y float64) vg.Point) {
		for _, l := range lines {
			line(draw.LineStyle{Color: faint, Width: 0.6}, l)(c, at)
		}
		var taken []vg.Rectangle
		for _, l := range labels { // on a telephone not all have room
			box := l.box(at(l.x, l.y))
			if meets(box, taken) {
				continue
			}
			taken = append(taken, box)
			c.FillText(lettering(7, stone), at(l.x, l.y).Add(vg.Point{X: l.dx, Y: l.dy}), l.text)
		}
	}
}

// room reports whether a label fits at a point: on the map, and off the other labels.
func (s *sheetOf) room(at plotter.XY, labels []remark) bool {
	wide, high := 0.07*(s.east-s.west), 0.03*(s.east-s.west)
	if at.X > s.east-wide || at.Y > s.high-high {
		return false
	}
	for _, l := range labels {
		if math.Abs(l.x-at.X) < wide && math.Abs(l.y-at.Y) < high {
			return false
		}
	}
	return true
}

// latticeStep is the distance of the lines of a map so many degrees high.
func latticeStep(high float64) float64 {
	for _, step := range []float64{1, 2, 5, 10, 15} {
		if high/step <= 6 {
			return step
		}
	}
	return 30
}

// degrees writes a meridian or a parallel.
func degrees(value float64, positive, negative string) string {
	switch {
	case value == 0 || math.Abs(value) == 180:
		return fmt.Sprintf("%.0f°", math.Abs(value))
	case value < 0:
		return fmt.Sprintf("%.0f° %s", -value, negative)
	}
	return fmt.Sprintf("%.0f° %s", value, positive)
}
