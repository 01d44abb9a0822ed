package output

import (
	_ "embed"
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
	Replications *logbook.Replications // for CSV and the workbook; nil for the page
	Program      string                // name and version
}

// Passage is the way between two places of the programme.
type Passage struct {
	From, To string
	Distance float64 // m
}

//go:embed report.html.tmpl
var reportPage string

//go:embed report.css
var reportStyle string

// HTML writes the report as one page that fetches nothing.
func HTML(w io.Writer, r *Report) error {
	view, err := reportViewOf(r)
	if err != nil {
		return err
	}
	page, err := template.New("report").Funcs(template.FuncMap{"table": tableHTML}).Parse(reportPage)
	if err != nil {
		return err
	}
	return page.Execute(w, view)
}

// tables are all sheets but that of the replications, in the order in which they are listed.
func (r *Report) tables() []*sheet {
	s := r.Summary
	return []*sheet{runSheet(r), resultsSheet(s), chancesSheet(s), sitesSheet(s), holesSheet(s), passagesSheet(r), classesSheet(s), driversSheet(s),
		consumablesSheet(s), curveSheet(s), waySheet(s), sectionSheet(s), layersSheet(s), seaSheet(r.Seas), checkSheet(r.Found), basisSheet(r.Basis)}
}
