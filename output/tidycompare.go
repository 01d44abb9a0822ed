package output

import (
	"coredays/model/logbook"
	"coredays/model/unit"
)

// alternativesSheet has a row for each alternative, orders by merit, others as they were given.
func alternativesSheet(c *logbook.Comparison) *sheet {
	t := &sheet{name: "alternatives", title: alternativesTitles[c.Question], fields: []field{
		{"alternative", headingOf(c.Question), ofWords, "name of the alternative"},
		{"row", "row", ofCount, "its row in the chart"},
		{"standing", "standing", ofWords, "first by the rule of merit; open: may as well be the first, as far as the replications tell; behind"},
		{"of_scenario", "of the scenario", ofTruth, "the order that the scenario has"},
		{"unbeaten", "unbeaten", ofTruth, unbeatenWords},
		{"sea_days", "sea days", ofDays, "that there are"},
		{"chance_primary", "rank 1 done", ofShare, "chance that everything of rank 1 at the primary sites is done within the days"},
		{"chance_all", "all done", ofShare, "chance that the whole programme is done within the days"},
		{"chance_late", "late", ofShare, "chance that port is reached after the sea days"}}}
	t.fields = append(t.fields, field{"days_mean", "days needed", ofDays, "whole programme, no deadline: mean"})
	t.fields = append(t.fields, threeFields("days", "days needed", "whole programme, no deadline", ofDays)...)
	t.fields = append(t.fields, intervalFields("more", "days more than the first", "days needed more than those of the first, replication by replication", ofDays)...)
	t.fields = append(t.fields, intervalFields("less", "rank 1 less than the first", "chance of rank 1 less than that of the first", ofPoints)...)
	t.fields = append(t.fields, field{"waiting_mean", "waiting", ofDays, "on weather, whole programme: mean"}, field{"track_nmi", "track", ofNauticalMiles, "from port to port"},
		field{"recovered_mean", "core", ofMetres, "recovered within the days: mean"}, field{"in_hand_p50", "in hand P50", ofDays, "at the end: half stay below"})
	for n, i := range byMerit(c) {
		t.rows = append(t.rows, alternativeRow(c, n, i))
	}
	return t
}

var alternativesTitles = map[logbook.Question]string{
	logbook.WhichPlan: "Plans side by side", logbook.WhichOrder: "Orders side by side", logbook.WhichDeparture: "Departures side by side"}

// alternativeRow is the n-th row.
func alternativeRow(c *logbook.Comparison, n, i int) []any {
	a := &c.Alternatives[i]
	s := a.Summary
	needed := inDays(told(s.Needed.Total))
	row := []any{a.Name, float64(n + 1), standing(c, i), i == c.Planned, a.Unbeaten, s.Allotted.SeaDays.Days(), s.Allotted.ChancePrimary, s.Allotted.ChanceAll, s.Allotted.Late, needed.Mean}
	row = append(row, threeOf(needed)...)
	row = append(row, threeBounds(daysInterval(a.Behind))...)
	row = append(row, threeBounds(a.Less)...)
	return append(row, waitingDays(s), float64(a.Distance/unit.NauticalMile), s.Allotted.Recovered.Mean, inDays(told(s.Allotted.InHand)).P50)
}

// intervalFields are the columns of a mean and its interval.
func intervalFields(key, heading, meaning string, k kind) []field {
	return []field{{key + "_mean", heading, k, meaning + ": mean"}, {key + "_low", "from", k, "lower end of the interval of " + key + "_mean"}, {key + "_high", "to", k, "upper end"}}
}

func threeBounds(i logbook.Interval) []any { return []any{i.Mean, i.Low, i.High} }

// differencesSheet has a row for each pair; the first is always the one that is taken away.
func differencesSheet(c *logbook.Comparison) *sheet {
	t := &sheet{name: "differences", fields: []field{
		{"one", "the one", ofWords, "name of an alternative"}, {"other", "less the other", ofWords, "name of the one that is taken away"}}}
	t.fields = append(t.fields, intervalFields("days", "days needed", "days that the one needs more, replication by replication", ofDays)...)
	t.fields = append(t.fields, field{"share_shorter", "the one is shorter", ofShare, "of the replications"}, field{"share_same", "the same", ofShare, "of the replications in which both need the same"})
	t.fields = append(t.fields, intervalFields("chance_primary", "rank 1 done", "chance of all of rank 1 within the days that the one has more", ofPoints)...)
	t.fields = append(t.fields, intervalFields("recovered", "core", "recovered within the days, that the one has more", ofMetres)...)
	t.fields = append(t.fields, field{"settled_by", "settled by", ofCount, "replications after which the interval of the days would leave out 0; 0 where it does"},
		field{"settled_by_more", "or more", ofTruth, "not even so many would settle it"})
	for _, d := range c.Differences {
		d = fromTheFirst(c, d)
		row := append([]any{c.Alternatives[d.A].Name, c.Alternatives[d.B].Name}, threeBounds(daysInterval(d.Days))...)
		row = append(append(row, d.AShorter, d.Same), threeBounds(d.Chance)...)
		t.rows = append(t.rows, append(append(row, threeBounds(d.Metres)...), float64(d.SettlesDays), d.SettlesAbove))
	}
	if len(c.Alternatives) > 0 {
		t.title = differencesHeading(c)
	}
	return t
}
