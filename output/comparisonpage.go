package output

import (
	"fmt"
	"html/template"
	"io"
	"slices"
	"strings"

	"coredays/model/check"
	"coredays/model/logbook"
)

// ComparisonHTML writes a comparison as one page that fetches nothing; program is the name and the
// version of what made it.
func ComparisonHTML(w io.Writer, c *logbook.Comparison, program string) error {
	view, err := comparisonViewOf(c, program)
	if err != nil {
		return err
	}
	return writePage(w, "comparison.html.tmpl", view)
}

// comparisonView is what the page shows, ready to be set.
type comparisonView struct {
	Style                template.CSS
	Title, Sub, Question string
	Headline             []string
	Standing             []string // how the others stand to the first
	FactsOf              string
	Facts                []fact
	Made                 []string // what it rests on
	Warnings             []string
	Alternatives         *alternativesView
	Cuts, Days           *tableView
	Cautions             []string
	Run                  *sheet
	Call                 string
}

// tableView is a table with its charts and how to read it.
type tableView struct {
	Pictures []*picture
	Table    *sheet
	Note     string
}

func comparisonViewOf(c *logbook.Comparison, program string) (*comparisonView, error) {
	v := &comparisonView{Style: template.CSS(reportStyle), Title: orElse(c.Title, "Unnamed scenario"), Sub: comparisonSub(c), Question: questions[c.Question],
		Warnings: c.Warnings, Cautions: check.Cautions(), Run: comparedSheet(c, program), Call: compareCall(c)}
	if !answers(c) {
		v.Headline = madeOf(c)
		return v, nil
	}
	v.Made = madeOf(c)
	if c.Question == logbook.WhatToCut {
		return v, v.cut(c)
	}
	v.Headline, v.Standing = []string{firstWords(c)}, standingLines(c)
	v.FactsOf, v.Facts = "The first", facts(c.Alternatives[c.Best].Summary)
	var err error
	v.Alternatives, err = alternativesViewOf(c)
	return v, err
}

// cut fills in what to cut and what a day is worth.
func (v *comparisonView) cut(c *logbook.Comparison) error {
	v.Headline = slices.Concat([]string{asPlannedSentence(c)}, cheapestSentence(c), oneDaySentence(c))
	v.FactsOf, v.Facts = "As planned", facts(c.Alternatives[0].Summary)
	cuts, err := picturesOf(cutsCharts(c))
	if err != nil {
		return err
	}
	v.Cuts = &tableView{cuts, cutsSheet(c).only("without", "row", "kind", "saves_mean", "saves_p50", "saves_p90", "core_less_mean", "m_a_day", "section_less", "chance_primary", "chance_all"), cutsNote}
	if len(c.Days) == 0 {
		return nil
	}
	days, err := picturesOf([]*chart{moreDaysChart(c)})
	v.Days = &tableView{days, moreDaysSheet(c), moreNote}
	return err
}

// firstWords name the first alternative and tell what it brings.
func firstWords(c *logbook.Comparison) string {
	return "First: " + c.Alternatives[c.Best].Name + ". " + strings.Join(firstLines(c), " ")
}

// oneDaySentence tells what a day more is worth, where one was tried.
func oneDaySentence(c *logbook.Comparison) []string {
	for _, d := range c.Days {
		if d.Days == 1 {
			return []string{fmt.Sprintf("With one day more, rank 1 gets done %s, the whole programme %s.", often(d.First, c.Replications), often(d.All, c.Replications))}
		}
	}
	return nil
}

func comparisonSub(c *logbook.Comparison) string {
	line := orElse(c.Ship, "unnamed ship")
	if answers(c) && (c.Question == logbook.WhichOrder || c.Question == logbook.WhatToCut) {
		s := c.Alternatives[c.Best].Summary
		line += fmt.Sprintf(", sails %s, %s sea days", moment(s.Sails), given(s.Allotted.SeaDays.Days()))
	}
	if c.Invented {
		line += allMadeUp
	}
	return line
}

// comparedSheet tells what was compared and how to repeat it.
func comparedSheet(c *logbook.Comparison, program string) *sheet {
	t := &sheet{name: "compared", title: "What was compared", fields: []field{{key: "what", heading: "what", kind: ofWords}, {key: "value", heading: "value", kind: ofWords}}}
	t.add("scenario", c.Title)
	t.add("invented demonstration", yesNo(c.Invented))
	t.add("ship", c.Ship)
	t.add("question", questions[c.Question])
	t.add("replications of each", fmt.Sprint(c.Replications))
	t.add("stopped early", yesNo(c.StoppedEarly))
	t.add("seed", fmt.Sprint(c.Seed))
	t.add("program", program)
	return t
}
