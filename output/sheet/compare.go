package sheet

import (
	"coredays/model/result"
	"coredays/model/unit"
	"coredays/output/text/alternatives"
	"coredays/output/words"
)

// Alternatives has a row for each alternative, orders by merit, others as they were given.
func Alternatives(c *result.Comparison) *Table {
	t := &Table{Name: "alternatives", Title: Titles[c.Question], Fields: []Field{
		{"alternative", alternatives.HeadingOf(c.Question), OfWords, "name of the alternative"},
		{"row", "row", ofCount, "its row in the chart"},
		{"standing", "standing", OfWords, "first by the rule of merit; open: may as well be the first, as far as the replications tell; behind"},
		{"of_scenario", "of the scenario", OfTruth, "the order that the scenario has"},
		{"unbeaten", "unbeaten", OfTruth, alternatives.UnbeatenWords},
		{"sea_days", "sea days", ofDays, "that there are"},
		{"chance_primary", "rank 1 done", ofShare, "chance that everything of rank 1 at the primary sites is done within the days"},
		{"chance_all", "all done", ofShare, "chance that the whole programme is done within the days"},
		{"chance_late", "late", ofShare, "chance that port is reached after the sea days"}}}
	t.Fields = append(t.Fields, Field{"days_mean", "days needed", ofDays, "whole programme, no deadline: mean"})
	t.Fields = append(t.Fields, threeFields("days", "days needed", "whole programme, no deadline", ofDays)...)
	than := " more than " + alternatives.AgainstName(c)
	t.Fields = append(t.Fields, intervalFields("chance_primary_more", "rank 1"+than, "chance of all of rank 1"+than+", replication by replication", ofPoints)...)
	t.Fields = append(t.Fields, intervalFields("days_more", "days"+than, "days needed"+than+", replication by replication", ofDays)...)
	t.Fields = append(t.Fields, Field{"waiting_mean", "waiting", ofDays, "on weather, whole programme: mean"}, Field{"track_nmi", "track", ofNauticalMiles, "from port to port"},
		Field{"recovered_mean", "core", ofMetres, "recovered within the days: mean"}, Field{"in_hand_p50", "in hand P50", ofDays, "at the end: half stay below"})
	for n, i := range alternatives.ByMerit(c) {
		t.Rows = append(t.Rows, alternativeRow(c, n, i))
	}
	return t
}

// ShownMore are the columns of the differences from the one that all are held against.
var ShownMore = []string{"chance_primary_more_mean", "chance_primary_more_low", "chance_primary_more_high", "days_more_mean", "days_more_low", "days_more_high"}

var Titles = map[result.Question]string{
	result.WhichPlan: "Plans side by side", result.WhichOrder: "Orders side by side", result.WhichDeparture: "Departures side by side"}

// alternativeRow is the n-th row.
func alternativeRow(c *result.Comparison, n, i int) []any {
	a := &c.Alternatives[i]
	s := a.Summary
	needed := words.InDays(words.Supported(s.Needed.Total))
	row := []any{a.Name, float64(n + 1), alternatives.Standing(c, i), i == c.Planned, a.Unbeaten, s.Allotted.SeaDays.Days(), s.Allotted.ChancePrimary, s.Allotted.ChanceAll, s.Allotted.Late, needed.Mean}
	row = append(row, threeOf(needed)...)
	row = append(row, threeBounds(alternatives.MoreChance(c, i))...)
	row = append(row, threeBounds(words.DaysInterval(alternatives.MoreDays(c, i)))...)
	return append(row, alternatives.WaitingDays(s), float64(a.Distance/unit.NauticalMile), s.Allotted.Recovered.Mean, words.InDays(words.Supported(s.Allotted.InHand)).P50)
}

// intervalFields are the columns of a mean and its interval.
func intervalFields(key, heading, meaning string, k Kind) []Field {
	return []Field{{key + "_mean", heading, k, meaning + ": mean"}, {key + "_low", "from", k, "lower end of the interval of " + key + "_mean"}, {key + "_high", "to", k, "upper end"}}
}

func threeBounds(i result.Interval) []any { return []any{i.Mean, i.Low, i.High} }

// Differences has a row for each pair; the first is always the one that is taken away.
func Differences(c *result.Comparison) *Table {
	t := &Table{Name: "differences", Fields: []Field{
		{"one", "the one", OfWords, "name of an alternative"}, {"other", "less the other", OfWords, "name of the one that is taken away"}}}
	t.Fields = append(t.Fields, intervalFields("days", "days needed", "days that the one needs more, replication by replication", ofDays)...)
	t.Fields = append(t.Fields, Field{"share_shorter", "the one is shorter", ofShare, "of the replications"}, Field{"share_same", "the same", ofShare, "of the replications in which both need the same"})
	t.Fields = append(t.Fields, intervalFields("chance_primary", "rank 1 done", "chance of all of rank 1 within the days that the one has more", ofPoints)...)
	t.Fields = append(t.Fields, intervalFields("recovered", "core", "recovered within the days, that the one has more", ofMetres)...)
	t.Fields = append(t.Fields, Field{"settled_by", "settled by", ofCount, "replications after which the interval of the days would leave out 0; 0 where it does"},
		Field{"settled_by_more", "or more", OfTruth, "not even so many would settle it"})
	for _, d := range c.Differences {
		d = alternatives.FromTheFirst(c, d)
		row := append([]any{c.Alternatives[d.A].Name, c.Alternatives[d.B].Name}, threeBounds(words.DaysInterval(d.Days))...)
		row = append(append(row, d.AShorter, d.Same), threeBounds(d.Chance)...)
		t.Rows = append(t.Rows, append(append(row, threeBounds(d.Metres)...), float64(d.SettlesDays), d.SettlesAbove))
	}
	if len(c.Alternatives) > 0 {
		t.Title = alternatives.DifferencesHeading(c)
	}
	return t
}
