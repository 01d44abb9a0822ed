package output

import (
	"context"
	"errors"
	"io"
	"time"

	"github.com/xuri/excelize/v2"

	"coredays/model/check"
)

// Workbook writes a workbook: what was simulated, results, chances, sites, holes, replications, basis.
func Workbook(ctx context.Context, w io.Writer, r *Report) error {
	s := r.Summary
	sheets := []*sheet{summarySheet(r), resultsSheet(s), chancesSheet(s), sitesSheet(s), holesSheet(s), classesSheet(s), driversSheet(s), consumablesSheet(s)}
	if r.Replications != nil {
		sheets = append(sheets, replicationsSheet(r.Replications, true))
	}
	if r.Log != nil {
		sheets = append(sheets, loggedSheet(s, r.Log))
	}
	sheets = append(sheets, checkSheet(r.Found), basisSheet(r.Basis))
	if r.Orders != nil {
		sheets = append(sheets, alternativesSheet(r.Orders), differencesSheet(r.Orders))
	}
	sheets = append(sheets, dictionary(sheets, ""))
	book := excelize.NewFile()
	err := errors.Join(book.SetDefaultFont("Arial"), signed(book, s.Scenario))
	for i, s := range sheets {
		if i == 0 {
			err = errors.Join(err, book.SetSheetName("Sheet1", s.name))
		} else {
			_, failed := book.NewSheet(s.name)
			err = errors.Join(err, failed)
		}
		err = errors.Join(err, s.fillIn(ctx, book))
	}
	if err == nil {
		err = book.Write(w)
	}
	return errors.Join(err, book.Close())
}

// signed puts the program in the place of the author, where the library names its own.
func signed(book *excelize.File, title string) error {
	const author = "coredays"
	return errors.Join(book.SetDocProps(&excelize.DocProperties{Creator: author, LastModifiedBy: author, Title: printable(title)}),
		book.SetAppProps(&excelize.AppProperties{Application: author}))
}

// fillIn streams a sheet into a workbook: headings that stay in sight, numbers in full precision shown
// with few figures.
func (s *sheet) fillIn(ctx context.Context, book *excelize.File) error {
	if err := s.printed(book); err != nil {
		return err
	}
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
	err = errors.Join(err, out.SetRow("A1", s.headings(styles[len(s.fields)]), excelize.RowOpts{Height: 30}))
	n := 1
	for row := range s.all() {
		if ctx.Err() != nil {
			return ctx.Err()
		}
		n++
		cells := make([]any, len(row))
		for i, cell := range row {
			cells[i] = excelize.Cell{StyleID: styles[i], Value: workbookValue(cell)}
		}
		at, failed := excelize.CoordinatesToCellName(1, n)
		err = errors.Join(err, failed, out.SetRow(at, cells))
	}
	return errors.Join(err, out.Flush())
}

// summarySheet is the answer in words, then what was simulated.
func summarySheet(r *Report) *sheet {
	run := runSheet(r)
	t := &sheet{name: "summary", title: "Summary", fields: run.fields}
	for _, text := range append(headlines(r.Summary), checkedWords(r.Found)) {
		t.add("answer", text)
	}
	for _, f := range facts(r.Summary) {
		text := f.Value
		if f.Note != "" {
			text += " (" + f.Note + ")"
		}
		t.add(f.Label, text)
	}
	t.rows = append(t.rows, run.rows...)
	for _, c := range check.Cautions() {
		t.add("caution", c)
	}
	return t
}

// printed sets a sheet on A4 across, as wide as the page. Sheets of a hundred columns are for screens.
func (s *sheet) printed(book *excelize.File) error {
	const a4, onePage, asMany = 9, 1, 0
	if len(s.fields) > 40 {
		return nil
	}
	fit := true
	return errors.Join(book.SetSheetProps(s.name, &excelize.SheetPropsOptions{FitToPage: &fit}),
		book.SetPageLayout(s.name, &excelize.PageLayoutOptions{Size: new(a4), Orientation: new("landscape"), FitToWidth: new(onePage), FitToHeight: new(asMany)}))
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
	ofDate: "d mmm yyyy hh:mm", ofTruth: "General", ofOrder: "0", ofPoints: "0.0 %", ofNauticalMiles: "0.0"}

// styles are those of the columns, and last that of the headings.
func (s *sheet) styles(book *excelize.File) (ids []int, err error) {
	for _, f := range s.fields {
		style := &excelize.Style{CustomNumFmt: &numberFormats[f.kind], Alignment: &excelize.Alignment{Vertical: "top"}}
		id, failed := book.NewStyle(style)
		ids, err = append(ids, id), errors.Join(err, failed)
	}
	id, failed := book.NewStyle(&excelize.Style{Font: &excelize.Font{Bold: true, Color: "FFFFFF", Family: "Arial"}, Fill: excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{"1D4E74"}},
		Alignment: &excelize.Alignment{WrapText: true, Vertical: "center"}})
	return append(ids, id), errors.Join(err, failed)
}

// width of a column in characters: that of its longest cell within reason.
func (s *sheet) width(column int) float64 {
	widest := max(10, displayed(s.fields[column].heading)/2+4) // headings go on two lines
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
	return float64(min(widest, 120))
}

// workbookValue is a cell; not-a-number leaves it empty, and what is true is told in words, since not
// every program shows it so.
func workbookValue(cell any) any {
	if yes, is := cell.(bool); is {
		return exact(yes)
	}
	if text, is := cell.(string); is {
		return cellText(text)
	}
	if x, is := cell.(float64); is && !defined(x) {
		return nil
	}
	return cell
}
