package output

import (
	"errors"
	"io"
	"time"

	"github.com/xuri/excelize/v2"
)

// Workbook writes a workbook: what was simulated, results, chances, sites, holes, replications, basis.
func Workbook(w io.Writer, r *Report) error {
	s := r.Summary
	sheets := []*sheet{runSheet(r), resultsSheet(s), chancesSheet(s), sitesSheet(s), holesSheet(s), classesSheet(s), driversSheet(s), consumablesSheet(s)}
	if r.Replications != nil {
		sheets = append(sheets, replicationsSheet(r.Replications, true))
	}
	sheets = append(sheets, checkSheet(r.Found), basisSheet(r.Basis))
	sheets = append(sheets, dictionary(sheets, ""))
	sheets[0].name = "summary"
	book := excelize.NewFile()
	err := book.SetDefaultFont("Arial")
	for i, s := range sheets {
		if i == 0 {
			err = errors.Join(err, book.SetSheetName("Sheet1", s.name))
		} else {
			_, failed := book.NewSheet(s.name)
			err = errors.Join(err, failed)
		}
		err = errors.Join(err, s.fillIn(book))
	}
	if err == nil {
		err = book.Write(w)
	}
	return errors.Join(err, book.Close())
}

// fillIn streams a sheet into a workbook: headings that stay in sight, numbers in full precision shown
// with few figures.
func (s *sheet) fillIn(book *excelize.File) error {
	out, err := book.NewStreamWriter(s.name)
	if err != nil {
		return err
	}
	styles, err := s.styles(book)
	if err != nil {
		return err
	}
	for i := range s.fields {
		err = errors.Join(err, out.SetColWidth(i+1, i+1, s.width(i)))
	}
	err = errors.Join(err, out.SetPanes(&excelize.Panes{Freeze: true, YSplit: 1, TopLeftCell: "A2", ActivePane: "bottomLeft"}))
	err = errors.Join(err, out.SetRow("A1", s.headings(styles[len(s.fields)])))
	for n, row := range s.rows {
		cells := make([]any, len(row))
		for i, cell := range row {
			cells[i] = excelize.Cell{StyleID: styles[i], Value: workbookValue(cell)}
		}
		at, failed := excelize.CoordinatesToCellName(1, n+2)
		err = errors.Join(err, failed, out.SetRow(at, cells))
	}
	return errors.Join(err, out.Flush())
}

func (s *sheet) headings(style int) []any {
	cells := make([]any, len(s.fields))
	for i, f := range s.fields {
		text := f.heading
		if u := f.kind.unit(); u != "" && u != "1" && f.kind != ofTruth {
			text += " (" + u + ")"
		}
		cells[i] = excelize.Cell{StyleID: style, Value: text}
	}
	return cells
}

// numberFormats show few figures of a number that has all of them.
var numberFormats = [...]string{ofWords: "@", ofCount: "0", ofNumber: "0.0##", ofDays: "0.0", ofHours: "0.0", ofMetres: "0.0", ofPercent: "0.0", ofShare: "0 %",
	ofDate: "d mmm yyyy hh:mm", ofTruth: "General", ofOrder: "0"}

// styles are those of the columns, and last that of the headings.
func (s *sheet) styles(book *excelize.File) (ids []int, err error) {
	for _, f := range s.fields {
		style := &excelize.Style{CustomNumFmt: &numberFormats[f.kind], Alignment: &excelize.Alignment{Vertical: "top"}}
		id, failed := book.NewStyle(style)
		ids, err = append(ids, id), errors.Join(err, failed)
	}
	id, failed := book.NewStyle(&excelize.Style{Font: &excelize.Font{Bold: true, Color: "FFFFFF"}, Fill: excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{"1D4E74"}},
		Alignment: &excelize.Alignment{WrapText: true, Vertical: "center"}})
	return append(ids, id), errors.Join(err, failed)
}

// width of a column in characters: that of its longest cell within reason.
func (s *sheet) width(column int) float64 {
	widest := 10
	for i, row := range s.rows {
		if i == 500 {
			break // the rest is alike
		}
		if text, is := row[column].(string); is {
			widest = max(widest, displayed(text)+2)
		}
		if _, is := row[column].(time.Time); is {
			widest = 18
		}
	}
	return float64(min(widest, 60))
}

// workbookValue is a cell; not-a-number leaves it empty.
func workbookValue(cell any) any {
	if x, is := cell.(float64); is && !defined(x) {
		return nil
	}
	return cell
}
