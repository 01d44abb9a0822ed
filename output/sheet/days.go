package sheet

import (
	"coredays/model/result"
	"coredays/output/text"
	"coredays/output/words"
)

// Classes has a row for each class of time, the largest first.
func Classes(s *result.Summary) *Table {
	t := &Table{Name: "classes", Title: "Days by class of time, whole programme", Fields: []Field{{"class", "class of time", OfWords, ""},
		{"mean_d", "mean", ofDays, "the means add up to the mean of days needed"}, {"share", "share", ofShare, "of the mean of days needed"}}}
	t.Fields = append(t.Fields, threeFields("days", "days", "quantiles do not add up", ofDays)...)
	for _, c := range text.BySize(s.Needed.ByClass) {
		x := words.InDays(s.Needed.ByClass[c])
		t.Add(append([]any{c.String(), x.Mean, x.Mean / words.InDays(s.Needed.Total).Mean}, threeOf(x)...)...)
	}
	return t
}

func Drivers(s *result.Summary) *Table {
	t := &Table{Name: "drivers", Title: "What drives the spread of days needed", Fields: []Field{{"cause", "cause", OfWords, ""},
		{"share", "share of the variance", ofShare, "of days needed from P1 to P99; negative for a cause that is short where the others are long"}}}
	for _, d := range s.Drivers {
		t.Add(d.Name, d.Share)
	}
	return t
}

func Consumables(s *result.Summary) *Table {
	t := &Table{Name: "consumables", Title: "What to have on board, whole programme", Fields: []Field{{"item", "item", OfWords, ""},
		{"p50", "P50", ofOrder, "half the expeditions use no more"}, {"p90", "P90", ofOrder, "nine in ten use no more"}}}
	for _, c := range s.Consumables {
		t.Add(c.Item, c.P50, c.P90)
	}
	return t
}

// Curve is the distribution of days needed.
func Curve(s *result.Summary) *Table {
	t := &Table{Name: "days_needed", Title: "Days needed by chance", Fields: []Field{
		{"chance", "chance", ofShare, "share of the expeditions that need no more"}, {"days", "days needed", ofDays, "whole programme, port to port"}}}
	for i, x := range s.Needed.Curve {
		t.Add(float64(i)/float64(len(s.Needed.Curve)-1), x/words.SecondsOfDay)
	}
	return t
}
