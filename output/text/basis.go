package text

import (
	"cmp"
	"fmt"
	"io"
	"math"
	"slices"
	"strings"

	"coredays/model/basis"
	"coredays/model/plan"
	"coredays/model/result"
	"coredays/output/words"
)

// Basis prints the numbers that a plan rests on, group by group; where a simulation says, after what drives the
// spread of days needed and the numbers behind that.
func Basis(w io.Writer, p *plan.Plan, entries []basis.Entry, simulated *result.Summary) error {
	pg := On(w)
	pg.Paragraph("", Indent, fmt.Sprintf("What %s rests on; %s", words.OrElse(p.Title, "the unnamed scenario"), words.OrElse(p.Ship.Name, "unnamed ship")))
	pg.basisCounts(entries)
	var from notes
	if simulated != nil {
		if err := pg.weighed(entries, simulated); err != nil {
			return err
		}
	}
	for _, group := range Groups(entries) {
		pg.Heading("%s", group)
		if err := pg.Table(pg.basisColumns(), basisRows(InGroup(entries, group), &from)); err != nil {
			return err
		}
	}
	pg.sources("Sources", from)
	return pg.To(w)
}

// weighed prints the causes of the spread of days needed and the numbers that they go back to, what matters
// most first.
func (p *Printer) weighed(entries []basis.Entry, s *result.Summary) error {
	if err := p.drivers(s); err != nil {
		return err
	}
	mattering := Mattering(entries)
	if len(mattering) == 0 {
		return nil
	}
	p.Heading("The numbers behind it, %s replications", words.Given(float64(s.Replications)))
	p.Paragraph("", Indent, BehindWords(entries))
	p.WriteByte('\n')
	var rows [][]string
	for _, e := range mattering {
		rows = append(rows, []string{words.Fixed(100*e.Share, 1), e.Site, e.Name, valueOf(e), e.Varies, LiesIn(e)})
	}
	return p.Table([]Column{NumberColumn("share\n(%)"), WordColumn("site", 7), WordColumn("number", 24), WordColumn("value", 20), WordColumn("varies by", 12), WordColumn("of which (%)", 26)}, rows)
}

// Mattering are the entries whose spread has a share of that of the days needed.
func Mattering(entries []basis.Entry) (some []basis.Entry) {
	for _, e := range entries {
		if e.Share > 0 {
			some = append(some, e)
		}
	}
	return some
}

// BehindWords says what the shares of numbers are.
func BehindWords(entries []basis.Entry) string {
	return fmt.Sprintf("A number's share is its part of the variance of days needed, and lies in the causes named. All numbers together have %s %%; the rest is chance in sea, breakdowns and trouble, and what several numbers do together. What may be chance is left out.",
		words.Percent(basis.Together(entries)))
}

// leastPart is the part of the variance from which a cause is named with a number, and mostParts how many are.
// Our choice.
const (
	leastPart = 0.005
	mostParts = 3
)

// LiesIn names the causes in whose time the share of a number mostly lies, in percent of the variance.
func LiesIn(e basis.Entry) string {
	parts := slices.Clone(e.Causes)
	slices.SortStableFunc(parts, func(a, b result.Driver) int { return cmp.Compare(math.Abs(b.Share), math.Abs(a.Share)) })
	var names []string
	for i, d := range parts[:min(mostParts, len(parts))] {
		if i == 0 || math.Abs(d.Share) >= leastPart {
			names = append(names, d.Name+" "+words.Fixed(100*d.Share, 1))
		}
	}
	return strings.Join(names, ", ")
}

func (p *Printer) basisCounts(entries []basis.Entry) {
	p.Paragraph("", Indent, BasisCounted(entries))
	p.Paragraph("", Indent, "Values are P10, P50 and P90 where there is a spread. Varies by: the share of that spread, in %, that lies between expeditions (E), sites (S), "+
		"holes (H) and runs (R). Source: the line of the scenario, or the number of a note at the end.")
}

// BasisCounted says how much of a basis somebody stated, and how much is from memory.
func BasisCounted(entries []basis.Entry) string {
	stated, memory := 0, 0
	for _, e := range entries {
		if e.From == basis.Stated {
			stated++
		}
		if e.Memory {
			memory++
		}
	}
	return fmt.Sprintf("%d numbers: %d stated by the scenario, %d wholly or in part from memory or judgement.", len(entries), stated, memory)
}

// BasedOn is BasisCounted for an answer that does not list them.
func BasedOn(entries []basis.Entry) string {
	return "It rests on " + strings.TrimSuffix(BasisCounted(entries), ".") + " (coredays basis lists them)."
}

// basisColumns leave the numbers' names as much room as there is, so that each has one line where it can.
func (p *Printer) basisColumns() []Column {
	return []Column{WordColumn("number", max(44, p.width-60)), WordColumn("value", 26), WordColumn("varies by (%)", 15), WordColumn("source", sourceWidth)}
}

// sourceWidth holds the line of a file with a short name.
const sourceWidth = 22

// basisRows have the numbers of each site below its name.
func basisRows(entries []basis.Entry, from *notes) (rows [][]string) {
	site := ""
	for _, e := range entries {
		if e.Site != site {
			site = e.Site
			rows = append(rows, []string{site, "", "", ""})
		}
		name := e.Name
		if site != "" {
			name = Indent + name
		}
		rows = append(rows, []string{name, valueOf(e), varies(e.Varies), sourceOf(&e, from)})
	}
	return rows
}

// varies shortens the levels of a spread to their first letters.
func varies(levels string) string {
	var short []string
	for part := range strings.SplitSeq(levels, ", ") {
		if share, level, is := strings.Cut(part, " % "); is && level != "" {
			part = strings.ToUpper(level[:1]) + share
		}
		short = append(short, part)
	}
	return strings.Join(short, " ")
}

// sourceOf is where the scenario states a number, or the number of a note.
func sourceOf(e *basis.Entry, from *notes) string {
	if e.From == basis.Stated && words.Displayed(e.Source) <= sourceWidth {
		return e.Source
	}
	return e.From.String() + " " + from.of(e.Source)
}

// valueOf is the number with its spread and unit.
func valueOf(e basis.Entry) string {
	text := words.Figures(e.Mid)
	if e.Spread() {
		text = words.Figures(e.Low) + " / " + text + " / " + words.Figures(e.High)
	}
	if e.Unit != "" {
		text += " " + e.Unit
	}
	return text
}

// Groups are those of the entries, in their order.
func Groups(entries []basis.Entry) (all []string) {
	seen := map[string]bool{}
	for _, e := range entries {
		if !seen[e.Group] {
			seen[e.Group] = true
			all = append(all, e.Group)
		}
	}
	return all
}

func InGroup(entries []basis.Entry, group string) (some []basis.Entry) {
	for _, e := range entries {
		if e.Group == group {
			some = append(some, e)
		}
	}
	return some
}
