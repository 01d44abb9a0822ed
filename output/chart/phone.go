package chart

import (
	"html/template"
	"strings"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
)

// A chart on a telephone: as wide as one held upright lets its text stay readable, and its panels, one below the other.
const (
	phoneWidth = 9 * vg.Centimeter // 340 pixels of CSS
	phoneName  = 20                // letters of the name of a row
	tickApart  = 5                 // points between the labels of an axis
)

// PhoneSVG is the chart drawn anew for a narrow screen.
func (c *Chart) PhoneSVG() (template.HTML, error) {
	phone := *c
	phone.width, phone.Name, phone.class = phoneWidth, c.Name+"-phone", "chart phone"
	if c.inScale {
		phone.height = c.height * phoneWidth / c.width
	}
	return phone.element(phone.height*vg.Length(len(c.panels)), phone.drawStacked)
}

// drawStacked draws the panels one below the other. Plots are as before afterwards.
func (c *Chart) drawStacked(canvas draw.Canvas) {
	canvas.SetColor(paper)
	canvas.Fill(canvas.Rectangle.Path())
	for i, p := range c.panels {
		part := canvas
		part.Max.Y -= vg.Length(i) * c.height
		part.Min.Y = part.Max.Y - c.height
		x, y, most := p.plot.X.Tick.Marker, p.plot.Y.Tick.Marker, p.plot.X.Max
		if c.names != nil {
			p.plot.Y.Tick.Marker = c.names
		}
		p.plot.Y.Tick.Marker = shortNames(p.plot.Y.Tick.Marker.Ticks(p.plot.Y.Min, p.plot.Y.Max))
		long := canvas.Max.X - canvas.Min.X - widest(&p.plot.Y) - 20
		if c.labels > 0 && long > 2*c.labels {
			p.plot.X.Max = max(most, p.plot.X.Min+(c.most-p.plot.X.Min)*float64(long/(long-c.labels)))
		}
		p.plot.X.Tick.Marker = fewer(&p.plot.X, long)
		p.plot.Draw(draw.Crop(part, 4, -4, 4, -4))
		p.plot.X.Tick.Marker, p.plot.Y.Tick.Marker, p.plot.X.Max = x, y, most
	}
}

// shortNames are ticks whose names leave room for what is drawn.
func shortNames(ticks []plot.Tick) (list plot.ConstantTicks) {
	for _, t := range ticks {
		list = append(list, plot.Tick{Value: t.Value, Label: clipped(t.Label, phoneName)})
	}
	return list
}

// labelWidth is the room that the label of a tick takes along an axis.
func labelWidth(a *plot.Axis, label string) (most vg.Length) {
	for _, line := range strings.Split(label, "\n") {
		most = max(most, a.Tick.Label.Width(line))
	}
	return most
}

// widest is the room that the labels of an axis take.
func widest(a *plot.Axis) (most vg.Length) {
	for _, t := range a.Tick.Marker.Ticks(a.Min, a.Max) {
		most = max(most, labelWidth(a, t.Label))
	}
	return most
}

// fewer are the ticks of an axis so long, as many of them named as have room.
func fewer(a *plot.Axis, long vg.Length) plot.ConstantTicks {
	ticks := a.Tick.Marker.Ticks(a.Min, a.Max)
	named := 0
	for _, t := range ticks {
		if t.Label != "" {
			named++
		}
	}
	each := 1
	for each < named && vg.Length((named+each-1)/each)*(widest(a)+tickApart) > long {
		each++
	}
	list, n := plot.ConstantTicks{}, 0
	for _, t := range ticks {
		if t.Label != "" {
			if n%each != 0 {
				t.Label = ""
			}
			n++
		}
		list = append(list, t)
	}
	return list
}
