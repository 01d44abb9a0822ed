// Package alternatives prints a comparison for a terminal.
package alternatives

import (
	"fmt"
	"io"
	"strings"

	"coredays/model/result"
	"coredays/output/text"
	"coredays/output/words"
)

// printer prints a comparison.
type printer struct{ *text.Printer }

// Print prints alternatives side by side for people.
func Print(w io.Writer, c *result.Comparison) error {
	p := &printer{text.On(w)}
	p.comparisonTitle(c)
	if Answers(c) {
		if err := p.comparison(c); err != nil {
			return err
		}
	}
	p.comparisonWarnings(c)
	p.Cautions(false)
	p.Again(Call(c), "")
	return p.To(w)
}

// comparison prints the sections that answer the question.
func (p *printer) comparison(c *result.Comparison) error {
	sections := []func(*result.Comparison) error{p.first, p.sideBySide, p.differences}
	switch c.Question {
	case result.WhichOrder:
		sections = []func(*result.Comparison) error{p.first, p.sideBySide, p.why, p.searched}
	case result.WhatToCut:
		sections = []func(*result.Comparison) error{p.cuts, p.moreDays}
	}
	for _, section := range sections {
		if err := section(c); err != nil {
			return err
		}
	}
	return nil
}

// Questions are what is asked, as the title says it.
var Questions = map[result.Question]string{
	result.WhichPlan:      "which plan",
	result.WhichOrder:     "in which order to visit the sites",
	result.WhichDeparture: "when to sail",
	result.WhatToCut:      "what to cut, and what a day is worth",
}

func (p *printer) comparisonTitle(c *result.Comparison) {
	title := words.OrElse(c.Title, "Unnamed scenario")
	if c.Invented {
		title += " (invented demonstration)"
	}
	p.Paragraph("", text.Indent, fmt.Sprintf("%s: %s", title, Questions[c.Question]))
	for _, line := range MadeOf(c) {
		p.Paragraph("", text.Indent, line)
	}
}

// MadeOf says what a comparison rests on, and where it was stopped.
func MadeOf(c *result.Comparison) (lines []string) {
	if !Answers(c) {
		return []string{"Stopped before any alternative was sailed, so there is no answer."}
	}
	if c.StoppedEarly {
		lines = append(lines, "Stopped early: alternatives that were not done are left out.")
	}
	return append(lines, fmt.Sprintf("Seed %d; %s of each, with the same random numbers and the same sea on the same date. "+
		"Intervals tell what more replications could change, not how wrong a plan or the program may be.", c.Seed, text.Counted(c.Replications, "replication")))
}

// Answers reports whether there is anything to compare.
func Answers(c *result.Comparison) bool { return len(c.Alternatives) > 0 && c.Replications > 0 }

// first prints which alternative comes first.
func (p *printer) first(c *result.Comparison) error {
	p.Heading("%s", FirstHeading(c))
	for _, line := range append(FirstLines(c), StandingLines(c)...) {
		p.Say("%s", line)
	}
	return nil
}

// FirstHeading names the first alternative.
func FirstHeading(c *result.Comparison) string {
	return words.OrElse(words.OrLess("Best order: ", c.Question == result.WhichOrder), "First: ") + Named(c, c.Best)
}

// Named is an alternative as a sentence names it: an order of sites with arrows, since commas part what is listed.
func Named(c *result.Comparison, i int) string {
	name := c.Alternatives[i].Name
	if c.Question == result.WhichOrder {
		name = strings.ReplaceAll(name, ", ", " → ")
	}
	return name
}

// Warnings are those of a comparison, each with the alternatives that it is of.
func Warnings(c *result.Comparison) (list []string) {
	for _, w := range c.Warnings {
		for i := range c.Alternatives {
			if rest, is := strings.CutPrefix(w, c.Alternatives[i].Name+": "); is {
				w = Named(c, i) + ": " + rest
				break
			}
		}
		list = append(list, w)
	}
	return list
}

// mostAlike is how many orders a sentence lists; more are hard to read, and the table has them all.
const mostAlike = 4

