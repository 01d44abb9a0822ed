package chart

import (
	"fmt"
	"math"
	"strings"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"coredays/model/geo"
	"coredays/model/places"
	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/output"
	"coredays/output/words"
)

// trackEvery is the distance of the points of a drawn great circle.
const trackEvery = 30 * unit.NauticalMile

// sheetOf is a piece of the globe laid flat, in kilometres about its middle.
type sheetOf struct {
	projection            geo.Azimuthal
	west, east, low, high float64
}

// at is where a place lies on it.
func (s *sheetOf) at(p geo.Position) plotter.XY {
	east, north := s.projection.At(p)
	return plotter.XY{X: float64(east) / 1000, Y: float64(north) / 1000}
}

// holds reports whether a point lies on it.
func (s *sheetOf) holds(p plotter.XY) bool {
	return p.X >= s.west && p.X <= s.east && p.Y >= s.low && p.Y <= s.high
}

// Widths and heights of a map.
const (
	leastMap  = 600 // km across
	mapMargin = 0.12
	mapHigh   = 0.75 // of its width at most
	mapLow    = 0.4  // at least
)

// sheetFor holds all of some places with a margin around them.
func sheetFor(around []geo.Position) *sheetOf {
	s := &sheetOf{projection: geo.CentredOn(around), west: math.Inf(1), east: math.Inf(-1), low: math.Inf(1), high: math.Inf(-1)}
	for _, p := range around {
		at := s.at(p)
		s.west, s.east, s.low, s.high = min(s.west, at.X), max(s.east, at.X), min(s.low, at.Y), max(s.high, at.Y)
	}
	width, height := max(s.east-s.west, leastMap)*(1+2*mapMargin), (s.high-s.low)*(1+2*mapMargin)
	width = max(width, height/mapHigh)
	height = max(height, width*mapLow)
	x, y := (s.west+s.east)/2, (s.low+s.high)/2
	s.west, s.east, s.low, s.high = x-width/2, x+width/2, y-height/2, y+height/2
	return s
}

// trackChart draws the way of the whole programme on a map with the coast.
func trackChart(r *output.Report) *Chart {
	if r.Plan == nil || len(r.Plan.Sites) == 0 || len(r.Plan.Order) == 0 {
		return nil
	}
	stops := []geo.Position{r.Plan.From.Position}
	all := []geo.Position{r.Plan.From.Position, r.Plan.To.Position}
	for _, n := range r.Plan.Order {
		site := &r.Plan.Sites[n]
		all = append(all, site.Position)
		if !site.Alternate {
			stops = append(append(stops, site.Way()...), site.Position)
		}
	}
	stops = append(append(stops, r.Plan.To.Via...), r.Plan.To.Position)
	track := geo.Track(stops, trackEvery)
	s := sheetFor(append(all, track...))
	p := plot.New()
	p.BackgroundColor = nil
	p.HideAxes()
	p.X.Min, p.X.Max, p.Y.Min, p.Y.Max = s.west, s.east, s.low, s.high
	p.Add(land(s), graticule(s))
	p.Add(line(draw.LineStyle{Color: deep, Width: 1.4}, s.points(track)))
	c := &Chart{Name: "track", Title: "The track", inScale: true, width: chartWidth, height: chartWidth * vg.Length((s.high-s.low)/(s.east-s.west)),
		Key: fmt.Sprintf("Great circles between ports (squares), sites (points) and alternate sites (rings) on Lambert's azimuthal equal-area projection about %s: areas are true, the scale about the middle; "+
			"shaded: cells whose mean height is above the sea (%s). Where marks lie close together not all have room for their name. No chart to sail by.", roughly(s.projection.Centre), places.ReliefSource)}
	c.Desc = "Map of the track: " + s.mark(p, r.Plan) + "."
	c.alone(p)
	return c
}

// roughly is a position to a tenth of a degree.
func roughly(p geo.Position) string {
	tenth := func(x float64) float64 { return math.Abs(math.Round(10*x) / 10) }
	return fmt.Sprintf("%g° %s %g° %s", tenth(p.Latitude), map[bool]string{true: "S", false: "N"}[p.Latitude < 0], tenth(p.Longitude), map[bool]string{true: "W", false: "E"}[p.Longitude < 0])
}

// points are those of a way on the map.
func (s *sheetOf) points(way []geo.Position) (list plotter.XYs) {
	for _, p := range way {
		list = append(list, s.at(p))
	}
	return list
}

// mark puts ports and sites on the map, and says them.
func (s *sheetOf) mark(p *plot.Plot, of *plan.Plan) string {
	var named []string
	var names []remark
	put := func(name string, at geo.Position, shape draw.GlyphDrawer) {
		named = append(named, name+" at "+at.String())
		p.Add(spots(shape, ink, 3.2, plotter.XYs{s.at(at)}))
		side := 1.0
		if on := s.at(at); on.X > s.west+0.75*(s.east-s.west) {
			side = -1
		}
		names = append(names, remark{x: s.at(at).X, y: s.at(at).Y, text: clipped(name, 24), align: side, dx: vg.Length(side) * 5, dy: 4, color: ink})
	}
	put(of.From.Name, of.From.Position, draw.BoxGlyph{})
	for _, n := range of.Order {
		site := &of.Sites[n]
		if site.Alternate {
			put(words.Printable(site.Name), site.Position, draw.RingGlyph{})
			continue
		}
		put(words.Printable(site.Name), site.Position, draw.CircleGlyph{})
	}
	if of.To.Position != of.From.Position {
		put(of.To.Name, of.To.Position, draw.BoxGlyph{})
	}
	p.Add(apart(names))
	return strings.Join(named, "; ")
}

// apart writes names beside their marks, each where it meets neither a mark nor a name before it, and leaves out
// those for which there is no such place: they would be read as one another.
func apart(names []remark) drawing {
	return func(c draw.Canvas, at func(x, y float64) vg.Point) {
		var taken []vg.Rectangle
		for _, name := range names {
			p := at(name.x, name.y)
			taken = append(taken, vg.Rectangle{Min: vg.Point{X: p.X - 3, Y: p.Y - 3}, Max: vg.Point{X: p.X + 3, Y: p.Y + 3}})
		}
		for _, name := range names {
			p := at(name.x, name.y)
			for _, aside := range []remark{name, {align: -name.align, dx: -name.dx, dy: name.dy}, {align: name.align, dx: name.dx, dy: -6}, {align: -name.align, dx: -name.dx, dy: -6}} {
				there := name
				there.align, there.dx, there.dy = aside.align, aside.dx, aside.dy
				if box := there.box(p); within(c.Rectangle, box) && !meets(box, taken) {
					there.write(c, p)
					taken = append(taken, box)
					break
				}
			}
		}
	}
}
