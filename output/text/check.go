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
	"coredays/model/unit"
	"coredays/output/words"
)

// Check prints what was found by holding a plan against what ship, string, ground and sea allow: stops
// first, then cautions, the same one once for all its sites, then what passes; the sources of the limits last.
func Check(w io.Writer, p *plan.Plan, found []check.Finding, d Detail) error {
	pg := on(w)
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
		pg.heading("Filled in or worth knowing")
		for _, warning := range p.Warnings {
			pg.item(warning)
		}
	}
	pg.sources("Sources of the limits", from)
	pg.cautions(d.All || d.Cautions)
	return pg.to(w)
}

// passed tells what passes in a sentence.
func (p *printer) passed(found []check.Finding) {
	if len(found) == 0 {
		return
	}
	p.heading("%s %d passed", Mark(check.Pass), len(found))
	tight := slices.DeleteFunc(slices.Clone(found), func(f check.Finding) bool { return f.Value == f.Limit || math.IsInf(room(f), 1) }) // what is meant to be at its limit tells nothing
	if len(tight) > 0 {
		closest := slices.MinFunc(tight, func(a, b check.Finding) int { return cmp.Compare(room(a), room(b)) })
		value, limit := apart(closest.Value, closest.Limit)
		p.say("Nearest to its limit: %s%s, %s, to be %s %s.", at(closest), closest.What, withUnit(value, closest.Unit), Relation(&closest), withUnit(limit, closest.Unit))
	}
	p.say("--all lists them.")
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

func (p *printer) checkTitle(s *plan.Plan, found []check.Finding) {
	p.paragraph("", indent, fmt.Sprintf("%s; %s", words.OrElse(s.Title, "Unnamed scenario"), words.OrElse(s.Ship.Name, "unnamed ship")))
	p.paragraph("", indent, VerdictLine(found))
}

// VerdictLine says the worst that was found, and how much of each.
func VerdictLine(found []check.Finding) string {
	worst := check.Worst(found)
	return fmt.Sprintf("%s Verdict: %s. %s, %s, %d passed.", Mark(worst), verdictWords[worst],
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
func (p *printer) verdicts(v check.Verdict, found []check.Finding, from *notes) error {
	if len(found) == 0 {
		return nil
	}
	switch v {
	case check.Pass:
		found = Together(found)
	case check.Caution:
		found = Gathered(found)
	}
	p.heading("%s %s", Mark(v), VerdictHeadings[v])
	cols := []column{wordColumn("site and hole", 16), wordColumn("what", max(46, p.width-54)), numberColumn("plan"), numberColumn("limit"), wordColumn("unit", 7), numberColumn("source")}
	var rows [][]string
	for _, f := range ToldInFull(found) {
		value, limit := apart(f.Value, f.Limit)
		if limit != "" {
			limit = Relation(&f) + " " + limit
		}
		rows = append(rows, []string{strings.TrimSpace(f.Site + " " + f.Hole), f.What, value, limit, f.Unit, from.of(f.Source)})
	}
	return p.table(cols, rows)
}

// Gathered makes one of cautions that say the same of several sites: the worst of them, with all the sites.
func Gathered(found []check.Finding) (fewer []check.Finding) {
	for _, g := range grouped(found) {
		worst := slices.MaxFunc(g, func(a, b check.Finding) int { return cmp.Compare(beyond(a), beyond(b)) })
		if len(g) > 1 {
			var sites []string
			for _, f := range g {
				if name := strings.TrimSpace(f.Site + " " + f.Hole); !slices.Contains(sites, name) {
					sites = append(sites, name)
				}
			}
			worst.What, worst.Where = fmt.Sprintf("%s (worst of %d: %s)", lookedAt(worst), len(g), strings.TrimSpace(worst.Site+" "+worst.Hole)), ""
			worst.Site, worst.Hole = strings.Join(sites, ", "), ""
		}
		fewer = append(fewer, worst)
	}
	return fewer
}

// beyond is how far a finding is on the wrong side of its limit, as a share of that.
func beyond(f check.Finding) float64 {
	if !words.Defined(f.Value) || !words.Defined(f.Limit) {
		return 0
	}
	if f.Least {
		return (f.Limit - f.Value) / math.Abs(f.Limit)
	}
	return (f.Value - f.Limit) / math.Abs(f.Limit)
}

// ToldInFull has what stops a plan, or is to be looked at, say the chance that it goes well, where it stands
// and what could be done.
func ToldInFull(found []check.Finding) (all []check.Finding) {
	for _, f := range found {
		if f.Verdict != check.Pass {
			f.What = inFull(f)
		}
		all = append(all, f)
	}
	return all
}

func inFull(f check.Finding) string {
	text := f.What
	if f.Chance != nil {
		text += ", chance " + chanceWords(*f.Chance)
	}
	if f.Where != "" && (f.Verdict == check.Stop || f.Cure != "") {
		text += " (" + f.Where + ")"
	}
	if f.Cure != "" {
		text += ": " + f.Cure
	}
	return text
}

// chanceWords writes a chance for people.
func chanceWords(chance float64) string {
	if chance < 0.001 {
		return "below 0.1 %"
	}
	return words.Figures(100*chance) + " %"
}

// Together makes one of findings that are alike: that closest to its limit, or that which all of them are.
func Together(found []check.Finding) (fewer []check.Finding) {
	for _, g := range grouped(found) {
		fewer = append(fewer, one(g))
	}
	return fewer
}

// grouped puts together what is alike.
func grouped(found []check.Finding) (groups [][]check.Finding) {
	for _, f := range found {
		if i := slices.IndexFunc(groups, func(g []check.Finding) bool { return alike(g[0], f) }); i >= 0 {
			groups[i] = append(groups[i], f)
			continue
		}
		groups = append(groups, []check.Finding{f})
	}
	return groups
}

// alike reports whether findings differ in nothing but site, hole and figures. What concerns the
// expedition stands alone.
func alike(a, b check.Finding) bool {
	return a.Site != "" && b.Site != "" && (a.Hole == "") == (b.Hole == "") && lookedAt(a) == lookedAt(b) && a.Unit == b.Unit && a.Source == b.Source
}

// lookedAt is what was looked at, without the particulars of a place.
func lookedAt(f check.Finding) string { return words.OrElse(f.Kind, f.What) }

// one stands for findings that are alike.
func one(of []check.Finding) check.Finding {
	closest := slices.MinFunc(of, func(a, b check.Finding) int { return cmp.Compare(room(a), room(b)) })
	if len(of) == 1 {
		return closest
	}
	closest.What = lookedAt(closest)
	if slices.ContainsFunc(of, func(f check.Finding) bool { return !sameFigures(f, closest) }) {
		closest.What += fmt.Sprintf(" (closest of %d)", len(of))
		return closest
	}
	places := "sites"
	if closest.Hole != "" {
		places = "holes"
	}
	closest.Site, closest.Hole = fmt.Sprintf("%d %s", len(of), places), ""
	return closest
}

func sameFigures(a, b check.Finding) bool {
	return words.Figure(a.Value) == words.Figure(b.Value) && words.Figure(a.Limit) == words.Figure(b.Limit)
}

// room is the share of its limit that lies between a finding and its limit.
func room(f check.Finding) float64 {
	if !words.Defined(f.Value) || !words.Defined(f.Limit) || f.Limit == 0 {
		return math.Inf(1)
	}
	return math.Abs(f.Value-f.Limit) / math.Abs(f.Limit)
}

// apart writes a value and its limit with as many figures as it takes to tell them apart: a value above its
// limit must not read as if it were the limit.
func apart(value, limit float64) (string, string) {
	v, l := words.Figure(value), words.Figure(limit)
	if v != l || value == limit || !words.Defined(value) || !words.Defined(limit) {
		return v, l
	}
	return unit.OfCount.TellApart(value, limit, ""), unit.OfCount.TellApart(limit, value, "")
}

// Stops says the findings that stop a plan, a line each, and which they are.
func Stops(found []check.Finding) []string { return findingLines(check.Of(found, check.Stop)) }

// Unlikely says the findings that nobody would count on to go well, though nothing stops them.
func Unlikely(found []check.Finding) []string {
	const slight = 0.1
	return findingLines(slices.DeleteFunc(check.Of(found, check.Caution), func(f check.Finding) bool { return f.Chance == nil || *f.Chance >= slight }))
}

func findingLines(found []check.Finding) (lines []string) {
	for _, f := range found {
		lines = append(lines, FindingWords(f))
	}
	return lines
}

// FindingWords says a finding in a line: where, what, its figures, and what could be done.
func FindingWords(f check.Finding) string {
	line := Mark(f.Verdict) + " "
	if f.Site != "" {
		line += "site " + f.Site + ": "
	}
	if f.Hole != "" {
		line += "hole " + f.Hole + ": "
	}
	if words.Defined(f.Value) && words.Defined(f.Limit) {
		value, limit := apart(f.Value, f.Limit)
		most := "at most"
		if f.Least {
			most = "at least"
		}
		f.What += fmt.Sprintf(" (%s, %s %s)", withUnit(value, f.Unit), most, withUnit(limit, f.Unit))
	}
	line += inFull(f)
	return words.Printable(line)
}

func withUnit(value, unit string) string { return strings.TrimSpace(value + " " + unit) }
