package chart

import (
	"gonum.org/v1/plot"
	"gonum.org/v1/plot/font"
	plottext "gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"

	"coredays/output/words"
)

// wideText measures letters that the font of the charts doesn't have, of Chinese, Japanese and Korean, as
// the em that browsers set them on.
type wideText struct{ plottext.Plain }

// lettersOf are the fonts of the charts.
var lettersOf = wideText{plottext.Plain{Fonts: plot.DefaultTextHandler.Cache()}}

// Box is the width, height and depth of a line.
func (w wideText) Box(line string, f font.Font) (width, height, depth vg.Length) {
	narrow, wide := sorted(line)
	width, height, depth = w.Plain.Box(narrow, f)
	return width + vg.Length(wide)*f.Size, height, depth
}

// Draw writes a text; one with wide letters has one line and lies.
func (w wideText) Draw(c vg.Canvas, text string, style plottext.Style, at vg.Point) {
	if _, wide := sorted(text); wide > 0 {
		whole, _, _ := w.Box(text, style.Font)
		width, _, _ := w.Plain.Box(text, style.Font)
		at.X += vg.Length(style.XAlign) * (whole - width)
	}
	w.Plain.Draw(c, text, style, at)
}

// sorted are the narrow letters of a text, and how many are wide.
func sorted(text string) (narrow string, wide int) {
	for _, r := range text {
		if words.Displayed(string(r)) > 1 {
			wide++
			continue
		}
		narrow += string(r)
	}
	return narrow, wide
}

// clipped shortens a name for the margin of a chart to so many columns, of which a wide letter takes
// two; the table beside it has the whole.
func clipped(name string, width int) string {
	name = words.Printable(name)
	if words.Displayed(name) <= width {
		return name
	}
	return words.Pieces(name, width-1)[0] + "…"
}

// clippedBefore keeps the end of a name.
func clippedBefore(name string, width int) string {
	name = words.Printable(name)
	if words.Displayed(name) <= width {
		return name
	}
	letters := []rune(name)
	for words.Displayed(string(letters)) > width-1 {
		letters = letters[1:]
	}
	return "…" + string(letters)
}

// trimmed shortens a name to a width on paper.
func trimmed(name string, style plottext.Style, width vg.Length) string {
	name = words.Printable(name)
	for columns := words.Displayed(name) - 1; columns > 1 && style.Width(name) > width; columns-- {
		name = clipped(name, columns)
	}
	return name
}
