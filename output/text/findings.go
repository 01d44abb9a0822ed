package text

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"coredays/model/check"
	"coredays/model/unit"
	"coredays/output/words"
)

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
