package text

import (
	"slices"
	"strings"

	"github.com/olekukonko/tablewriter"
	"github.com/olekukonko/tablewriter/renderer"
	"github.com/olekukonko/tablewriter/tw"

	"coredays/output/words"
)

// Column is one column of a table.
type Column struct {
	heading string // with the unit; a line break in it makes a second line
	text    bool   // words, set to the left and wrapped; numbers are set to the right
	width   int    // widest line of a text column, columns of the terminal
	stacked bool   // the range of a number goes below it
}

func WordColumn(heading string, width int) Column {
	return Column{heading: heading, text: true, width: width}
}

func NumberColumn(heading string) Column { return Column{heading: heading} }

// Heads is the heading in one line, and whether the column holds words.
func (c Column) Heads() (heading string, words bool) {
	return strings.ReplaceAll(c.heading, "\n", " "), c.text
}

const (
	rule      = "─"
	gap       = 2  // blanks between columns
	closeGap  = 1  // where the page is too narrow for that
	narrowest = 10 // column of words, below which it is not narrowed
)

// Table prints rows below their headings, a rule between, columns two blanks apart.
func (p *Printer) Table(columns []Column, rows [][]string) error {
	columns = stacked(fitted(columns, rows, p.width, true), rows, p.width)
	between := gap
	if over := widthOf(columns, rows) - p.width; over > 0 {
		between = closeGap
		columns = fitted(columns, rows, p.width+(gap-closeGap)*(len(columns)-1), false)
	}
	var rendered strings.Builder
	t := tablewriter.NewTable(&rendered, layout(columns, between)...)
	var headings []string
	for _, c := range columns {
		headings = append(headings, c.head())
	}
	t.Header(headings)
	for _, row := range rows {
		if err := t.Append(cells(columns, row)); err != nil {
			return err
		}
	}
	if err := t.Render(); err != nil {
		return err
	}
	for line := range strings.Lines(rendered.String()) {
		line = strings.TrimRight(line, " \n")
		if strings.HasPrefix(line, rule) {
			from := p.Len()
			p.WriteString(Indent + strings.TrimSuffix(line, strings.Repeat(rule, between)) + "\n") // it goes on below the gap after the last column
			p.setAs(faint, from)
			continue
		}
		p.WriteString(Indent + line + "\n")
	}
	return nil
}

// fitted narrows the widest columns of words until the table is no wider than the page, but none so far that it would
// break a word that is to stay whole.
func fitted(columns []Column, rows [][]string, page int, whole bool) []Column {
	columns = slices.Clone(columns)
	least := make([]int, len(columns))
	for i := range columns {
		if columns[i].text {
			columns[i].width, least[i] = columns[i].needs(rows, i)
		}
		if !whole {
			least[i] = 0
		}
	}
	for widthOf(columns, rows) > page {
		widest := -1
		for i, c := range columns {
			if c.text && c.width > max(narrowest, least[i]) && (widest < 0 || c.width > columns[widest].width) {
				widest = i
			}
		}
		if widest < 0 {
			break
		}
		columns[widest].width--
	}
	return columns
}

// needs are the width of the widest cell of a column of words, no more than the column may have, and of its longest word.
func (c *Column) needs(rows [][]string, i int) (widest, word int) {
	for _, row := range rows {
		widest = max(widest, words.Displayed(row[i]))
		for w := range strings.FieldsSeq(row[i]) {
			word = max(word, words.Displayed(w)+len(row[i])-len(strings.TrimLeft(row[i], " ")))
		}
	}
	return min(widest, c.width), min(word, c.width)
}

// stacked sets the ranges of numbers below them, the widest column first, where a table is still wider than the page.
func stacked(columns []Column, rows [][]string, page int) []Column {
	for widthOf(columns, rows) > page {
		widest, most := -1, 0
		for i := range columns {
			if width := columns[i].numberWidth(rows, i); !columns[i].text && !columns[i].stacked && width > most && columns[i].hasRanges(rows, i) {
				widest, most = i, width
			}
		}
		if widest < 0 {
			break
		}
		columns[widest].stacked = true
	}
	return columns
}

// rangeAt is where a number ends and its range begins.
const rangeAt = " ("

func (c *Column) hasRanges(rows [][]string, i int) bool {
	return slices.ContainsFunc(rows, func(row []string) bool { return strings.Contains(row[i], rangeAt) })
}

// head is the heading as it is set: of a stacked column the range stands below, but no unit.
func (c *Column) head() string {
	first, last, several := strings.Cut(c.heading, "\n")
	if !several {
		return c.heading
	}
	return first + "\n" + c.set(last)
}

// set is a cell as it is set.
func (c *Column) set(text string) string {
	if c.stacked {
		return strings.ReplaceAll(text, rangeAt, "\n(")
	}
	return text
}

// numberWidth is the widest line of a column of numbers.
func (c *Column) numberWidth(rows [][]string, i int) (width int) {
	for _, row := range rows {
		for line := range strings.Lines(c.set(row[i])) {
			width = max(width, words.Displayed(strings.TrimSuffix(line, "\n")))
		}
	}
	return width
}

// widthOf is how wide the table becomes at most.
func widthOf(columns []Column, rows [][]string) int {
	total := len(Indent) - gap
	for i, c := range columns {
		width := c.width
		for line := range strings.Lines(c.head()) {
			width = max(width, words.Displayed(strings.TrimSuffix(line, "\n")))
		}
		if !c.text {
			width = max(width, c.numberWidth(rows, i))
		}
		total += width + gap
	}
	return total
}

func layout(columns []Column, between int) []tablewriter.Option {
	var aligned tw.Alignment
	for _, c := range columns {
		side := tw.AlignRight
		if c.text {
			side = tw.AlignLeft
		}
		aligned = append(aligned, side)
	}
	return []tablewriter.Option{
		tablewriter.WithRenderer(renderer.NewBlueprint(rules())),
		tablewriter.WithHeaderAutoFormat(tw.Off),
		tablewriter.WithAlignment(aligned),
		tablewriter.WithHeaderAutoWrap(tw.WrapNone),
		tablewriter.WithRowAutoWrap(tw.WrapNone),
		tablewriter.WithTrimSpace(tw.Off),
		tablewriter.WithEastAsian(tw.Off),
		tablewriter.WithPadding(tw.Padding{Right: strings.Repeat(" ", between), Overwrite: true}),
	}
}

// rules are one line below the headings and no other.
func rules() tw.Rendition {
	return tw.Rendition{
		Borders: tw.BorderNone,
		Symbols: tw.NewSymbols(tw.StyleLight),
		Settings: tw.Settings{
			Separators: tw.SeparatorsNone,
			Lines:      tw.Lines{ShowHeaderLine: tw.On, ShowFooterLine: tw.Off, ShowTop: tw.Off, ShowBottom: tw.Off},
		},
	}
}

// cells wraps the words of a row. Leading blanks of a cell set all its lines in.
func cells(columns []Column, row []string) []string {
	wrapped := make([]string, len(row))
	for i, cell := range row {
		wrapped[i] = columns[i].set(cell)
		if columns[i].text {
			blanks := cell[:len(cell)-len(strings.TrimLeft(cell, " "))]
			lines := words.Wrap(cell, columns[i].width-len(blanks))
			wrapped[i] = blanks + strings.Join(lines, "\n"+blanks)
		}
	}
	return wrapped
}