// FirstLines tell what the first alternative brings.
func FirstLines(c *result.Comparison) []string {
	best := c.Alternatives[c.Best].Summary
	a := &best.Allotted
	return []string{
		words.Happens(a.ChancePrimary, c.Replications, "Everything of rank 1 at the primary sites gets done", "Not everything of rank 1 gets done"),
		fmt.Sprintf("The whole programme needs P50 %s d; P50 %s m of core come up within %s days.", words.Fixed(words.InDays(best.Needed.Total).P50, words.DayPlaces),
			words.Fixed(words.Middle(a.Recovered), 0), words.Given(a.SeaDays.Days())),
	}
}

// StandingLines tell how the others stand to the first, and by which rule.
func StandingLines(c *result.Comparison) []string {
	lines := []string{aliveSentence(c)}
	if planned := plannedSentence(c); planned != "" {
		lines = append(lines, planned)
	}
	return append(lines, fmt.Sprintf("By the chance of rank 1 first (less than %s in a hundred counts as the same), then days, then metres.", words.Figures(100*c.SameChance)))
}

// plannedSentence says how the order of the scenario stands to the first; empty where there is none.
func plannedSentence(c *result.Comparison) string {
	switch {
	case c.Planned < 0 || c.Planned >= len(c.Alternatives):
		return ""
	case c.Planned == c.Best:
		return "It is the order of the scenario."
	}
	planned := &c.Alternatives[c.Planned]
	how := "which is behind it"
	if planned.Alike {
		how = "which is indistinguishable from it"
	}
	return fmt.Sprintf("The order of the scenario is %s, %s: rank 1 gets done %s, the whole programme needs P50 %s d.", Named(c, c.Planned), how,
		words.Often(planned.Summary.Allotted.ChancePrimary, c.Replications), words.Fixed(words.InDays(planned.Summary.Needed.Total).P50, words.DayPlaces))
}

// aliveSentence says which alternatives can't be given from the first.
func aliveSentence(c *result.Comparison) string {
	var alike []string
	for i := range c.Alternatives {
		if c.Alternatives[i].Alike && i != c.Best {
			alike = append(alike, Named(c, i)+settled(c, i))
		}
	}
	switch {
	case len(c.Alternatives) == 1:
		return "There is nothing to compare it with."
	case len(alike) == 0:
		return fmt.Sprintf("All others are behind it, with %.0f %% confidence in all of this together.", 100*c.Confidence)
	}
	if more := len(alike) - mostAlike; more > 0 && c.Question == result.WhichOrder {
		alike = append(alike[:mostAlike], fmt.Sprintf("%d more, which the table has", more))
	}
	return fmt.Sprintf("Indistinguishable from it in %s: %s.", text.Counted(c.Replications, "replication"), strings.Join(alike, "; "))
}

// settled says how many replications would settle the days of an alternative against the first,
// where more than there were.
func settled(c *result.Comparison, i int) string {
	for n := range c.Differences {
		d := &c.Differences[n]
		if d.SettlesDays > 0 && c.Replications > 1 && (d.A == c.Best && d.B == i || d.A == i && d.B == c.Best) {
			return " (" + settling(d) + ")"
		}
	}
	return ""
}

func NamesWhere(c *result.Comparison, holds func(i int) bool) (names []string) {
	for i := range c.Alternatives {
		if holds(i) {
			names = append(names, c.Alternatives[i].Name)
		}
	}
	return names
}

func (p *printer) comparisonWarnings(c *result.Comparison) {
	if len(c.Warnings) == 0 {
		return
	}
	p.Heading("Warnings")
	for _, w := range Warnings(c) {
		p.Item(w)
	}
}

// Call is the command line of a comparison.
func Call(c *result.Comparison) string {
	call := "coredays compare"
	for _, word := range c.Call {
		call += " " + text.Quoted(word)
	}
	return call + fmt.Sprintf(" --seed %d --replications %d", c.Seed, max(c.Replications, 1))
}
