package page

import (
	"bytes"
	"embed"
	"html/template"
	"io"

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
	page, err := template.New(name).Funcs(template.FuncMap{"table": tableHTML}).ParseFS(pages, "*.html.tmpl")
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
