package sheet

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"github.com/xuri/excelize/v2"

	"coredays/model/result"
	"coredays/output/words"
)

// picture is a chart of a workbook, drawn of the columns of one of its sheets.
type picture struct {
	kind         excelize.ChartType
	title        string
	of           *Table
	across, up   string // keys of the columns
	xName, yName string
	from, to     float64 // of the axis across, where both are given
}

// Colours and size of the charts: those of the report.
const (
	chartInk    = "1C2632"
	chartDeep   = "165482"
	chartWidth  = 900 // pixels
	chartHeight = 400
)

// reportPictures are the curve of days needed and where the days go.
func reportPictures(s *result.Summary, curve *Table) (list []picture) {
	if s.Replications > 1 {
		list = append(list, picture{excelize.Scatter, "Days needed: share of the expeditions done by then", curve, "days", "chance", "days from port to port", "share of the expeditions", wholeDays(math.Floor, s, 0), wholeDays(math.Ceil, s, mostDrawn)})
	}
	return append(list, picture{excelize.Bar, "Where the days go: mean days by class of time, whole programme", Classes(s), "class", "mean_d", "", "mean days", 0, 0})
}

// mostDrawn leaves out the longest expeditions, which would press the rest together. The table has them.
const mostDrawn = 0.99

// wholeDays is the time that a share of the expeditions needs at most, in tens of days towards the edge of a chart.
func wholeDays(round func(float64) float64, s *result.Summary, share float64) float64 {
	if len(s.Needed.Curve) == 0 {
		return 0
	}
	return 10 * round(s.Needed.Curve[int(share*float64(len(s.Needed.Curve)-1))]/words.SecondsOfDay/10)
}

// drawnOn draws pictures on a sheet of their own, one below the other.
func drawnOn(book *excelize.File, drawn []picture) error {
	const name = "charts"
	_, err := book.NewSheet(name)
	lines := false
	err = errors.Join(err, book.SetSheetView(name, 0, &excelize.ViewOptions{ShowGridLines: &lines}), onA4(book, name, 1))
	for i := range drawn {
		err = errors.Join(err, book.AddChart(name, fmt.Sprintf("A%d", 1+22*i), drawn[i].chart()))
	}
	return err
}

// chart is the picture as the library wants it.
func (p *picture) chart() *excelize.Chart {
	font := excelize.Font{Family: "Arial", Size: 10, Color: chartInk}
	axis := func(name string) excelize.ChartAxis {
		return excelize.ChartAxis{Font: font, Title: excelize.ChartTitle{Paragraph: []excelize.RichTextRun{{Text: name, Font: &font}}}, MajorGridLines: name != ""}
	}
	c := &excelize.Chart{Type: p.kind, Title: excelize.ChartTitle{Paragraph: []excelize.RichTextRun{{Text: p.title, Font: &excelize.Font{Family: "Arial", Size: 12, Bold: true, Color: chartInk}}}},
		Legend: excelize.ChartLegend{Position: "none"}, Dimension: excelize.ChartDimension{Width: chartWidth, Height: chartHeight},
		XAxis: axis(p.xName), YAxis: axis(p.yName),
		Series: []excelize.ChartSeries{{Categories: p.column(p.across), Values: p.column(p.up), Fill: excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{chartDeep}},
			Line: excelize.LineOptions{Type: excelize.LineSolid, Width: 2, Fill: excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{chartDeep}}}, Marker: excelize.ChartMarker{Symbol: "none"}}}}
	if p.kind == excelize.Bar {
		c.XAxis.ReverseOrder, c.XAxis.MajorGridLines = true, false // the first row on top
		c.YAxis.TickLabelPosition = excelize.ChartTickLabelHigh    // and the numbers at the foot, beside their name
	}
	if p.shares() {
		none, all := 0.0, 1.0
		c.YAxis.Minimum, c.YAxis.Maximum, c.YAxis.MajorUnit, c.YAxis.NumFmt = &none, &all, 0.2, excelize.ChartNumFmt{CustomNumFmt: "0%"}
	}
	if p.to > p.from {
		c.XAxis.Minimum, c.XAxis.Maximum = &p.from, &p.to
	}
	return c
}

// shares reports whether shares of the expeditions are drawn, none to all.
func (p *picture) shares() bool {
	return slices.ContainsFunc(p.of.Fields, func(f Field) bool { return f.Key == p.up && f.Kind == ofShare })
}

// column is the reference of a column of the sheet, without its heading.
func (p *picture) column(key string) string {
	for i, f := range p.of.Fields {
		if f.Key == key {
			name, _ := excelize.ColumnNumberToName(i + 1)
			return fmt.Sprintf("%s!$%s$2:$%s$%d", p.of.Name, name, name, len(p.of.Rows)+1)
		}
	}
	return ""
}
