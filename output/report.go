package output

import (
	"bytes"
	"embed"
	"html/template"
	"io"

	"coredays/model/basis"
	"coredays/model/check"
	"coredays/model/logbook"
	"coredays/model/plan"
	"coredays/model/sea"
)

// Report is what a report, its charts, its tables and its workbook tell.
type Report struct {
	Summary      *logbook.Summary // looked at closely
	Plan         *plan.Plan
	Passages     []Passage
	Found        []check.Finding
	Basis        []basis.Entry
	Seas         []*sea.Study
	Log          *logbook.Log          // what the ship really did; nil where there is none
	Orders       *logbook.Comparison   // of the sites; nil where nobody looked for the best
	Replications *logbook.Replications // for CSV and the workbook; nil for the page
	Program      string                // name and version
}

// Passage is the way between two places of the programme.
type Passage struct {
	From, To string
	Distance float64 // m
}

//go:embed *.html.tmpl
var pages embed.FS

//go:embed report.css
var reportStyle string

// HTML writes the report as one page that fetches nothing.
func HTML(w io.Writer, r *Report) error {
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
	_, err = w.Write(bytes.Map(shown, text.Bytes()))
	return err
}

// tables are all sheets but that of the replications, in the order in which they are listed.
func (r *Report) tables() []*sheet {
	s := r.Summary
	list := []*sheet{runSheet(r), resultsSheet(s), chancesSheet(s), sitesSheet(s), holesSheet(s), passagesSheet(r), classesSheet(s), driversSheet(s),
		consumablesSheet(s), curveSheet(s), waySheet(s), sectionSheet(s), layersSheet(s), seaSheet(r.Seas), checkSheet(r.Found), basisSheet(r.Basis)}
	if r.Log != nil {
		list = append(list, loggedSheet(s, r.Log))
	}
	if r.Orders != nil {
		list = append(list, alternativesSheet(r.Orders), differencesSheet(r.Orders))
	}
	return list
}
