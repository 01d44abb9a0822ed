package page

import (
	"fmt"
	"html/template"
	"io"
	"strings"

	"coredays/model/check"
	"coredays/model/result"
	"coredays/output/chart"
	"coredays/output/sheet"
	"coredays/output/text"
	"coredays/output/text/alternatives"
	"coredays/output/words"
)

// Comparison writes a comparison as one page that fetches nothing; program is the name and the
// version of what made it, dated the date that it carries, if any.
func Comparison(w io.Writer, c *result.Comparison, program, dated string) error {
	view, err := comparisonViewOf(c, program)
	if err != nil {
		return err
	}
	view.Dated = dated
	return writePage(w, "comparison.html.tmpl", view)
}

// comparisonView is what the page shows, ready to be set.
type comparisonView struct {
	Style                template.CSS
	Title, Sub, Question string
	Dated                string // empty for none
	Headline             []string
	Standing             []string // how the others stand to the first
	FactsOf              string
	Facts                []text.Fact
	Made                 []string // what it rests on
	Warnings             []string
	Alternatives         *alternativesView
	Cuts, Days           *tableView
	Cautions             []string
	Run                  *sheet.Table
	Call                 string
}

// tableView is a table with its charts and how to read it.
type tableView struct {
	Pictures []*picture
	Table    *sheet.Table
	Note     string
}

func comparisonViewOf(c *result.Comparison, program string) (*comparisonView, error) {
	v := &comparisonView{Style: template.CSS(reportStyle), Title: words.OrElse(c.Title, "Unnamed scenario"), Sub: comparisonSub(c), Question: alternatives.Questions[c.Question],
		Warnings: alternatives.Warnings(c), Cautions: check.Cautions(), Run: sheet.Compared(c, program), Call: alternatives.Call(c)}
	if !alternatives.Answers(c) {
		v.Headline = alternatives.MadeOf(c)
		return v, nil
	}
	v.Made = alternatives.MadeOf(c)
	if c.Question == result.WhatToCut {
		return v, v.cut(c)
	}
	v.Headline, v.Standing = []string{firstWords(c)}, alternatives.StandingLines(c)
	v.FactsOf, v.Facts = "The first", text.Facts(c.Alternatives[c.Best].Summary)
	var err error
	v.Alternatives, err = alternativesViewOf(c)
	return v, err
}

// cut fills in what to cut and what a day is worth.
func (v *comparisonView) cut(c *result.Comparison) error {
	v.Headline = alternatives.AnswerLines(c)
	v.FactsOf, v.Facts = "As planned", text.Facts(c.Alternatives[0].Summary)
	cuts, err := picturesOf(chart.Cuts(c))
	if err != nil {
		return err
	}
	v.Cuts = &tableView{cuts, sheet.Cuts(c).Only("without", "row", "kind", "rank", "chance_primary", "chance_primary_gained", "chance_all", "core_less_mean", "saves_mean", "saves_p50", "saves_p90", "section_less"), alternatives.CutsNote}
	if len(c.Days) == 0 {
		return nil
	}
	days, err := picturesOf([]*chart.Chart{chart.MoreDays(c)})
	v.Days = &tableView{days, sheet.MoreDays(c), alternatives.MoreNote}
	return err
}

// firstWords name the first alternative and tell what it brings.
func firstWords(c *result.Comparison) string {
	return alternatives.FirstHeading(c) + ". " + strings.Join(alternatives.FirstLines(c), " ")
}

func comparisonSub(c *result.Comparison) string {
	line := words.OrElse(c.Ship, "unnamed ship")
	if alternatives.Answers(c) && (c.Question == result.WhichOrder || c.Question == result.WhatToCut) {
		s := c.Alternatives[c.Best].Summary
		line += fmt.Sprintf(", sails %s, %s sea days", words.Moment(s.Sails), words.Given(s.Allotted.SeaDays.Days()))
	}
	if c.Invented {
		line += allMadeUp
	}
	return line
}
