package chart

import (
	"strings"
	"testing"

	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/vgsvg"

	"coredays/output/outputtest"
	"coredays/output/text"
)

// svgOf is the picture of one chart.
func svgOf(t *testing.T, c *Chart) string {
	t.Helper()
	svg, err := c.SVG()
	if err != nil {
		t.Fatal(err)
	}
	return string(svg)
}

func TestEveryTextOfAChartNamesFontsThatStandIn(t *testing.T) {
	charts := append(Of(outputtest.ReportOn(outputtest.Ordinary())), Alternatives(outputtest.ThreeOrders())...)
	for _, c := range append(charts, Cuts(outputtest.FourCuts())...) {
		svg := svgOf(t, c)
		all, whole := strings.Count(svg, "font-family:"), strings.Count(svg, "font-family:Liberation Sans,Arial,Helvetica,sans-serif;")
		if all == 0 || all != whole {
			t.Errorf("%s: %d of %d texts name a font that stands in", c.Name, whole, all)
		}
	}
}

func TestTheShareWithinTheDaysIsWrittenOnlyBetweenNoneAndAll(t *testing.T) {
	for fits, want := range map[float64]bool{0: false, 0.4: true, 1: false} {
		s := outputtest.ReportOn(outputtest.Ordinary()).Summary
		s.Needed.Fits = fits
		svg := svgOf(t, curveChart(s))
		if got := strings.Contains(svg, "of 100 need no more<"); got != want {
			t.Errorf("%g of all: told is %v", fits, got)
		}
	}
}

func TestWordsMoveToTheSideThatALineLeavesFree(t *testing.T) {
	canvas := draw.New(vgsvg.New(200, 100))
	at := func(x, y float64) vg.Point { return vg.Point{X: vg.Length(x), Y: vg.Length(y)} }
	written := func(lines ...plotter.XYs) (left vg.Length) {
		recorder := canvas
		svg := vgsvg.New(200, 100)
		recorder.Canvas = svg
		whereFree([]remark{{x: 100, y: 50, text: "P50 55.4 d", bare: true}}, lines...)(recorder, at)
		var b strings.Builder
		if _, err := svg.WriteTo(&b); err != nil {
			t.Fatal(err)
		}
		_, rest, _ := strings.Cut(b.String(), `<text x="`)
		x, _, _ := strings.Cut(rest, `"`)
		return vg.Length(number64(t, x))
	}
	if x := written(); x < 100 {
		t.Errorf("with room everywhere the words begin at %v, left of their mark", x)
	}
	if x := written(plotter.XYs{{X: 110, Y: 0}, {X: 110, Y: 100}}); x > 100-20 {
		t.Errorf("a line right of the mark, and the words begin at %v", x)
	}
	if x := written(plotter.XYs{{X: 90, Y: 0}, {X: 90, Y: 100}}); x < 100 {
		t.Errorf("a line left of the mark, and the words begin at %v", x)
	}
}

func TestWordsAtTheEdgeAreMovedInside(t *testing.T) {
	svg := vgsvg.New(200, 100)
	r := remark{text: "56 sea days", inside: true, bare: true}
	for _, x := range []vg.Length{2, 198} {
		r.write(draw.New(svg), vg.Point{X: x, Y: 50})
	}
	var b strings.Builder
	if _, err := svg.WriteTo(&b); err != nil {
		t.Fatal(err)
	}
	for _, part := range strings.Split(b.String(), `<text x="`)[1:] {
		x, _, _ := strings.Cut(part, `"`)
		if left := vg.Length(number64(t, x)); left < 0 || left+lettering(8, ink).Width(r.text) > 200.01 { // places are written to a hundredth
			t.Errorf("the words begin at %v and stand out", left)
		}
	}
}

func TestOneExpeditionIsDoneOrNot(t *testing.T) {
	if svg := svgOf(t, DoneChart(outputtest.Single())); strings.Contains(svg, "of 100") || !strings.Contains(svg, ">done in this one expedition<") {
		t.Error("one expedition is told in hundreds")
	}
	for _, f := range text.Facts(outputtest.Single()) {
		if f.Note != "" {
			t.Errorf("%s: %q", f.Label, f.Note)
		}
	}
	noted := 0
	for _, f := range text.Facts(outputtest.Ordinary()) {
		if f.Note != "" {
			noted++
		}
	}
	if noted == 0 {
		t.Error("the tiles of many expeditions tell nothing of their spread")
	}
}

func TestLongChartsHaveTheirScaleAtBothEnds(t *testing.T) {
	few, many := Alternatives(outputtest.ThreeOrders())[0], Alternatives(outputtest.ManyDates())[0]
	for c, want := range map[*Chart]int{few: 1, many: 2} {
		if got := strings.Count(svgOf(t, c), ">100</text>"); got != want { // of the chances
			t.Errorf("%d rows: the end of the scale is written %d times", len(c.Behind[0].Rows), got)
		}
	}
}
