package sheet

import (
	"strings"
	"time"

	"coredays/model/basis"
	"coredays/model/check"
	"coredays/model/logbook"
	"coredays/model/sea"
	"coredays/output/text"
	"coredays/output/words"
)

// ClassesSheet has a row for each class of time, the largest first.
func ClassesSheet(s *logbook.Summary) *Table {
	t := &Table{Name: "classes", Title: "Days by class of time, whole programme", Fields: []Field{{"class", "class of time", OfWords, ""},
		{"mean_d", "mean", ofDays, "the means add up to the mean of days needed"}, {"share", "share", ofShare, "of the mean of days needed"}}}
	t.Fields = append(t.Fields, threeFields("days", "days", "quantiles do not add up", ofDays)...)
	for _, c := range text.BySize(s.Needed.ByClass) {
		x := words.InDays(s.Needed.ByClass[c])
		t.Add(append([]any{c.String(), x.Mean, x.Mean / words.InDays(s.Needed.Total).Mean}, threeOf(x)...)...)
	}
	return t
}

func DriversSheet(s *logbook.Summary) *Table {
	t := &Table{Name: "drivers", Title: "What drives the spread of days needed", Fields: []Field{{"cause", "cause", OfWords, ""},
		{"share", "share of the variance", ofShare, "of days needed from P1 to P99; negative for a cause that is short where the others are long"}}}
	for _, d := range s.Drivers {
		t.Add(d.Name, d.Share)
	}
	return t
}

func ConsumablesSheet(s *logbook.Summary) *Table {
	t := &Table{Name: "consumables", Title: "What to have on board, whole programme", Fields: []Field{{"item", "item", OfWords, ""},
		{"p50", "P50", ofOrder, "half the expeditions use no more"}, {"p90", "P90", ofOrder, "nine in ten use no more"}}}
	for _, c := range s.Consumables {
		t.Add(c.Item, c.P50, c.P90)
	}
	return t
}

// CurveSheet is the distribution of days needed.
func CurveSheet(s *logbook.Summary) *Table {
	t := &Table{Name: "days_needed", Title: "Days needed by chance", Fields: []Field{
		{"chance", "chance", ofShare, "share of the expeditions that need no more"}, {"days", "days needed", ofDays, "whole programme, port to port"}}}
	for i, x := range s.Needed.Curve {
		t.Add(float64(i)/float64(len(s.Needed.Curve)-1), x/words.SecondsOfDay)
	}
	return t
}

// SeaSheet has a row for each month at each site.
func SeaSheet(studies []*sea.Study) *Table {
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

// CheckSheet has a row for each finding, the gravest first.
func CheckSheet(found []check.Finding) *Table {
	t := &Table{Name: "check", Title: "Can it be done", Fields: []Field{{"verdict", "verdict", OfWords, "pass, caution or stop"}, {"site", "site", OfWords, ""},
		{"hole", "hole", OfWords, ""}, {"what", "what", OfWords, ""}, {"value", "value", ofNumber, "of the plan"}, {"limit", "limit", ofNumber, ""},
		{"unit", "unit", OfWords, "of value and limit"}, {"source", "source of the limit", OfWords, ""}, {"chance", "chance", ofShare, "that it goes well all the same; empty where none is known"},
		{"where", "where", OfWords, "file and line of what is at fault"}, {"cure", "cure", OfWords, "what could be done"}}}
	for _, v := range []check.Verdict{check.Stop, check.Caution, check.Pass} {
		for _, f := range check.Of(found, v) {
			t.Add(v.String(), f.Site, f.Hole, f.What, f.Value, f.Limit, f.Unit, f.Source, words.OrNone(f.Chance), f.Where, f.Cure)
		}
	}
	return t
}

// BasisSheet has a row for each number that the plan rests on.
func BasisSheet(entries []basis.Entry) *Table {
	t := &Table{Name: "basis", Title: "Basis of estimate", Fields: []Field{{"group", "group", OfWords, ""}, {"site", "site", OfWords, ""}, {"number", "number", OfWords, ""},
		{"low", "1 in 10", ofNumber, "one in ten is below; as mid without spread"}, {"mid", "even", ofNumber, ""}, {"high", "9 in 10", ofNumber, "nine in ten are below"},
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

// replicationsSheet has a row for each replication and a column for each result; main leaves out those
// of tools, causes and holes.
func replicationsSheet(r *logbook.Replications, main bool) *Table {
	t := &Table{Name: "replications", Title: "Each replication", Fields: []Field{{"replication", "replication", ofCount, "its number, for coredays diary --replication"}}}
	var columns []logbook.Column
	var sizes []float64
	for _, c := range r.Columns {
		if main && !c.Main {
			continue
		}
		k, size := kindOf(c.Of)
		t.Fields = append(t.Fields, Field{c.Key, c.Key, k, c.Meaning})
		columns, sizes = append(columns, c), append(sizes, size)
	}
	t.long = func(yield func([]any) bool) {
		row := make([]any, len(t.Fields))
		for n, number := range r.Numbers {
			row[0] = float64(number)
			for i := range columns {
				row[i+1] = columns[i].Values[n] / sizes[i]
			}
			if !yield(row) {
				return
			}
		}
	}
	return t
}

// kindOf is the kind of a measure and the size of its unit.
func kindOf(m logbook.Measure) (Kind, float64) {
	switch m {
	case logbook.Seconds:
		return ofDays, words.SecondsOfDay
	case logbook.Metres:
		return ofMetres, 1
	case logbook.Share:
		return ofShare, 1
	}
	return ofCount, 1
}
