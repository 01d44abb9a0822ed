package page

import (
	"html"
	"html/template"
	"strings"

	"coredays/output/sheet"
	"coredays/output/words"
)

// tableHTML sets a sheet as a table of a page: figures rounded for people, with all their digits in
// the value of a data element for programs.
func tableHTML(s *sheet.Table) template.HTML {
	var b strings.Builder
	b.WriteString(`<div class="table" tabindex="0" role="region" aria-label="` + html.EscapeString(words.Printable(s.Title)) + `"><table data-of="` + html.EscapeString(s.Name) + `"><caption>` +
		html.EscapeString(words.Printable(s.Title)) + "</caption><thead><tr>")
	for i, f := range s.Fields {
		b.WriteString(`<th scope="col"` + numeric(s.Fields[i].Kind) + ` data-key="` + html.EscapeString(f.Key) + `">` + html.EscapeString(words.Printable(f.Heads())) + "</th>")
	}
	b.WriteString("</tr></thead><tbody>\n")
	for r := range s.Rows {
		b.WriteString("<tr>")
		for c := range s.Fields {
			b.WriteString(cellHTML(s, r, c))
		}
		b.WriteString("</tr>\n")
	}
	b.WriteString("</tbody></table></div>")
	return template.HTML(b.String()) // all that comes from files is escaped above and below
}

func numeric(k sheet.Kind) string {
	if k == sheet.OfWords || k == sheet.OfTruth {
		return ""
	}
	return ` class="n"`
}

// cellHTML is one cell; a row is headed by its first column.
func cellHTML(s *sheet.Table, row, column int) string {
	text := html.EscapeString(s.Shown(row, column))
	if s.Fields[column].Kind == sheet.OfWords {
		text = string(said(s.Shown(row, column)))
	}
	if x, is := s.Rows[row][column].(float64); is && words.Defined(x) {
		text = `<data value="` + words.Exact(x) + `">` + text + "</data>"
	}
	if column == 0 {
		return `<th scope="row"` + numeric(s.Fields[0].Kind) + ">" + text + "</th>"
	}
	return "<td" + numeric(s.Fields[column].Kind) + ">" + text + "</td>"
}
