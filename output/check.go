package output

import (
	"fmt"
	"io"
	"slices"
	"strconv"

	"coredays/model/check"
	"coredays/model/plan"
)

// Check prints what was found by holding a plan against what ship, string, ground and sea allow: stops
// first, then cautions, each with its source, then what passes.
func Check(w io.Writer, p *plan.Plan, found []check.Finding) error {
	var pg page
	pg.checkTitle(p, found)
	for _, v := range []check.Verdict{check.Stop, check.Caution, check.Pass} {
		if err := pg.verdicts(v, check.Of(found, v)); err != nil {
			return err
		}
	}
	if len(p.Warnings) > 0 {
		pg.heading("Filled in or worth knowing")
		for _, warning := range p.Warnings {
			pg.item(warning)
		}
	}
	pg.heading("Not decided by this check")
	for _, c := range check.Cautions() {
		pg.item(c)
	}
	return pg.to(w)
}

// mark is the shape of a verdict.
func mark(v check.Verdict) string { return [...]string{"·", "▲", "■"}[v] }

var verdictWords = [...]string{"pass", "caution", "STOP"}

func (p *page) checkTitle(s *plan.Plan, found []check.Finding) {
	p.paragraph("", indent, fmt.Sprintf("%s; %s", orElse(s.Title, "Unnamed scenario"), orElse(s.Ship.Name, "unnamed ship")))
	worst := check.Worst(found)
	p.paragraph("", indent, fmt.Sprintf("%s Verdict: %s. %d to stop for, %d to look at, %d passed.", mark(worst), verdictWords[worst],
		len(check.Of(found, check.Stop)), len(check.Of(found, check.Caution)), len(check.Of(found, check.Pass))))
}

var verdictHeadings = [...]string{"Passed", "To look at", "To stop for: the plan can't be done so"}

// verdicts prints the findings of one verdict.
func (p *page) verdicts(v check.Verdict, found []check.Finding) error {
	if len(found) == 0 {
		return nil
	}
	p.heading("%s %s", mark(v), verdictHeadings[v])
	if v == check.Pass {
		found = together(found)
	}
	cols := []column{words("site", 14), words("hole", 10), words("what", 46), numbers("value"), numbers("limit"), words("unit", 4)}
	if v != check.Pass {
		cols = []column{words("site", 10), words("hole", 11), words("what", 26), numbers("value"), numbers("limit"), words("unit", 4), words("source of the limit", 30)}
	}
	var rows [][]string
	for _, f := range found {
		row := []string{f.Site, f.Hole, f.What, figure(f.Value), figure(f.Limit), f.Unit}
		if v != check.Pass {
			row = append(row, f.Source)
		}
		rows = append(rows, row)
	}
	return p.table(cols, rows)
}

// together makes one of findings that differ in the hole alone.
func together(found []check.Finding) (fewer []check.Finding) {
	for _, f := range found {
		same := func(o check.Finding) bool {
			return f.Hole != "" && o.Hole != "" && o.Site == f.Site && o.What == f.What && figure(o.Value) == figure(f.Value) && figure(o.Limit) == figure(f.Limit)
		}
		if i := slices.IndexFunc(fewer, same); i >= 0 {
			fewer[i].Hole += ", " + f.Hole
			continue
		}
		fewer = append(fewer, f)
	}
	return fewer
}

// figure is a number of a finding, empty where it has none.
func figure(value float64) string {
	switch {
	case !defined(value):
		return ""
	case value >= 1000:
		return strconv.FormatFloat(value, 'f', 0, 64) // depths and strings are told to the metre
	}
	return figures(value)
}

// Stops tells the findings that stop a plan, a line each, and which they are.
func Stops(found []check.Finding) (lines []string) {
	for _, f := range check.Of(found, check.Stop) {
		line := mark(check.Stop) + " "
		if f.Site != "" {
			line += "site " + f.Site + ": "
		}
		if f.Hole != "" {
			line += "hole " + f.Hole + ": "
		}
		line += f.What
		if defined(f.Value) && defined(f.Limit) {
			line += fmt.Sprintf(" (%s, limit %s)", withUnit(f.Value, f.Unit), withUnit(f.Limit, f.Unit))
		}
		lines = append(lines, printable(line))
	}
	return lines
}

func withUnit(value float64, unit string) string {
	if unit == "" {
		return figure(value)
	}
	return figure(value) + " " + unit
}
