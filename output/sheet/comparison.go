package sheet

import (
	"context"
	"fmt"
	"io"
	"slices"

	"github.com/xuri/excelize/v2"

	"coredays/model/result"
	"coredays/output/text"
	"coredays/output/text/alternatives"
	"coredays/output/words"
)

// Compared says what was compared and how to repeat it; program is the name and the version of what made it.
func Compared(c *result.Comparison, program string) *Table {
	t := &Table{Name: "compared", Title: "What was compared", Fields: []Field{{Key: "what", Heading: "what", Kind: OfWords}, {Key: "value", Heading: "value", Kind: OfWords}}}
	t.Add("scenario", c.Title)
	t.Add("invented demonstration", words.YesNo(c.Invented))
	t.Add("ship", c.Ship)
	t.Add("question", alternatives.Questions[c.Question])
	t.Add("replications of each", fmt.Sprint(c.Replications))
	t.Add("stopped early", words.YesNo(c.StoppedEarly))
	t.Add("seed", fmt.Sprint(c.Seed))
	t.Add("program", program)
	return t
}

// comparedInFiles has besides what a page says elsewhere.
func comparedInFiles(c *result.Comparison, program string) *Table {
	t := Compared(c, program)
	t.Add("the same again", alternatives.Call(c))
	for _, w := range alternatives.Warnings(c) {
		t.Add("warning", w)
	}
	return t
}

// answering are the tables that answer a comparison: none where there is nothing to compare.
func answering(c *result.Comparison) []*Table {
	switch {
	case !alternatives.Answers(c):
		return nil
	case c.Question == result.WhatToCut:
		list := []*Table{Cuts(c)}
		if len(c.Days) > 0 {
			list = append(list, MoreDays(c))
		}
		return list
	}
	list := []*Table{Alternatives(c), Differences(c)}
	if c.Question == result.WhichOrder && c.Reference >= 0 && c.Reference != c.Best {
		best, short := &c.Alternatives[c.Best], &c.Alternatives[c.Reference]
		list = append(list, Visits(best, short), Items(best, short))
	}
	return list
}

// ComparisonCSV writes the tables of a comparison into a folder, a file each, with a dictionary of their columns.
func ComparisonCSV(ctx context.Context, folder string, c *result.Comparison, program string) error {
	return writeCSV(ctx, folder, append([]*Table{comparedInFiles(c, program)}, answering(c)...))
}

// ComparisonWorkbook writes a workbook of a comparison: its answer in words and figures, then its tables.
func ComparisonWorkbook(ctx context.Context, w io.Writer, c *result.Comparison, program string) error {
	sheets := answering(c)
	summary := summaryOf(alternatives.AnswerLines(c), nil, comparedInFiles(c, program))
	if len(sheets) == 0 {
		return writeBook(ctx, w, c.Title, []*Table{summary}, nil)
	}
	first := c.Best
	if c.Question == result.WhatToCut {
		first = 0 // as planned
	}
	summary = summaryOf(alternatives.AnswerLines(c), text.Facts(c.Alternatives[first].Summary), comparedInFiles(c, program))
	return writeBook(ctx, w, c.Title, slices.Concat([]*Table{summary}, sheets), comparisonPictures(c, sheets[0]))
}

// comparisonPictures are what decides, of each alternative or cut.
func comparisonPictures(c *result.Comparison, t *Table) []picture {
	if c.Question == result.WhatToCut {
		return []picture{{excelize.Bar, "Days saved by leaving out one thing, mean", t, "without", "saves_mean", "", "days", 0, 0}}
	}
	return []picture{{excelize.Bar, "Chance that all of rank 1 is done within the days", t, "alternative", "chance_primary", "", "share of the expeditions", 0, 0},
		{excelize.Bar, "Days needed, P50 of the whole programme", t, "alternative", "days_p50", "", "days", 0, 0}}
}
