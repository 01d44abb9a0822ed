// Package printed lays out tables of a study in plain text.
package printed

import (
	"bytes"
	"fmt"
	"io"
	"math"
	"strings"

	"github.com/olekukonko/tablewriter"
	"github.com/olekukonko/tablewriter/tw"
)

// Table prints a heading and rows in columns, first column to the left, figures to the right.
func Table(w io.Writer, title string, head []string, rows [][]string) error {
	var b bytes.Buffer
	align := make(tw.Alignment, len(head))
	for i := range align {
		align[i] = tw.AlignRight
	}
	align[0] = tw.AlignLeft
	t := tablewriter.NewTable(&b, tablewriter.WithHeaderAutoFormat(tw.Off), tablewriter.WithAlignment(align),
		tablewriter.WithRowAutoWrap(tw.WrapNone), tablewriter.WithEastAsian(tw.Off),
		tablewriter.WithPadding(tw.Padding{Right: "  ", Overwrite: true}), plain())
	t.Header(head)
	if err := t.Bulk(rows); err != nil {
		return err
	}
	if err := t.Render(); err != nil {
		return err
	}
	fmt.Fprintf(w, "\n%s\n\n", title)
	for line := range strings.Lines(b.String()) {
		if _, err := fmt.Fprintln(w, strings.TrimRight(line, " \n")); err != nil {
			return err
		}
	}
	return nil
}

// plain is a rule under the heading and nothing else.
func plain() tablewriter.Option {
	return tablewriter.WithRendition(tw.Rendition{Borders: tw.BorderNone, Symbols: tw.NewSymbols(tw.StyleLight),
		Settings: tw.Settings{Separators: tw.SeparatorsNone, Lines: tw.Lines{ShowHeaderLine: tw.On, ShowFooterLine: tw.Off,
			ShowTop: tw.Off, ShowBottom: tw.Off}}})
}

// Figure has three significant digits; a value that could not be fitted is a dash.
func Figure(x float64) string {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return "-"
	}
	if math.Abs(x) >= 1000 {
		return fmt.Sprintf("%.0f", x)
	}
	return fmt.Sprintf("%.3g", x)
}

func Percent(x float64) string { return Figure(100 * x) }
