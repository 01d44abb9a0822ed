package sheet

import (
	"context"
	"errors"
	"io"
	"math"
	"strconv"
	"strings"
	"time"

	"github.com/xuri/excelize/v2"

	"coredays/model/check"
	"coredays/output"
	"coredays/output/text"
	"coredays/output/words"
)

// Workbook writes a workbook: what was simulated, results, chances, sites, holes, replications, basis.
func Workbook(ctx context.Context, w io.Writer, r *output.Report) error {
	s := r.Summary
	sheets := []*Table{summarySheet(r), resultsSheet(s), Chances(s), Sites(s), Holes(s), Classes(s), Drivers(s), Consumables(s)}
	if r.Replications != nil {
		sheets = append(sheets, replicationsSheet(r.Replications, true))
	}
	if r.Log != nil {
		sheets = append(sheets, Logged(s, r.Log))
	}
	sheets = append(sheets, Check(r.Found), Basis(r.Basis))
	curve := Curve(s)
	if s.Replications > 1 {
		sheets = append(sheets, curve)
	}
	if r.Orders != nil {
		sheets = append(sheets, Alternatives(r.Orders), Differences(r.Orders))
	}
	return writeBook(ctx, w, s.Scenario, sheets, reportPictures(s, curve))
}

// writeBook writes sheets, a dictionary of their columns and, behind the first of them, what is drawn of them.
func writeBook(ctx context.Context, w io.Writer, title string, sheets []*Table, drawn []picture) error {
	sheets = append(sheets, dictionary(sheets, ""))
	book := excelize.NewFile()
	err := errors.Join(book.SetDefaultFont("Arial"), signed(book, title))
	for i, s := range sheets {
		if i == 0 {
			err = errors.Join(err, book.SetSheetName("Sheet1", s.Name))
		} else {
			_, failed := book.NewSheet(s.Name)
			err = errors.Join(err, failed)
		}
		if i == 1 && len(drawn) > 0 {
			err = errors.Join(err, drawnOn(book, drawn))
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
	return errors.Join(book.SetDocProps(&excelize.DocProperties{Creator: author, LastModifiedBy: author, Title: words.Printable(title)}),
		book.SetAppProps(&excelize.AppProperties{Application: author}))
}

// fillIn streams a sheet into a workbook: headings that stay in sight, numbers in full precision shown
// with few figures.
func (s *Table) fillIn(ctx context.Context, book *excelize.File) error {
	if err := errors.Join(s.filtered(book), s.printed(book)); err != nil { // in this order: a filter sets the properties of its sheet anew
		return err
	}
	out, err := book.NewStreamWriter(s.Name)
	if err != nil {
		return err
	}
	styles, err := s.styles(book)
	if err != nil {
		return err
	}
	for i := range s.Fields {
		err = errors.Join(err, out.SetColWidth(i+1, i+1, s.width(i)))
	}
	err = errors.Join(err, out.SetPanes(&excelize.Panes{Freeze: true, YSplit: 1, TopLeftCell: "A2", ActivePane: "bottomLeft"}))
	err = errors.Join(err, out.SetRow("A1", s.headings(styles.heading), excelize.RowOpts{Height: 30}))
	n := 1
	for row := range s.all() {
		if ctx.Err() != nil {
			return ctx.Err()
		}
		n++
		cells := make([]any, len(row))
		for i, cell := range row {
			cells[i] = excelize.Cell{StyleID: styles.of(i, cell), Value: workbookValue(cell)}
		}
		at, failed := excelize.CoordinatesToCellName(1, n)
		err = errors.Join(err, failed, out.SetRow(at, cells, excelize.RowOpts{Height: s.height(row)}))
	}
	return errors.Join(err, out.Flush())
}

// filtered gives every column of a table its filter, so that one sorts and picks rows where they stand. It stands before
// the rows are streamed, and says how many there will be.
func (s *Table) filtered(book *excelize.File) error {
	rows := 1
	for range s.all() {
		rows++
	}
	if rows < 3 { // nothing to pick from
		return nil
	}
	last, err := excelize.CoordinatesToCellName(len(s.Fields), rows)
	if err != nil {
		return err
	}
	return book.AutoFilter(s.Name, "A1:"+last, nil)
}

// summarySheet is the answer in words, then its figures as numbers, then what was simulated.
func summarySheet(r *output.Report) *Table {
	return summaryOf(append(text.Headlines(r.Summary), text.CheckedWords(r.Found)), append(text.Facts(r.Summary), text.MoreFacts(r.Summary, r.Found)...), Run(r))
}

// summaryOf is a summary of sentences, facts and what they rest on.
func summaryOf(sentences []string, facts []text.Fact, run *Table) *Table {
	t := &Table{Name: "summary", Title: "Summary", Fields: []Field{{"what", "what", OfWords, ""}, {"value", "value", OfWords, "as people read it"},
		{"figure", "figure", ofNumber, "of value, with all its digits; P50 where there are several"}, {"unit", "unit", OfWords, "of the figure; 1 for counts and shares"}}}
	for _, text := range sentences {
		t.Add("answer", text, math.NaN(), "")
	}
	for _, f := range facts {
		text := f.Value
		if f.Note != "" {
			text += " (" + f.Note + ")"
		}
		t.Add(f.Label, text, numberIn(f.Exact), unitOf(f.Value))
	}
	for _, row := range run.Rows {
		value, _ := row[1].(string)
		t.Add(row[0], value, numberIn(value), words.OrLess("1", words.Defined(numberIn(value))))
	}
	for _, c := range check.Cautions() {
		t.Add("caution", c, math.NaN(), "")
	}
	return t
}

// numberIn is the number that a text is; not-a-number where it is none.
func numberIn(text string) float64 {
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		return math.NaN()
	}
	return x
}

// unitOf is the unit of the figure behind a fact: people read shares in per cent.
func unitOf(value string) string {
	_, unit, _ := strings.Cut(value, " ")
	if unit == "d" || unit == "m" {
		return unit
	}
	return "1"
}

// printed sets a sheet on A4 across, as wide as the page. Sheets of a hundred columns are for screens.
func (s *Table) printed(book *excelize.File) error {
	if len(s.Fields) > 40 {
		return nil
	}
	return errors.Join(onA4(book, s.Name, asManyPages),
		book.SetDefinedName(&excelize.DefinedName{Name: "_xlnm.Print_Titles", RefersTo: "'" + s.Name + "'!$1:$1", Scope: s.Name})) // headings on each page
}

// asManyPages one below the other as a sheet needs.
const asManyPages = 0

// onA4 sets a sheet across on A4, as wide as the page.
func onA4(book *excelize.File, name string, pages int) error {
	const a4, onePage = 9, 1
	fit := true
	return errors.Join(book.SetSheetProps(name, &excelize.SheetPropsOptions{FitToPage: &fit}),
		book.SetPageLayout(name, &excelize.PageLayoutOptions{Size: new(a4), Orientation: new("landscape"), FitToWidth: new(onePage), FitToHeight: new(pages)}))
}

func (s *Table) headings(style int) []any {
	cells := make([]any, len(s.Fields))
	for i, f := range s.Fields {
		text := f.Heading
		if u := f.Kind.Unit(); u != "" && u != "1" && f.Kind != OfTruth {
			text += " (" + u + ")"
		}
		cells[i] = excelize.Cell{StyleID: style, Value: text}
	}
	return cells
}

// numberFormats show few figures of a number that has all of them.
var numberFormats = [...]string{OfWords: "@", ofCount: "0", ofNumber: "0.0##", ofDays: "0.0", ofHours: "0.0", ofMetres: "0.0", ofPercent: "0.0", ofShare: "0 %",
	ofDate: "d mmm yyyy hh:mm", OfTruth: "General", ofOrder: "0", ofPoints: "0.0 %", ofNauticalMiles: "0.0"}

// bookStyles are the styles of a table's cells, by number in the workbook.
type bookStyles struct {
	columns, whole []int // whole: of numbers without a fraction, which else would be shown with one
	heading        int
}

// of is the style of a cell in a column.
func (b *bookStyles) of(column int, cell any) int {
	if x, is := cell.(float64); is && x == math.Trunc(x) {
		return b.whole[column]
	}
	return b.columns[column]
}

// styles are those of a table.
func (s *Table) styles(book *excelize.File) (b bookStyles, err error) {
	for i, f := range s.Fields {
		style := &excelize.Style{CustomNumFmt: &numberFormats[f.Kind], Alignment: &excelize.Alignment{Vertical: "top", WrapText: s.width(i) >= widestCell}}
		if f.Kind == OfWords && i > 0 {
			style.Alignment.Horizontal, style.Alignment.Indent = "left", 1 // apart from a number before it
		}
		id, failed := book.NewStyle(style)
		b.columns, b.whole, err = append(b.columns, id), append(b.whole, id), errors.Join(err, failed)
		if f.Kind == ofNumber {
			whole := *style
			whole.CustomNumFmt = &numberFormats[ofCount]
			b.whole[i], failed = book.NewStyle(&whole)
			err = errors.Join(err, failed)
		}
	}
	var failed error
	b.heading, failed = book.NewStyle(&excelize.Style{Font: &excelize.Font{Bold: true, Color: "FFFFFF", Family: "Arial"}, Fill: excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{"1D4E74"}},
		Alignment: &excelize.Alignment{WrapText: true, Vertical: "center"}})
	return b, errors.Join(err, failed)
}

