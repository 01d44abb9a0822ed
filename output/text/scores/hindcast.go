// Package scores prints a hindcast for a terminal.
package scores

import (
	"fmt"
	"io"

	"coredays/model/score"
	"coredays/output/text"
	"coredays/output/words"
)

// printer prints a hindcast.
type printer struct{ *text.Printer }

// Print prints the answer of a hindcast for people.
func Print(w io.Writer, h *score.Hindcast) error {
	p := &printer{text.On(w)}
	p.hindcastTitle(h)
	p.hindcastCard(&h.Card)
	p.withoutLegTime(&h.WithoutLegTime)
	for _, section := range []func(*score.Hindcast) error{p.hindcastResults, p.hindcastTold, p.hindcastClasses, p.hindcastCycles, p.hindcastRecovery} {
		if err := section(h); err != nil {
			return err
		}
	}
	p.open(h)
	p.leftOut(h)
	return p.To(w)
}

func (p *printer) hindcastTitle(h *score.Hindcast) {
	p.Paragraph("", text.Indent, fmt.Sprintf("Hindcast of %s at level %s: %s of %s, each simulated %s; seed %d", h.File, h.Level,
		text.Counted(h.Card.Cases, "site"), text.Counted(h.Card.Groups, "leg"), text.Counted(h.Replications, "time"), h.Seed))
	p.Paragraph("", text.Indent, "Intervals hold the figure 95 times in 100 over legs: sites of one leg are not independent.")
}

// hindcastCard prints the scores of days on site.
func (p *printer) hindcastCard(c *score.Card) {
	p.Heading("Days on site")
	p.Item(fmt.Sprintf("CRPS %s d (%s): mean distance of forecast and fact, less what the forecast's own spread explains; %s d for the "+
		"days of the other legs taken as the forecast, so skill %s", words.Fixed(c.CRPS, 2), words.Between(words.Fixed(c.CRPSCI[0], 2), words.Fixed(c.CRPSCI[1], 2)), words.Fixed(c.Alone, 2), words.Figures(c.Skill)))
	p.Item("CRPS of the logarithm " + words.Figures(c.CRPSLog))
	p.Item("median absolute error of the median " + words.Figures(c.AbsPercent) + " %")
	p.Item(fmt.Sprintf("actual over forecast median: median %s (%s); above 1 it took longer", words.Figures(c.Ratio), interval(c.RatioCI)))
	p.Item(fmt.Sprintf("inside the 50 %% band %s %% (%s), inside the 80 %% band %s %% (%s)", words.Figures(100*c.Inside50), interval(inPercent(c.Inside50CI)),
		words.Figures(100*c.Inside80), interval(inPercent(c.Inside80CI))))
	p.Item(fmt.Sprintf("sites by the share of the forecast below the fact, in tenths: %v", c.RankHistogram))
}

// withoutLegTime prints what the score is where nothing is known of how long legs are on their sites.
func (p *printer) withoutLegTime(c *score.Card) {
	if c.Cases == 0 {
		return
	}
	p.Item(fmt.Sprintf("told the holes alone, and not how long legs are on their sites: CRPS %s d (%s), inside the 50 %% band %s %%, inside the 80 %% band %s %% (%s)",
		words.Fixed(c.CRPS, 2), words.Between(words.Fixed(c.CRPSCI[0], 2), words.Fixed(c.CRPSCI[1], 2)), words.Figures(100*c.Inside50), words.Figures(100*c.Inside80), interval(inPercent(c.Inside80CI))))
}

// open prints what the record does not tell.
func (p *printer) open(h *score.Hindcast) {
	if len(h.Open) == 0 {
		return
	}
	p.Heading("What the record does not tell: here alone; all else is what simulate does")
	for _, what := range h.Open {
		p.Item(what)
	}
}

func interval(ci [2]float64) string { return words.Between(words.Figures(ci[0]), words.Figures(ci[1])) }

func inPercent(ci [2]float64) [2]float64 { return [2]float64{100 * ci[0], 100 * ci[1]} }

// hindcastClasses prints how classes of sites did.
func (p *printer) hindcastClasses(h *score.Hindcast) error {
	p.Heading("By class")
	p.WriteByte('\n')
	cols := []text.Column{text.WordColumn("by", 30), text.WordColumn("class", 16), text.NumberColumn("sites"), text.NumberColumn("actual over\nmedian"), text.NumberColumn("CRPS (d)"), text.NumberColumn("inside\n80 % (%)")}
	var rows [][]string
	last := ""
	for _, c := range h.Classes {
		by := c.By
		if by == last {
			by = ""
		}
		last = c.By
		rows = append(rows, []string{by, c.Class, fmt.Sprint(c.Cases), words.Fixed(c.Ratio, 2), words.Fixed(c.CRPS, 2), words.Fixed(100*c.Inside80, 0)})
	}
	return p.Table(cols, rows)
}

// hindcastCycles prints core cycles beside the record.
func (p *printer) hindcastCycles(h *score.Hindcast) error {
	if len(h.Cycles) == 0 {
		return nil
	}
	p.Heading("Core cycles: median of the holes' medians")
	p.WriteByte('\n')
	cols := []text.Column{text.WordColumn("tool", 10), text.WordColumn("water", 12), text.NumberColumn("holes"), text.NumberColumn("record (min)"), text.NumberColumn("simulated (min)"), text.NumberColumn("off (%)")}
	var rows [][]string
	for _, c := range h.Cycles {
		rows = append(rows, []string{c.Tool, c.DepthClass, fmt.Sprint(c.Holes), words.Fixed(c.Record, 0), words.Fixed(c.Simulated, 0), words.Fixed(100*(c.Simulated/c.Record-1), 0)})
	}
	return p.Table(cols, rows)
}

// hindcastRecovery prints recovery beside the record.
func (p *printer) hindcastRecovery(h *score.Hindcast) error {
	if len(h.Recovery) == 0 {
		return nil
	}
	p.Heading("Recovery of holes (%%): P50 (P10–P90)")
	p.WriteByte('\n')
	var rows [][]string
	for _, r := range h.Recovery {
		rows = append(rows, []string{r.Tool, fmt.Sprint(r.Holes), triple(r.Record), triple(r.Simulated)})
	}
	return p.Table([]text.Column{text.WordColumn("tool", 10), text.NumberColumn("holes"), text.NumberColumn("record"), text.NumberColumn("simulated")}, rows)
}

func triple(q [3]float64) string {
	return words.Fixed(q[1], 0) + " (" + words.Between(words.Fixed(q[0], 0), words.Fixed(q[2], 0)) + ")"
}

// leftOut counts the rows left out by reason; the JSON has them one by one.
func (p *printer) leftOut(h *score.Hindcast) {
	if len(h.LeftOut) == 0 {
		return
	}
	p.Heading("Left out: %s", text.Counted(len(h.LeftOut), "row"))
	first := map[string]int{}
	count := map[string]int{}
	var order []string
	for _, o := range h.LeftOut {
		if count[o.Why] == 0 {
			order, first[o.Why] = append(order, o.Why), o.Row
		}
		count[o.Why]++
	}
	for _, why := range order {
		p.Item(fmt.Sprintf("%s (%s, line %d the first)", why, text.Counted(count[why], "row"), first[why]))
	}
}
