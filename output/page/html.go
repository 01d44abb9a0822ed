package page

import (
	"bytes"
	"embed"
	"html"
	"html/template"
	"io"
	"regexp"

	"coredays/output"
	"coredays/output/words"
)

//go:embed *.html.tmpl
var pages embed.FS

//go:embed report.css
var reportStyle string

// Report writes the report as one page that fetches nothing.
func Report(w io.Writer, r *output.Report) error {
	view, err := reportViewOf(r)
	if err != nil {
		return err
	}
	return writePage(w, "report.html.tmpl", view)
}

// writePage sets a view into the template of its page.
func writePage(w io.Writer, name string, view any) error {
	page, err := template.New(name).Funcs(template.FuncMap{"table": tableHTML, "said": said}).ParseFS(pages, "*.html.tmpl")
	if err != nil {
		return err
	}
	var text bytes.Buffer
	if err := page.Execute(&text, view); err != nil {
		return err
	}
	_, err = w.Write(bytes.Map(words.Shown, text.Bytes()))
	return err
}

// oneWord is a name or a range with a hyphen or a dash before a number, at which a browser would break a line.
var oneWord = regexp.MustCompile(`[\pL\pN.]+(?:[-–][\pL\pN.]*\pN)+`)

// said sets a sentence: no line breaks between a number and its unit, or within the name of a site.
func said(text string) template.HTML {
	escaped := html.EscapeString(words.Bound(words.Printable(text)))
	return template.HTML(oneWord.ReplaceAllString(escaped, `<span class="w">$0</span>`))
}
