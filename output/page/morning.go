package page

import (
	"fmt"
	"html/template"
	"io"

	"coredays/model/morning"
	"coredays/output/chart"
	"coredays/output/text/mornings"
	"coredays/output/words"
)

// morningView is what the morning page shows, ready to be set.
type morningView struct {
	Style    template.CSS
	Title    string
	Sub      string
	Headline []string
	Parts    []morningPart
	Warnings []string
	Caution  string
}

// morningPart is a part of it: sentences, a chart, a table.
type morningPart struct {
	mornings.Part
	Pictures []*picture
	Heads    []morningHead
}

type morningHead struct {
	Text  string
	Words bool
}

// Morning writes the morning page as one page that fetches nothing; program is the name and the version of what made it.
func Morning(w io.Writer, m *morning.Page, program string) error {
	v := &morningView{Style: template.CSS(reportStyle), Title: words.OrElse(m.Scenario, "Unnamed scenario"),
		Sub:      fmt.Sprintf("%s; the rest sailed %d times; seed %d; %s", words.Moment(m.At), m.Replications, m.Seed, program),
		Headline: morningHeadline(m), Warnings: m.Warnings, Caution: mornings.Caution}
	pictures, err := picturesOf(chart.Morning(m))
	if err != nil {
		return err
	}
	for _, p := range mornings.Parts(m) {
		part := morningPart{Part: p}
		for _, c := range p.Columns {
			heading, isWords := c.Heads()
			part.Heads = append(part.Heads, morningHead{heading, isWords})
		}
		for _, x := range pictures {
			if drawnWith[p.Key] == x.Title {
				part.Pictures = append(part.Pictures, x)
			}
		}
		v.Parts = append(v.Parts, part)
	}
	return writePage(w, "morning.html.tmpl", v)
}

// drawnWith says beside which part a chart stands.
var drawnWith = map[string]string{"holes": "What is to come", "choices": "What each choice is worth, against going on as planned"}

// morningHeadline is what must be known first: when she is home, when she must leave, and what to do about it.
func morningHeadline(m *morning.Page) (list []string) {
	list = append(list, mornings.InBrief(m))
	for _, l := range m.LeaveBy {
		if !l.PullOut.IsZero() {
			list = append(list, fmt.Sprintf("To be in time in %s of 100, begin to pull out by %s.", words.Percent(l.Chance), words.Moment(l.PullOut)))
			break
		}
	}
	if m.Advice != "" {
		return append(list, "Better than going on as planned: "+m.Advice+".")
	}
	return append(list, "No choice is told apart from going on as planned and better.")
}
