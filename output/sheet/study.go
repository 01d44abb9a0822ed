package sheet

import (
	"context"

	"coredays/model/result"
	"coredays/output/text/alternatives"
	"coredays/output/words"
)

// Study has a row for each plan of a study.
func Study(s *result.Study) *Table {
	t := &Table{Name: "plans", Title: "Plans", Fields: []Field{
		{"plan", "plan", ofCount, "number of the plan; its row in the chart"},
		{"scenario", "scenario", OfWords, "file of the scenario, as the study names it"}}}
	for _, path := range s.Varied {
		t.Fields = append(t.Fields, Field{setKey(path), path, OfWords, "value of this setting"})
	}
	t.Fields = append(t.Fields, Field{"sails", "sails", ofDate, "when the expedition sails"}, Field{"sea_days", "sea days", ofDays, "that there are"},
		Field{"chance_primary", "rank 1 done", ofShare, "chance that everything of rank 1 at the primary sites is done within the days"},
		Field{"chance_all", "all done", ofShare, "chance that the whole programme is done within the days"},
		Field{"chance_late", "late", ofShare, "chance that port is reached after the sea days"},
		Field{"days_mean", "days needed", ofDays, "whole programme, no deadline: mean"})
	for _, of := range []struct {
		key, heading, meaning string
		kind                  Kind
	}{{"days", "days needed", "whole programme, no deadline", ofDays}, {"waiting", "waiting", "on weather, whole programme", ofDays},
		{"in_hand", "in hand", "days left at the end", ofDays}, {"recovered", "core", "recovered within the days", ofMetres}} {
		t.Fields = append(t.Fields, threeFields(of.key, of.heading, of.meaning, of.kind)...)
	}
	for i := range s.Plans {
		t.Rows = append(t.Rows, studyRow(&s.Plans[i], i))
	}
	return t
}

// setKey is the key of the column of a setting, which may be called as another column is.
func setKey(path string) string { return "set_" + path }

// studyRow is the row of a plan.
func studyRow(p *result.StudiedPlan, i int) []any {
	row := []any{float64(i + 1), p.Scenario}
	for _, value := range p.Settings {
		row = append(row, value)
	}
	row = append(row, p.Sails, p.SeaDays.Days(), p.ChancePrimary, p.ChanceAll, p.ChanceLate, words.InDays(words.Supported(p.Needed)).Mean)
	for _, s := range []result.Spread{words.InDays(p.Needed), words.InDays(p.Waiting), words.InDays(p.InHand), p.Recovered} {
		row = append(row, threeOf(s)...)
	}
	return row
}

// StudyForPeople is the table without what is the same in all plans or says the same in another way.
func StudyForPeople(s *result.Study) *Table {
	keys, all := []string{"plan"}, []string{"scenario"}
	for _, path := range s.Varied {
		all = append(all, setKey(path))
	}
	for k, key := range append(all, "sails") {
		if alternatives.Varies(s, k) {
			keys = append(keys, key)
		}
	}
	t := Study(s).Only(append(keys, "days_p10", "days_p50", "days_p90", "chance_primary", "chance_all", "in_hand_p50", "waiting_p50", "recovered_p10", "recovered_p50", "recovered_p90")...)
	for i, f := range t.Fields {
		if f.Kind == ofDate { // with the year: a study may go on for some
			t.Fields[i].Kind = OfWords
			for r := range t.Rows {
				t.Rows[r][i] = words.Date(s.Plans[r].Sails)
			}
		}
	}
	return t
}

// StudyCSV writes the table of a study into a folder, with a dictionary of its columns.
func StudyCSV(ctx context.Context, folder string, s *result.Study) error {
	return writeCSV(ctx, folder, []*Table{Study(s)})
}
