package sheet

import (
	"errors"
	"fmt"

	"github.com/xuri/excelize/v2"

	"coredays/model/result"
)

// picture is a chart of a workbook, drawn of the columns of one of its sheets.
type picture struct {
	kind         excelize.ChartType
	title        string
	of           *Table
	across, up   string // keys of the columns
	xName, yName string
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
		list = append(list, picture{excelize.Scatter, "Days needed: share of the expeditions done by then", curve, "days", "chance", "days from port to port", "share of the expeditions"})
	}
	return append(list, picture{excelize.Bar, "Where the days go: mean days by class of time, whole programme", Classes(s), "class", "mean_d", "", "mean days"})
}

// drawnOn draws pictures on a sheet of their own, one below the other.
func drawnOn(book *excelize.File, drawn []picture) error {
	const name = "charts"
	_, err := book.NewSheet(name)
	lines := false
	err = errors.Join(err, book.SetSheetView(name, 0, &excelize.ViewOptions{ShowGridLines: &lines}))
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
			Line: excelize.LineOptions{Width: 2, Fill: excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{chartDeep}}}, Marker: excelize.ChartMarker{Symbol: "none"}}}}
	if p.kind == excelize.Bar {
		c.XAxis.ReverseOrder, c.XAxis.MajorGridLines = true, false // the first row on top
	}
	return c
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
