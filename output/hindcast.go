package output

import (
	"fmt"
	"io"

	"coredays/model/score"
)

// HindcastText prints the answer of a hindcast for people.
func HindcastText(w io.Writer, h *score.Hindcast) error {
	var p page
	p.hindcastTitle(h)
	p.hindcastCard(&h.Card)
	for _, section := range []func(*score.Hindcast) error{p.hindcastClasses, p.hindcastCycles, p.hindcastRecovery} {
		if err := section(h); err != nil {
			return err
		}
	}
	p.leftOut(h)
	return p.to(w)
}

func (p *page) hindcastTitle(h *score.Hindcast) {
	p.paragraph("", indent, fmt.Sprintf("Hindcast of %s at level %s: %s of %s, each simulated %s; seed %d", h.File, h.Level,
		counted(h.Card.Cases, "site"), counted(h.Card.Groups, "leg"), counted(h.Replications, "time"), h.Seed))
	p.paragraph("", indent, "Intervals hold the figure 95 times in 100 over legs: sites of one leg are not independent.")
}

// hindcastCard prints the scores of days on site.
func (p *page) hindcastCard(c *score.Card) {
	p.heading("Days on site")
	p.item(fmt.Sprintf("CRPS %s d (%s): mean distance of forecast and fact, less what the forecast's own spread explains; %s d for the "+
		"days of the other legs taken as the forecast, so skill %s", fixed(c.CRPS, 2), between(fixed(c.CRPSCI[0], 2), fixed(c.CRPSCI[1], 2)), fixed(c.Alone, 2), figures(c.Skill)))
	p.item("CRPS of the logarithm " + figures(c.CRPSLog))
	p.item("median absolute error of the median " + figures(c.AbsPercent) + " %")
	p.item(fmt.Sprintf("actual over forecast median: median %s (%s); above 1 it took longer", figures(c.Ratio), interval(c.RatioCI)))
	p.item(fmt.Sprintf("inside the 50 %% band %s %% (%s), inside the 80 %% band %s %% (%s)", figures(100*c.Inside50), interval(inPercent(c.Inside50CI)),
		figures(100*c.Inside80), interval(inPercent(c.Inside80CI))))
	p.item(fmt.Sprintf("sites by the share of the forecast below the fact, in tenths: %v", c.RankHistogram))
}

func interval(ci [2]float64) string { return between(figures(ci[0]), figures(ci[1])) }

func inPercent(ci [2]float64) [2]float64 { return [2]float64{100 * ci[0], 100 * ci[1]} }

// hindcastClasses prints how classes of sites did.
func (p *page) hindcastClasses(h *score.Hindcast) error {
	p.heading("By class")
	p.WriteByte('\n')
	cols := []column{words("by", 30), words("class", 16), numbers("sites"), numbers("actual over\nmedian"), numbers("CRPS (d)"), numbers("inside\n80 % (%)")}
	var rows [][]string
	last := ""
	for _, c := range h.Classes {
		by := c.By
		if by == last {
			by = ""
		}
		last = c.By
		rows = append(rows, []string{by, c.Class, fmt.Sprint(c.Cases), fixed(c.Ratio, 2), fixed(c.CRPS, 2), fixed(100*c.Inside80, 0)})
	}
	return p.table(cols, rows)
}

// hindcastCycles prints core cycles beside the record.
func (p *page) hindcastCycles(h *score.Hindcast) error {
	if len(h.Cycles) == 0 {
		return nil
	}
	p.heading("Core cycles: median of the holes' medians")
	p.WriteByte('\n')
	cols := []column{words("tool", 10), words("water", 12), numbers("holes"), numbers("record (min)"), numbers("simulated (min)"), numbers("off (%)")}
	var rows [][]string
	for _, c := range h.Cycles {
		rows = append(rows, []string{c.Tool, c.DepthClass, fmt.Sprint(c.Holes), fixed(c.Record, 0), fixed(c.Simulated, 0), fixed(100*(c.Simulated/c.Record-1), 0)})
	}
	return p.table(cols, rows)
}

// hindcastRecovery prints recovery beside the record.
func (p *page) hindcastRecovery(h *score.Hindcast) error {
	if len(h.Recovery) == 0 {
		return nil
	}
	p.heading("Recovery of holes (%%): P50 (P10–P90)")
	p.WriteByte('\n')
	var rows [][]string
	for _, r := range h.Recovery {
		rows = append(rows, []string{r.Tool, fmt.Sprint(r.Holes), triple(r.Record), triple(r.Simulated)})
	}
	return p.table([]column{words("tool", 10), numbers("holes"), numbers("record"), numbers("simulated")}, rows)
}

func triple(q [3]float64) string {
	return fixed(q[1], 0) + " (" + between(fixed(q[0], 0), fixed(q[2], 0)) + ")"
}

// leftOut counts the rows left out by reason; the JSON has them one by one.
func (p *page) leftOut(h *score.Hindcast) {
	if len(h.LeftOut) == 0 {
		return
	}
	p.heading("Left out: %s", counted(len(h.LeftOut), "row"))
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
		p.item(fmt.Sprintf("%s (%s, line %d the first)", why, counted(count[why], "row"), first[why]))
	}
}
