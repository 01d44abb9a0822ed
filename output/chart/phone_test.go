package chart

import (
	"encoding/xml"
	"strconv"
	"strings"
	"testing"

	"gonum.org/v1/plot/vg"

	"coredays/output/outputtest"
)

// phoneCharts are all charts of a report, of orders and of cuts.
func phoneCharts() []*Chart {
	charts := append(Of(outputtest.ReportOn(outputtest.Ordinary())), Of(outputtest.ReportOn(outputtest.LongNames()))...)
	cuts := outputtest.FourCuts()
	charts = append(append(charts, Alternatives(outputtest.ThreeOrders())...), Alternatives(outputtest.ManyDates())...)
	return append(append(charts, Cuts(cuts)...), MoreDays(cuts))
}

// Text that stands out of a chart is cut off by the screen. Lines of text lie; that of an upright axis is left out.
func TestNoTextStandsOutOfAChartOnATelephone(t *testing.T) {
	for _, c := range phoneCharts() {
		svg, err := c.PhoneSVG()
		if err != nil {
			t.Fatal(err)
		}
		var picture struct {
			Width string `xml:"width,attr"`
			Texts []struct {
				X     string `xml:"x,attr"`
				Style string `xml:"style,attr"`
				Text  string `xml:",chardata"`
			} `xml:"g>text"`
		}
		if err := xml.Unmarshal([]byte(svg), &picture); err != nil {
			t.Fatal(err)
		}
		if picture.Width != "340" || len(picture.Texts) < 5 {
			t.Errorf("%s: %s pixels wide, %d texts", c.Name, picture.Width, len(picture.Texts))
		}
		for _, text := range picture.Texts {
			x, _ := strconv.ParseFloat(text.X, 64)
			_, size, _ := strings.Cut(text.Style, "font-size:")
			points, _ := strconv.ParseFloat(size[:strings.Index(size, "px")], 64)
			const blur = 1 // of a point: the halo around letters
			if end := x + lettering(vg.Length(points), ink).Width(text.Text).Points(); x < -blur || end > phoneWidth.Points()+blur {
				t.Errorf("%s: %q goes from %.0f to %.0f points, and there are %.0f", c.Name, text.Text, x, end, phoneWidth.Points())
			}
		}
	}
}

// The chart of a page is as it was once it has been drawn for a telephone.
func TestAChartIsAsBeforeOnceATelephoneHasIt(t *testing.T) {
	for _, c := range phoneCharts() {
		before := svgOf(t, c)
		if _, err := c.PhoneSVG(); err != nil {
			t.Fatal(err)
		}
		if svgOf(t, c) != before {
			t.Errorf("%s is another one", c.Name)
		}
	}
}
