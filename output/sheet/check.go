package sheet

import (
	"strings"
	"time"

	"coredays/model/basis"
	"coredays/model/check"
	"coredays/model/sea"
	"coredays/output/text"
	"coredays/output/words"
)

// Sea has a row for each month at each site.
func Sea(studies []*sea.Study) *Table {
	t := &Table{Name: "sea", Title: "Sea and workable time by month", Fields: []Field{{"site", "site", OfWords, ""}, {"month", "month", OfWords, ""},
		{"mean_hs_m", "mean Hs", ofMetres, "significant wave height, sea as simulated"}, {"sd_hs_m", "sd", ofMetres, "standard deviation"},
		{"work", "work", OfWords, "class of work"}, {"limit_hs_m", "limit", ofMetres, "Hs above which it stops"},
		{"workable", "workable", ofShare, "of the time below the limit"}}}
	for _, s := range studies {
		for m := 1; m <= 12; m++ {
			for i, l := range s.Limits {
				t.Add(s.Place, time.Month(m).String()[:3], s.MadeYear.Mean(m-1), s.MadeYear.Deviation(m-1), l.Name, float64(l.Most), 1-s.Work.At(i, m).ShareAbove())
			}
		}
	}
	return t
}

// Check has a row for each finding, the gravest first.
func Check(found []check.Finding) *Table {
	t := &Table{Name: "check", Title: "Can it be done", Fields: []Field{{"verdict", "verdict", OfWords, "pass, caution or stop"}, {"site", "site", OfWords, ""},
		{"hole", "hole", OfWords, ""}, {"what", "what", OfWords, ""}, {"value", "plan", ofNumber, "of the plan"}, {"relation", "to be", OfWords, "what the value must be to the limit: ≤ or ≥"}, {"limit", "limit", ofNumber, ""},
		{"unit", "unit", OfWords, "of value and limit"}, {"source", "source of the limit", OfWords, ""}, {"chance", "chance", ofShare, "that it goes well all the same; empty where none is known"},
		{"where", "where", OfWords, "file and line of what is at fault"}, {"cure", "cure", OfWords, "what could be done"}}}
	for _, v := range []check.Verdict{check.Stop, check.Caution, check.Pass} {
		for _, f := range check.Of(found, v) {
			t.Add(v.String(), f.Site, f.Hole, f.What, f.Value, text.Relation(&f), f.Limit, f.Unit, f.Source, words.OrNone(f.Chance), f.Where, f.Cure)
		}
	}
	return t
}

// Basis has a row for each number that the plan rests on.
func Basis(entries []basis.Entry) *Table {
	t := &Table{Name: "basis", Title: "Basis of estimate", Fields: []Field{{"group", "group", OfWords, ""}, {"site", "site", OfWords, ""}, {"number", "number", OfWords, ""},
		{"low", "P10", ofNumber, "one in ten is below; as mid without spread"}, {"mid", "P50", ofNumber, ""}, {"high", "P90", ofNumber, "nine in ten are below"},
		{"unit", "unit", OfWords, ""}, {"varies", "varies by", OfWords, "levels at which the spread lives; empty without one"},
		{"share", "share of the variance", ofShare, "of that of days needed from P1 to P99, as the drivers have; 0 where it may be chance, empty where no simulation tells"},
		{"causes", "of which, in %", OfWords, "causes in whose time the share mostly lies, by the names of the drivers"},
		{"from", "from", OfWords, "scenario, ship or built in"}, {"memory", "from memory", OfTruth, "the source says that it is from memory or judgement"},
		{"source", "source", OfWords, ""}}}
	for _, e := range entries {
		t.Add(e.Group, e.Site, strings.TrimSpace(e.Name), e.Low, e.Mid, e.High, e.Unit, e.Varies, e.Share, text.LiesIn(e), e.From.String(), e.Memory, e.Source)
	}
	return t
}
