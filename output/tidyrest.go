package output

import (
	"strings"
	"time"

	"coredays/model/basis"
	"coredays/model/check"
	"coredays/model/logbook"
	"coredays/model/sea"
)

// classesSheet has a row for each class of time, the largest first.
func classesSheet(s *logbook.Summary) *sheet {
	t := &sheet{name: "classes", title: "Days by class of time, whole programme", fields: []field{{"class", "class of time", ofWords, ""},
		{"mean_d", "mean", ofDays, "the means add up to the mean of days needed"}, {"share", "share", ofShare, "of the mean of days needed"}}}
	t.fields = append(t.fields, threeFields("days", "days", "quantiles do not add up", ofDays)...)
	for _, c := range bySize(s.Needed.ByClass) {
		x := inDays(s.Needed.ByClass[c])
		t.add(append([]any{c.String(), x.Mean, x.Mean / inDays(s.Needed.Total).Mean}, threeOf(x)...)...)
	}
	return t
}

func driversSheet(s *logbook.Summary) *sheet {
	t := &sheet{name: "drivers", title: "What drives the spread of days needed", fields: []field{{"cause", "cause", ofWords, ""},
		{"share", "share of the variance", ofShare, "of days needed from P1 to P99; negative for a cause that is short where the others are long"}}}
	for _, d := range s.Drivers {
		t.add(d.Name, d.Share)
	}
	return t
}

func consumablesSheet(s *logbook.Summary) *sheet {
	t := &sheet{name: "consumables", title: "What to have on board, whole programme", fields: []field{{"item", "item", ofWords, ""},
		{"p50", "P50", ofOrder, "half the expeditions use no more"}, {"p90", "P90", ofOrder, "nine in ten use no more"}}}
	for _, c := range s.Consumables {
		t.add(c.Item, c.P50, c.P90)
	}
	return t
}

// curveSheet is the distribution of days needed.
func curveSheet(s *logbook.Summary) *sheet {
	t := &sheet{name: "days_needed", title: "Days needed by chance", fields: []field{
		{"chance", "chance", ofShare, "share of the expeditions that need no more"}, {"days", "days needed", ofDays, "whole programme, port to port"}}}
	for i, x := range s.Needed.Curve {
		t.add(float64(i)/float64(len(s.Needed.Curve)-1), x/secondsOfDay)
	}
	return t
}

// seaSheet has a row for each month at each site.
func seaSheet(studies []*sea.Study) *sheet {
	t := &sheet{name: "sea", title: "Sea and workable time by month", fields: []field{{"site", "site", ofWords, ""}, {"month", "month", ofWords, ""},
		{"mean_hs_m", "mean Hs", ofMetres, "significant wave height, sea as simulated"}, {"sd_hs_m", "sd", ofMetres, "standard deviation"},
		{"work", "work", ofWords, "class of work"}, {"limit_hs_m", "limit", ofMetres, "Hs above which it stops"},
		{"workable", "workable", ofShare, "of the time below the limit"}}}
	for _, s := range studies {
		for m := 1; m <= 12; m++ {
			for i, l := range s.Limits {
				t.add(s.Place, time.Month(m).String()[:3], s.MadeYear.Mean(m-1), s.MadeYear.Deviation(m-1), l.Name, float64(l.Most), 1-s.Work.At(i, m).ShareAbove())
			}
		}
	}
	return t
}

// checkSheet has a row for each finding, the gravest first.
func checkSheet(found []check.Finding) *sheet {
	t := &sheet{name: "check", title: "Can it be done", fields: []field{{"verdict", "verdict", ofWords, "pass, caution or stop"}, {"site", "site", ofWords, ""},
		{"hole", "hole", ofWords, ""}, {"what", "what", ofWords, ""}, {"value", "value", ofNumber, "of the plan"}, {"limit", "limit", ofNumber, ""},
		{"unit", "unit", ofWords, "of value and limit"}, {"source", "source of the limit", ofWords, ""}, {"chance", "chance", ofShare, "that it goes well all the same; empty where none is known"},
		{"where", "where", ofWords, "file and line of what is at fault"}, {"cure", "cure", ofWords, "what could be done"}}}
	for _, v := range []check.Verdict{check.Stop, check.Caution, check.Pass} {
		for _, f := range check.Of(found, v) {
			t.add(v.String(), f.Site, f.Hole, f.What, f.Value, f.Limit, f.Unit, f.Source, orNone(f.Chance), f.Where, f.Cure)
		}
	}
	return t
}

// basisSheet has a row for each number that the plan rests on.
func basisSheet(entries []basis.Entry) *sheet {
	t := &sheet{name: "basis", title: "Basis of estimate", fields: []field{{"group", "group", ofWords, ""}, {"site", "site", ofWords, ""}, {"number", "number", ofWords, ""},
		{"low", "1 in 10", ofNumber, "one in ten is below; as mid without spread"}, {"mid", "even", ofNumber, ""}, {"high", "9 in 10", ofNumber, "nine in ten are below"},
		{"unit", "unit", ofWords, ""}, {"varies", "varies by", ofWords, "levels at which the spread lives; empty without one"},
		{"share", "share of the variance", ofShare, "of that of days needed from P1 to P99, as the drivers have; 0 where it may be chance, empty where no simulation tells"},
		{"causes", "of which, in %", ofWords, "causes in whose time the share mostly lies, by the names of the drivers"},
		{"from", "from", ofWords, "scenario, ship or built in"}, {"memory", "from memory", ofTruth, "the source says that it is from memory or judgement"},
		{"source", "source", ofWords, ""}}}
	for _, e := range entries {
		t.add(e.Group, e.Site, strings.TrimSpace(e.Name), e.Low, e.Mid, e.High, e.Unit, e.Varies, e.Share, liesIn(e), e.From.String(), e.Memory, e.Source)
	}
	return t
}

// replicationsSheet has a row for each replication and a column for each result; main leaves out those
// of tools, causes and holes.
func replicationsSheet(r *logbook.Replications, main bool) *sheet {
	t := &sheet{name: "replications", title: "Each replication", fields: []field{{"replication", "replication", ofCount, "its number, for coredays diary --replication"}}}
	var columns []logbook.Column
	var sizes []float64
	for _, c := range r.Columns {
		if main && !c.Main {
			continue
		}
		k, size := kindOf(c.Of)
		t.fields = append(t.fields, field{c.Key, c.Key, k, c.Meaning})
		columns, sizes = append(columns, c), append(sizes, size)
	}
	t.long = func(yield func([]any) bool) {
		row := make([]any, len(t.fields))
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
func kindOf(m logbook.Measure) (kind, float64) {
	switch m {
	case logbook.Seconds:
		return ofDays, secondsOfDay
	case logbook.Metres:
		return ofMetres, 1
	case logbook.Share:
		return ofShare, 1
	}
	return ofCount, 1
}
