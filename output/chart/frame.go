package chart

import (
	"strings"

	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"coredays/output/words"
)

// framed is the chart as it goes into a file by itself: its title above, and below it how to read it
// and what it is of.
func (c *Chart) framed(of string) *framedChart {
	f := &framedChart{Chart: c}
	style := lettering(7.5, stone)
	for _, text := range []string{c.Key, of} {
		f.below = append(f.below, inLines(text, func(s string) bool { return style.Width(s) <= c.width-12 })...)
	}
	f.foot = vg.Length(len(f.below))*lineHeight + 8
	return f
}

type framedChart struct {
	*Chart
	below []string
	foot  vg.Length
}

// Heights of a line of small text and of the title.
const (
	lineHeight  = 10
	titleHeight = 22
)

func (f *framedChart) height() vg.Length { return f.Chart.height + titleHeight + f.foot }

func (f *framedChart) drawOn(canvas draw.Canvas) {
	f.Chart.drawOn(draw.Crop(canvas, 0, 0, f.foot, -titleHeight))
	canvas.SetColor(paper)
	top, foot := canvas.Rectangle, canvas.Rectangle
	top.Min.Y, foot.Max.Y = top.Max.Y-titleHeight, foot.Min.Y+f.foot
	canvas.Fill(top.Path())
	canvas.Fill(foot.Path())
	canvas.FillText(lettering(11, ink), vg.Point{X: 6, Y: top.Min.Y + 6}, words.Printable(f.Title))
	for i, text := range f.below {
		canvas.FillText(lettering(7.5, stone), vg.Point{X: 6, Y: foot.Max.Y - vg.Length(i+1)*lineHeight}, text)
	}
}

// inLines is text in lines that fit.
func inLines(text string, fits func(string) bool) []string {
	lines := []string{""}
	for _, word := range strings.Fields(words.Printable(text)) {
		last := &lines[len(lines)-1]
		if longer := strings.TrimSpace(*last + " " + word); fits(longer) || *last == "" {
			*last = longer
			continue
		}
		lines = append(lines, word)
	}
	return lines
}
