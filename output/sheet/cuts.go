package sheet

import (
	"iter"
	"math"

	"coredays/model/result"
	"coredays/output/text/alternatives"
	"coredays/output/words"
)

// Cuts has a row for each thing that can be left out, in the order in which they are printed.
func Cuts(c *result.Comparison) *Table {
	t := &Table{Name: "cuts", Title: "What each thing costs and yields", Fields: []Field{
		{"without", "without", OfWords, "what is left out, and what hangs on it"}, {"kind", "kind", OfWords, "measurement, task, hole or site"},
		{"row", "row", ofCount, "its row in the chart"}, {"rank", "rank", OfWords, "of what is cut, or of its hole; 1 is dropped last"},
		{"chance_primary_gained", "rank 1 more", ofPoints, "chance that all of rank 1 of the rest is done, more than as planned"}, {"saves_mean", "saves", ofDays, "days of the whole programme, replication by replication: mean"}}}
	t.Fields = append(t.Fields, threeFields("saves", "saves", "days of the whole programme, replication by replication", ofDays)...)
	t.Fields = append(t.Fields, intervalFields("core_less", "core less", "recovered less by the whole programme", ofMetres)...)
	t.Fields = append(t.Fields, Field{"m_a_day", "core lost per day saved", ofCount, "core less for each day saved; of holes and sites"},
		Field{"section_less", "section less", ofPoints, "of the site's section that no hole brings up any more, mean; of holes and sites"},
		Field{"chance_primary", "rank 1 of the rest", ofShare, "chance within the days that all of rank 1 is done of what is left"},
		Field{"chance_all", "all of the rest", ofShare, "chance within the days that all is done of what is left"})
	n := 0.0
	for cut := range CutsInOrder(c) {
		n++
		saves := words.InDays(words.Supported(cut.Saves))
		row := append([]any{alternatives.CutName(cut), cut.Kind.String(), n, alternatives.CutRank(c, cut), alternatives.Gain(c, cut), saves.Mean}, threeOf(saves)...)
		row = append(row, threeBounds(cut.Metres)...)
		perDay, section := math.NaN(), math.NaN()
		if alternatives.BringsCore(cut) {
			perDay, section = alternatives.MetresADay(cut), cut.Section
		}
		t.Rows = append(t.Rows, append(row, perDay, section, cut.Alternative.Allotted.ChancePrimary, cut.Alternative.Allotted.ChanceAll))
	}
	return t
}

// CutsInOrder goes through the cuts as they are ranked, what hardly matters last.
func CutsInOrder(c *result.Comparison) iter.Seq[*result.Cut] {
	return func(yield func(*result.Cut) bool) {
		list, trifles := alternatives.Ranked(c)
		for _, cut := range append(list, trifles...) {
			if !yield(cut) {
				return
			}
		}
	}
}

// MoreDays has a row for each number of sea days.
func MoreDays(c *result.Comparison) *Table {
	t := &Table{Name: "sea_days", Title: "What a day is worth", Fields: []Field{{"sea_days", "sea days", ofDays, ""},
		{"chance_primary", "rank 1 done", ofShare, "chance within the days"}}}
	t.Fields = append(t.Fields, intervalFields("chance_primary_more", "more", "chance of rank 1 more than as planned", ofPoints)...)
	t.Fields = append(t.Fields, Field{"chance_all", "all done", ofShare, "chance within the days"})
	t.Fields = append(t.Fields, intervalFields("chance_all_more", "more", "chance of all more than as planned", ofPoints)...)
	t.Fields = append(t.Fields, Field{"recovered_mean", "core", ofMetres, "recovered within the days: mean"})
	t.Fields = append(t.Fields, intervalFields("recovered_more", "more", "core more than as planned", ofMetres)...)
	days := c.Alternatives[0].Summary.Allotted.SeaDays.Days()
	for _, d := range alternatives.DaysAndPlanned(c) {
		row := append([]any{days + d.Days, d.First}, threeBounds(d.FirstMore)...)
		row = append(append(row, d.All), threeBounds(d.AllMore)...)
		t.Rows = append(t.Rows, append(append(row, d.Metres), threeBounds(d.MetresMore)...))
	}
	return t
}