// height of a row in points: some programs do not work it out for text that goes on below. 0 leaves it to them.
func (s *Table) height(row []any) float64 {
	const line = 13.5
	lines := 1
	for i, cell := range row {
		if text, is := cell.(string); is && s.width(i) >= widestCell {
			lines = max(lines, len(words.Wrap(text, int(0.9*s.width(i))))) // letters differ in width
		}
	}
	if lines == 1 {
		return 0
	}
	return line * float64(lines)
}

// widestCell is a column of sentences, which go on below: wider ones stand out of a screen.
const widestCell = 80

// width of a column in characters: that of its longest cell within reason.
func (s *Table) width(column int) float64 {
	widest := max(10, words.Displayed(s.Fields[column].Heading)/2+4) // headings go on two lines
	for i, row := range s.Rows {
		if i == 500 {
			break // the rest is alike
		}
		if text, is := row[column].(string); is {
			widest = max(widest, words.Displayed(text)+2)
		}
		if _, is := row[column].(time.Time); is {
			widest = 18
		}
	}
	return min(float64(widest), widestCell)
}

// workbookValue is a cell; not-a-number leaves it empty.
func workbookValue(cell any) any {
	if text, is := cell.(string); is {
		return words.CellText(text)
	}
	if x, is := cell.(float64); is && !words.Defined(x) {
		return nil
	}
	return cell
}
