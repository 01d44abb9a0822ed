package sheet

import (
	"coredays/model/morning"
	"coredays/model/result"
	"coredays/output/words"
)

// MorningItems are the holes and tasks of a morning page, as far as they are not behind the ship, and the arrival in port.
func MorningItems(m *morning.Page) *Table {
	t := &Table{Name: "morning_items", Title: "What is to come", Fields: append([]Field{{Key: "site", Heading: "site"}, {Key: "item", Heading: "hole, task"},
		{Key: "rank", Heading: "rank", Kind: ofCount}, {Key: "status", Heading: "is"}, {Key: "chance", Heading: "whole", Kind: ofShare}},
		threeFields("done", "done on", "when it is done", ofDate)...)}
	for _, x := range MorningAhead(m) {
		t.Add(append([]any{x.Site, x.Name, float64(x.Rank), x.Status, x.Chance}, threeDates(m.Sails, x.Finished)...)...)
	}
	return t
}

// MorningAhead are the items that are not behind the ship, and the arrival in port as the last.
func MorningAhead(m *morning.Page) (list []morning.Item) {
	for _, x := range m.Items {
		if x.Status != "done" && x.Status != "dropped" && x.Status != "lost" {
			list = append(list, x)
		}
	}
	return append(list, morning.Item{Site: "port", Name: "in time", Status: "to come", Chance: m.ChanceInTime, Finished: m.Home})
}

// MorningChoices are the choices of a morning page with their differences from going on as planned.
func MorningChoices(m *morning.Page) *Table {
	t := &Table{Name: "morning_choices", Title: "Choices, against going on as planned", Fields: []Field{{Key: "choice", Heading: "choice"}}}
	for _, f := range []struct {
		key, heading string
		kind         Kind
	}{{"primary", "all of rank 1", ofPoints}, {"core", "core", ofMetres}, {"days", "days to port", ofDays}} {
		t.Fields = append(t.Fields, Field{Key: f.key + "_mean", Heading: f.heading + ", mean", Kind: f.kind}, Field{Key: f.key + "_low", Heading: "from", Kind: f.kind},
			Field{Key: f.key + "_high", Heading: "to", Kind: f.kind})
	}
	for i := range m.Choices[min(1, len(m.Choices)):] {
		c := &m.Choices[i+1]
		days := words.DaysInterval(result.Interval{Mean: c.Days.Mean, Low: c.Days.CI[0], High: c.Days.CI[1]})
		t.Add(c.Name, c.Primary.Mean, c.Primary.CI[0], c.Primary.CI[1], c.Metres.Mean, c.Metres.CI[0], c.Metres.CI[1], days.Mean, days.Low, days.High)
	}
	return t
}
