package output

import (
	"coredays/model/basis"
	"coredays/model/check"
	"coredays/model/plan"
	"coredays/model/result"
	"coredays/model/sea"
)

// Report is what a report, its charts, its tables and its workbook tell.
type Report struct {
	Summary      *result.Summary // looked at closely
	Plan         *plan.Plan
	Passages     []Passage
	Found        []check.Finding
	Basis        []basis.Entry
	Seas         []*sea.Study
	Log          *result.Log          // what the ship really did; nil where there is none
	Orders       *result.Comparison   // of the sites; nil where nobody looked for the best
	Replications *result.Replications // for CSV and the workbook; nil for the page
	Program      string               // name and version
	Dated        string               // date that the page carries; empty for none
}

// Passage is the way between two places of the programme.
type Passage struct {
	From, To string
	Distance float64 // m
}

// Logged is what the log has of a site, nothing where there is no log.
func (r *Report) Logged(site *result.Site) (stay result.Stay) {
	if r.Log != nil {
		stay, _ = r.Log.At(site.Name)
	}
	return stay
}
