package alternatives

import (
	"fmt"
	"io"
	"strings"

	"coredays/model/result"
	"coredays/output/text"
	"coredays/output/words"
)

// Study prints a study for people, a row a plan.
func Study(w io.Writer, s *result.Study) error {
	p := &printer{text.On(w)}
	p.Paragraph("", text.Indent, fmt.Sprintf("%s: %s", s.Title, text.Counted(s.Of, "plan")))
	for _, line := range StudyMadeOf(s) {
		p.Paragraph("", text.Indent, line)
	}
	if len(s.Plans) > 0 {
		p.Heading("In short")
		for _, line := range StudyLines(s) {
			p.Say("%s", line)
		}
		if err := p.studied(s); err != nil {
			return err
		}
	}
	if len(s.Warnings) > 0 {
		p.Heading("Warnings")
		for _, w := range s.Warnings {
			p.Item(w)
		}
	}
	p.Cautions(true)
	p.Again(StudyCall(s), "")
	return p.To(w)
}

// StudyMadeOf says what a study rests on, and where it was stopped.
func StudyMadeOf(s *result.Study) (lines []string) {
	if s.StoppedEarly {
		lines = append(lines, fmt.Sprintf("Stopped early: %d of the plans are done.", len(s.Plans)))
	}
	return append(lines, fmt.Sprintf("Seed %d; %s of each. A row is the answer of coredays simulate for that plan; coredays compare tells which "+
		"differences between plans are more than noise.", s.Seed, text.Counted(s.Replications, "replication")))
}

// StudyLines tell the plans with the highest and the lowest chance, and what all have in common.
func StudyLines(s *result.Study) []string {
	most, least := 0, 0
	for i := range s.Plans {
		if s.Plans[i].ChancePrimary > s.Plans[most].ChancePrimary {
			most = i
		}
		if s.Plans[i].ChancePrimary < s.Plans[least].ChancePrimary {
			least = i
		}
	}
	often := func(i int) string {
		return fmt.Sprintf("in plan %d (%s) %s", i+1, strings.Join(PlanWords(s, i), ", "), words.Often(s.Plans[i].ChancePrimary, s.Replications))
	}
	lines := []string{"Everything of rank 1 at the primary sites gets done most often " + often(most) + "."}
	if s.Plans[most].ChancePrimary == s.Plans[least].ChancePrimary {
		lines = []string{"Everything of rank 1 at the primary sites gets done as often in all plans: " + words.Often(s.Plans[0].ChancePrimary, s.Replications) + "."}
	} else {
		lines = append(lines, "Least often "+often(least)+".")
	}
	var same []string
	for k, column := range studyColumns(s) {
		if !Varies(s, k) {
			same = append(same, column+" "+PlanValues(s, 0)[k])
		}
	}
	if len(same) > 0 {
		lines = append(lines, "The same in all: "+strings.Join(same, ", ")+".")
	}
	return lines
}

// studyColumns are what a plan of a study is told by.
func studyColumns(s *result.Study) []string {
	return append(append([]string{"scenario"}, s.Varied...), "sails")
}

// PlanValues are those of the scenario, of what is varied and of the date of a plan.
func PlanValues(s *result.Study, i int) []string {
	p := &s.Plans[i]
	return append(append([]string{p.Scenario}, p.Settings...), words.Date(p.Sails))
}

// Varies reports whether the plans of a study differ in one of the values.
func Varies(s *result.Study, column int) bool {
	for i := range s.Plans {
		if PlanValues(s, i)[column] != PlanValues(s, 0)[column] {
			return true
		}
	}
	return false
}

// PlanWords are the values of a plan that differ between plans, settings with their paths; all where none does.
func PlanWords(s *result.Study, i int) (list []string) {
	columns, values := studyColumns(s), PlanValues(s, i)
	for k, value := range values {
		if Varies(s, k) {
			if k > 0 && k < len(values)-1 {
				value = columns[k] + " " + value
			}
			list = append(list, value)
		}
	}
	if len(list) == 0 {
		return []string{values[0]}
	}
	return list
}

// studied prints the row of each plan.
func (p *printer) studied(s *result.Study) error {
	p.Heading("Plans")
	p.WriteByte('\n')
	columns := []text.Column{text.NumberColumn("\nplan")}
	var shown []int
	for k, name := range studyColumns(s) {
		if Varies(s, k) {
			shown, columns = append(shown, k), append(columns, text.WordColumn("\n"+name, widestValue(s, k, name)))
		}
	}
	columns = append(columns, text.NumberColumn("days needed (d)\nP50 (P10–P90)"), text.NumberColumn("done (%):\nrank 1"), text.NumberColumn("\nall"), text.NumberColumn("in hand (d)\nP50"), text.NumberColumn("core (m)\nP50"))
	var rows [][]string
	for i := range s.Plans {
		f, row := &s.Plans[i].PlanFigures, []string{fmt.Sprint(i + 1)}
		for _, k := range shown {
			row = append(row, PlanValues(s, i)[k])
		}
		inHand := words.InDays(words.Supported(f.InHand))
		rows = append(rows, append(row, words.Ranged(words.InDays(f.Needed), 1), words.Chance(f.ChancePrimary, s.Replications), words.Chance(f.ChanceAll, s.Replications),
			words.Fixed(inHand.P50, 1), words.Fixed(words.Supported(f.Recovered).P50, 0)))
	}
	if err := p.Table(columns, rows); err != nil {
		return err
	}
	p.Say("%s", StudyNote)
	return nil
}

// widestValue is how wide a column of values is.
func widestValue(s *result.Study, column int, name string) int {
	width := words.Displayed(name)
	for i := range s.Plans {
		width = max(width, words.Displayed(PlanValues(s, i)[column]))
	}
	return min(width, 30)
}

// StudyNote says what the columns are of.
const StudyNote = "Days needed: of the whole programme, no deadline. Done, in hand and core: within the sea days of the plan, under the rules of the expedition."

// StudyCall is the command line of a study.
func StudyCall(s *result.Study) string {
	call := "coredays study"
	for _, word := range s.Call {
		call += " " + text.Quoted(word)
	}
	return call + fmt.Sprintf(" --seed %d --replications %d", s.Seed, s.Replications)
}
