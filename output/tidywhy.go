package output

import (
	"time"

	"coredays/model/logbook"
)

// visitsSheet sets the visits of the first order beside those of the shortest track.
func visitsSheet(best, short *logbook.Alternative) *sheet {
	t := &sheet{name: "visits", title: "Primary sites in the first order and on the shortest track", fields: []field{{"site", "site", ofWords, ""},
		{"arrives_first", "arrives P50: first", ofDate, ""}, {"arrives_shortest", "shortest", ofDate, ""},
		{"waits_first", "waits, mean: first", ofDays, ""}, {"waits_shortest", "shortest", ofDays, ""},
		{"complete_first", "complete: first", ofShare, "within the days"}, {"complete_shortest", "shortest", ofShare, "within the days"}}}
	arrives := func(a *logbook.Alternative, site *logbook.Site) any {
		at, exists := dateAfter(a.Summary.Sails, middle(site.Arrives))
		if !exists {
			return nil
		}
		return at.Round(time.Second)
	}
	for one, other := range visitsInBoth(best, short) {
		t.add(one.Name, arrives(best, one), arrives(short, other), inDays(one.Waiting).Mean, inDays(other.Waiting).Mean, one.ChanceComplete, other.ChanceComplete)
	}
	return t
}

// itemsSheet sets the chances of holes and tasks beside each other where they differ.
func itemsSheet(best, short *logbook.Alternative) *sheet {
	t := &sheet{name: "items", title: itemsHeading(), fields: []field{{"item", "hole or task", ofWords, ""}, {"rank", "rank", ofCount, "1 is dropped last"},
		{"done_first", "done: first", ofShare, "within the days"}, {"done_shortest", "shortest", ofShare, "within the days"}}}
	for _, l := range itemsInBoth(best, short) {
		t.add(l.name, float64(l.rank), l.one, l.other)
	}
	return t
}
