package text

import (
	"cmp"
	"fmt"
	"io"
	"math"
	"slices"
	"strings"

	"coredays/model/check"
	"coredays/model/plan"
	"coredays/output/words"
)

// Check prints what was found by holding a plan against what ship, string, ground and sea allow: stops
// first, then cautions, the same one once for all its sites, then what passes; the sources of the limits last.
func Check(w io.Writer, p *plan.Plan, found []check.Finding, d Detail) error {
	pg := On(w)
	pg.checkTitle(p, found)
	var from notes
	told := []check.Verdict{check.Stop, check.Caution}
	if d.All {
		told = append(told, check.Pass)
	}
	for _, v := range told {
		if err := pg.verdicts(v, check.Of(found, v), &from); err != nil {
			return err
		}
	}
	if !d.All {
		pg.passed(check.Of(found, check.Pass))
	}
	if len(p.Warnings) > 0 {
		pg.Heading("Filled in or worth knowing")
		for _, warning := range p.Warnings {
			pg.Item(warning)
		}
	}
	pg.sources("Sources of the limits", from)
	pg.Cautions(d.All || d.Cautions)
	return pg.To(w)
}

// passed tells what passes in a sentence.
func (p *Printer) passed(found []check.Finding) {
	if len(found) == 0 {
		return
	}
	p.Heading("%s %d passed", Mark(check.Pass), len(found))
	tight := slices.DeleteFunc(slices.Clone(found), func(f check.Finding) bool { return f.Value == f.Limit || math.IsInf(room(f), 1) }) // what is meant to be at its limit tells nothing
	if len(tight) > 0 {
		closest := slices.MinFunc(tight, func(a, b check.Finding) int { return cmp.Compare(room(a), room(b)) })
		value, limit := apart(closest.Value, closest.Limit)
		p.Say("Nearest to its limit: %s%s, %s, to be %s %s.", at(closest), closest.What, withUnit(value, closest.Unit), Relation(&closest), withUnit(limit, closest.Unit))
	}
	p.Say("--all lists them.")
}

// at is where a finding belongs, before what it says.
func at(f check.Finding) string {
	if f.Site == "" {
		return ""
	}
	return strings.TrimSpace(f.Site+" "+f.Hole) + ", "
}

// Relation is what a value must be to its limit; empty where there is none.
func Relation(f *check.Finding) string {
	switch {
	case !words.Defined(f.Limit):
		return ""
	case f.Least:
		return "≥"
	}
	return "≤"
}

// Mark is the shape of a verdict.
func Mark(v check.Verdict) string { return [...]string{"·", "▲", "■"}[v] }

var verdictWords = [...]string{"pass", "caution", "STOP"}

func (p *Printer) checkTitle(s *plan.Plan, found []check.Finding) {
	p.Paragraph("", Indent, fmt.Sprintf("%s; %s", words.OrElse(s.Title, "Unnamed scenario"), words.OrElse(s.Ship.Name, "unnamed ship")))
	p.Paragraph("", Indent, VerdictLine(found))
	if hardest := HardestWords(found); hardest != "" {
		p.Paragraph("", Indent, hardest)
	}
}

// VerdictLine says the worst that was found, and how much of each.
func VerdictLine(found []check.Finding) string {
	worst := check.Worst(found)
	return fmt.Sprintf("%s Verdict: %s (%s, %s, %d passed).", Mark(worst), verdictWords[worst],
		many(len(check.Of(found, check.Stop)), "stop"), many(len(check.Of(found, check.Caution)), "caution"), len(check.Of(found, check.Pass)))
}

// many is a number of things, "no stops", "1 caution", "6 cautions".
func many(n int, thing string) string {
	switch n {
	case 0:
		return "no " + thing + "s"
	case 1:
		return "1 " + thing
	}
	return fmt.Sprintf("%d %ss", n, thing)
}

var VerdictHeadings = [...]string{"Passed (closest: nearest to its limit)", "Cautions", "Stops: the plan can't be done so"}

// verdicts prints the findings of one verdict.
func (p *Printer) verdicts(v check.Verdict, found []check.Finding, from *notes) error {
	if len(found) == 0 {
		return nil
	}
	switch v {
	case check.Pass:
		found = Together(found)
	case check.Caution:
		found = Gathered(found)
	}
	p.Heading("%s %s", Mark(v), VerdictHeadings[v])
	cols := []Column{WordColumn("site and hole", 16), WordColumn("what", max(46, p.width-54)), NumberColumn("plan"), NumberColumn("limit"), WordColumn("unit", 7), NumberColumn("source")}
	var rows [][]string
	for _, f := range ToldInFull(found) {
		value, limit := apart(f.Value, f.Limit)
		if limit != "" {
			limit = Relation(&f) + " " + limit
		}
		rows = append(rows, []string{strings.TrimSpace(f.Site + " " + f.Hole), f.What, value, limit, f.Unit, from.of(f.Source)})
	}
	return p.Table(cols, rows)
}
