package output

import (
	"html"
	"html/template"
	"strings"
)

// tableHTML sets a sheet as a table of a page: figures rounded for people, with all their digits in
// the value of a data element for programs.
func tableHTML(s *sheet) template.HTML {
	var b strings.Builder
	b.WriteString(`<div class="table" tabindex="0" role="region" aria-label="` + html.EscapeString(printable(s.title)) + `"><table data-of="` + html.EscapeString(s.name) + `"><caption>` +
		html.EscapeString(printable(s.title)) + "</caption><thead><tr>")
	for i, f := range s.fields {
		b.WriteString(`<th scope="col"` + numeric(s.fields[i].kind) + ` data-key="` + html.EscapeString(f.key) + `">` + html.EscapeString(printable(f.heads())) + "</th>")
	}
	b.WriteString("</tr></thead><tbody>\n")
	for r := range s.rows {
		b.WriteString("<tr>")
		for c := range s.fields {
			b.WriteString(cellHTML(s, r, c))
		}
		b.WriteString("</tr>\n")
	}
	b.WriteString("</tbody></table></div>")
	return template.HTML(b.String()) // all that comes from files is escaped above and below
}

func numeric(k kind) string {
	if k == ofWords || k == ofTruth {
		return ""
	}
	return ` class="n"`
}

// cellHTML is one cell; a row is headed by its first column.
func cellHTML(s *sheet, row, column int) string {
	text := html.EscapeString(s.shown(row, column))
	if x, is := s.rows[row][column].(float64); is && defined(x) {
		text = `<data value="` + exact(x) + `">` + text + "</data>"
	}
	if column == 0 {
		return `<th scope="row"` + numeric(s.fields[0].kind) + ">" + text + "</th>"
	}
	return "<td" + numeric(s.fields[column].kind) + ">" + text + "</td>"
}
