package output

import (
	"iter"
	"math"

	"coredays/model/logbook"
	"coredays/model/plan"
)

// cutsSheet has a row for each thing that can be left out, in the order in which they are printed.
func cutsSheet(c *logbook.Comparison) *sheet {
	t := &sheet{name: "cuts", title: "What each thing costs and yields", fields: []field{
		{"without", "without", ofWords, "what is left out, and what hangs on it"}, {"kind", "kind", ofWords, "measurement, task, hole or site"},
		{"row", "row", ofCount, "its row in the chart"}, {"saves_mean", "saves", ofDays, "days of the whole programme, replication by replication: mean"}}}
	t.fields = append(t.fields, threeFields("saves", "saves", "days of the whole programme, replication by replication", ofDays)...)
	t.fields = append(t.fields, intervalFields("core_less", "core less", "recovered less by the whole programme", ofMetres)...)
	t.fields = append(t.fields, field{"m_a_day", "m a day saved", ofCount, "core less for each day saved; of holes and sites"},
		field{"section_less", "section less", ofPoints, "of the site's section that no hole brings up any more, mean; of holes and sites"},
		field{"chance_primary", "rank 1 of the rest", ofShare, "chance within the days that all of rank 1 is done of what is left"},
		field{"chance_all", "all of the rest", ofShare, "chance within the days that all is done of what is left"})
	n := 0.0
	for cut := range cutsInOrder(c) {
		n++
		saves := inDays(told(cut.Saves))
		row := append([]any{cutName(cut), cut.Kind.String(), n, saves.Mean}, threeOf(saves)...)
		row = append(row, threeBounds(cut.Metres)...)
		perDay, section := math.NaN(), math.NaN()
		if bringsCore(cut) {
			perDay, section = metresADay(cut), cut.Section
		}
		t.rows = append(t.rows, append(row, perDay, section, cut.Alternative.Allotted.ChancePrimary, cut.Alternative.Allotted.ChanceAll))
	}
	return t
}

// cutsInOrder goes through the cuts kind by kind.
func cutsInOrder(c *logbook.Comparison) iter.Seq[*logbook.Cut] {
	return func(yield func(*logbook.Cut) bool) {
		for kind := plan.Measurement; kind <= plan.WholeSite; kind++ {
			for _, cut := range cutsOf(c, kind) {
				if !yield(cut) {
					return
				}
			}
		}
	}
}

// moreDaysSheet has a row for each number of sea days.
func moreDaysSheet(c *logbook.Comparison) *sheet {
	t := &sheet{name: "sea_days", title: "What a day is worth", fields: []field{{"sea_days", "sea days", ofDays, ""},
		{"chance_primary", "rank 1 done", ofShare, "chance within the days"}}}
	t.fields = append(t.fields, intervalFields("chance_primary_more", "more", "chance of rank 1 more than as planned", ofPoints)...)
	t.fields = append(t.fields, field{"chance_all", "all done", ofShare, "chance within the days"})
	t.fields = append(t.fields, intervalFields("chance_all_more", "more", "chance of all more than as planned", ofPoints)...)
	t.fields = append(t.fields, field{"recovered_mean", "core", ofMetres, "recovered within the days: mean"})
	t.fields = append(t.fields, intervalFields("recovered_more", "more", "core more than as planned", ofMetres)...)
	days := c.Alternatives[0].Summary.Allotted.SeaDays.Days()
	for _, d := range daysAndPlanned(c) {
		row := append([]any{days + d.Days, d.First}, threeBounds(d.FirstMore)...)
		row = append(append(row, d.All), threeBounds(d.AllMore)...)
		t.rows = append(t.rows, append(append(row, d.Metres), threeBounds(d.MetresMore)...))
	}
	return t
}
