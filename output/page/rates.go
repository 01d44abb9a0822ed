package page

import (
	"html/template"
	"io"
	"strings"

	"coredays/model/rates"
	"coredays/model/riglog"
	"coredays/output/chart"
	"coredays/output/sheet"
	"coredays/output/text/crewrates"
)

// ratesView is what the page of rates shows, ready to be set.
type ratesView struct {
	Style    template.CSS
	Title    string
	Pictures []*picture
	Table    *sheet.Table
	Notes    []string
	YAML     string
	Program  string
	Dated    string // empty for none
}

// Rates writes what was learned of a rig's rates as one page that fetches nothing, with a chart of each; program is the
// name and the version of what made it, dated the date that it carries, if any.
func Rates(w io.Writer, r *rates.Result, notes []riglog.Note, program, dated string) error {
	v := &ratesView{Style: template.CSS(reportStyle), Title: "Rates from " + strings.Join(r.Files, ", "), Table: sheet.Rates(r), YAML: crewrates.YAML(r), Program: program, Dated: dated}
	var err error
	if v.Pictures, err = picturesOf(chart.Rates(r)); err != nil {
		return err
	}
	for _, n := range crewrates.Notes(r, notes) {
		v.Notes = append(v.Notes, crewrates.Note(n))
	}
	return writePage(w, "rates.html.tmpl", v)
}
