package chart

import (
	"bytes"
	"fmt"
	"html"
	"html/template"
	"io"
	"regexp"
	"strings"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/vgimg"
	"gonum.org/v1/plot/vg/vgsvg"

	"coredays/output/sheet"
	"coredays/output/words"
)

// Chart is one picture with the words for those who can't see it and the table behind it.
type Chart struct {
	Name          string // of its file
	Title         string
	Desc          string // what it shows, in words and figures
	Key           string // how to read it
	width, height vg.Length
	panels        []panel
	names         plot.Ticker // of the rows of all panels; nil where each panel has an axis of its own
	inScale       bool        // as long upwards as across: a map
	class         string      // of its element
	most          float64     // of the values that have a label behind them
	labels        vg.Length   // room that the longest of these takes
	Behind        []*sheet.Table
}

// panel is a plot in a part of the width of a chart.
type panel struct {
	plot     *plot.Plot
	from, to float64 // shares of the width
}

// page width of A4 within margins of 15 mm.
const chartWidth = 18 * vg.Centimeter

// alone makes a chart of one plot.
func (c *Chart) alone(p *plot.Plot) { c.panels = []panel{{p, 0, 1}} }

// drawOn draws the chart. Its margin holds what gonum/plot lets stand over, half a tick label.
func (c *Chart) drawOn(canvas draw.Canvas) {
	canvas.SetColor(paper)
	canvas.Fill(canvas.Rectangle.Path())
	width := canvas.Max.X - canvas.Min.X
	for _, p := range c.panels {
		part := canvas
		part.Min.X, part.Max.X = canvas.Min.X+width*vg.Length(p.from), canvas.Min.X+width*vg.Length(p.to)
		p.plot.Draw(draw.Crop(part, 4, -4, 4, -4))
	}
}

// SVG is the chart as an element of a page. Text stays text.
func (c *Chart) SVG() (template.HTML, error) { return c.element(c.height, c.drawOn) }

// element is what is drawn as an SVG element with its title and description.
func (c *Chart) element(height vg.Length, drawOn func(draw.Canvas)) (template.HTML, error) {
	canvas := vgsvg.NewWith(vgsvg.UseWH(c.width, height), vgsvg.EmbedFonts(false))
	drawOn(draw.New(canvas))
	var b bytes.Buffer
	if _, err := canvas.WriteTo(&b); err != nil {
		return "", err
	}
	text := b.String()
	start := strings.Index(text, "<svg")
	end := strings.Index(text[start:], ">") + start
	open := fmt.Sprintf(`<svg xmlns="http://www.w3.org/2000/svg" class="%s" width="%.0f" height="%.0f" viewBox="0 0 %.6g %.6g" role="img" aria-labelledby="%[6]s-t %[6]s-d">`+
		"\n<title id=\"%[6]s-t\">%[7]s</title>\n<desc id=\"%[6]s-d\">%[8]s</desc>", words.OrElse(c.class, "chart"), c.width.Points()*4/3, height.Points()*4/3, c.width.Points(), height.Points(),
		c.Name, html.EscapeString(words.Printable(c.Title)), html.EscapeString(words.Printable(c.Desc)))
	return template.HTML(open + shortened(text[end+1:])), nil // all that comes from files is escaped, here and by vgsvg
}

// longNumber has more digits than a screen can show.
var longNumber = regexp.MustCompile(`(\d+\.\d{2})\d+`)

// shortened gives fonts that stand in for that of the measurements, whose widths are the same, and
// numbers to a hundredth of a point.
func shortened(text string) string {
	text = strings.ReplaceAll(text, "font-family:Liberation Sans;", "font-family:Liberation Sans,Arial,Helvetica,sans-serif;")
	return longNumber.ReplaceAllString(text, "$1")
}

// svgFile writes the chart as a file of its own.
func (f *framedChart) svgFile(w io.Writer) error {
	text, err := f.element(f.height(), f.drawOn)
	if err != nil {
		return err
	}
	_, err = io.WriteString(w, `<?xml version="1.0" encoding="UTF-8"?>`+"\n"+strings.Map(words.Shown, string(text)))
	return err
}

// dotsPerInch of a picture for print.
const dotsPerInch = 300

// pngFile writes the chart as a picture.
func (f *framedChart) pngFile(w io.Writer) error {
	canvas := vgimg.NewWith(vgimg.UseWH(f.width, f.height()), vgimg.UseDPI(dotsPerInch))
	f.drawOn(draw.New(canvas))
	_, err := vgimg.PngCanvas{Canvas: canvas}.WriteTo(w)
	return err
}
