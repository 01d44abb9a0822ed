package page

import (
	"html/template"
	"io"

	"coredays/model/check"
	"coredays/model/result"
	"coredays/output/chart"
	"coredays/output/sheet"
	"coredays/output/text/alternatives"
)

// studyView is what the page of a study shows, ready to be set.
type studyView struct {
	Style    template.CSS
	Title    string
	Program  string
	Dated    string // empty for none
	Headline []string
	Made     []string
	Warnings []string
	Plans    *tableView
	Cautions []string
	Call     string
}

// Study writes a study as one page that fetches nothing; program is the name and the version of what made it,
// dated the date that it carries, if any.
func Study(w io.Writer, s *result.Study, program, dated string) error {
	v := &studyView{Style: template.CSS(reportStyle), Title: s.Title, Program: program, Dated: dated, Made: alternatives.StudyMadeOf(s), Warnings: s.Warnings, Cautions: check.Cautions(),
		Call: alternatives.StudyCall(s)}
	if len(s.Plans) > 0 {
		v.Headline = alternatives.StudyLines(s)
		pictures, err := picturesOf(chart.Study(s))
		if err != nil {
			return err
		}
		v.Plans = &tableView{pictures, sheet.StudyForPeople(s), alternatives.StudyNote}
	}
	return writePage(w, "study.html.tmpl", v)
}
