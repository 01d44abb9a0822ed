package sheet

import (
	"time"

	"coredays/model/result"
	"coredays/output/text/alternatives"
	"coredays/output/words"
)

// Visits sets the visits of the first order beside those of the shortest track.
func Visits(best, short *result.Alternative) *Table {
	t := &Table{Name: "visits", Title: "Primary sites in the first order and on the shortest track", Fields: []Field{{"site", "site", OfWords, ""},
		{"arrives_first", "arrives P50: first", ofDate, ""}, {"arrives_shortest", "shortest", ofDate, ""},
		{"waits_first", "waits, mean: first", ofDays, ""}, {"waits_shortest", "shortest", ofDays, ""},
		{"complete_first", "complete: first", ofShare, "within the days"}, {"complete_shortest", "shortest", ofShare, "within the days"}}}
	arrives := func(a *result.Alternative, site *result.Site) any {
		at, exists := words.DateAfter(a.Summary.Sails, words.Middle(site.Arrives))
		if !exists {
			return nil
		}
		return at.Round(time.Second)
	}
	for one, other := range alternatives.VisitsInBoth(best, short) {
		t.Add(one.Name, arrives(best, one), arrives(short, other), words.InDays(one.Waiting).Mean, words.InDays(other.Waiting).Mean, one.ChanceComplete, other.ChanceComplete)
	}
	return t
}

// Items sets the chances of holes and tasks beside each other where they differ.
func Items(best, short *result.Alternative) *Table {
	t := &Table{Name: "items", Title: alternatives.ItemsHeading(), Fields: []Field{{"item", "hole or task", OfWords, ""}, {"rank", "rank", ofCount, "1 is dropped last"},
		{"done_first", "done: first", ofShare, "within the days"}, {"done_shortest", "shortest", ofShare, "within the days"}}}
	for _, l := range alternatives.ItemsInBoth(best, short) {
		t.Add(l.Name, float64(l.Rank), l.One, l.Other)
	}
	return t
}
