package alternatives

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"coredays/model/plan"
	"coredays/model/result"
	"coredays/model/unit"
	"coredays/output/text"
	"coredays/output/words"
)

// cuts prints what each thing costs and yields, what helps most first, and in a line what hardly matters.
func (p *printer) cuts(c *result.Comparison) error {
	p.Heading("What each thing costs and yields")
	for _, text := range append([]string{AsPlannedSentence(c)}, BestCutSentences(c)...) {
		p.Say("%s", text)
	}
	p.WriteByte('\n')
	columns := []text.Column{text.WordColumn("without", 34), text.NumberColumn("rank"), text.NumberColumn("rank 1\ndone (%)"), text.NumberColumn("more\n(points)"), text.NumberColumn("all\ndone (%)"),
		text.NumberColumn("core less\n(m)"), text.NumberColumn("saves (d)\nmean"), text.NumberColumn("section\n(points)")}
	planned := &c.Alternatives[0].Summary.Allotted
	rows := [][]string{{"nothing: as planned", "", words.Chance(planned.ChancePrimary, c.Replications), "", words.Chance(planned.ChanceAll, c.Replications), "", "", ""}}
	list, trifles := Ranked(c)
	for _, cut := range list {
		rows = append(rows, cutRow(c, cut))
	}
	if err := p.Table(columns, rows); err != nil {
		return err
	}
	p.Says(Trifles(trifles))
	p.Say("%s", CutsNote)
	return nil
}

// CutsNote says what the columns of the table are of.
const CutsNote = "Rank 1 and all done: chances within the days of what is left; more: than as planned, replication by replication. Core less and saves: of the whole programme, no deadline; " +
	"what comes later meets another sea, so one thing less may cost days once in a while. Section: points of the site's section that no hole brings up any more. " +
	"Order: points of rank 1 for each metre of core less, the most first; what helps no more than chance may do comes after."

// A cut is a trifle where it saves less days and moves the chance of rank 1 by less than this. Our choice.
const (
	trifleSaves  = float64(unit.Day) / 2
	trifleChance = 0.015
)

// Ranked lists the cuts, those first that help what ranks first most for the core that they cost, and apart those
// that hardly matter.
func Ranked(c *result.Comparison) (list, trifles []*result.Cut) {
	for i := range c.Cuts {
		cut := &c.Cuts[i]
		if math.Abs(cut.Saves.Mean) < trifleSaves && math.Abs(Gain(c, cut)) < trifleChance {
			trifles = append(trifles, cut)
			continue
		}
		list = append(list, cut)
	}
	slices.SortStableFunc(list, func(a, b *result.Cut) int { return cmp.Compare(gainForCore(c, b), gainForCore(c, a)) })
	return list, trifles
}

// Gain is the chance of what ranks first of the rest, more than as planned.
func Gain(c *result.Comparison, cut *result.Cut) float64 {
	return cut.Alternative.Allotted.ChancePrimary - c.Alternatives[0].Summary.Allotted.ChancePrimary
}

// gainForCore is the chance gained for each metre of core less, at least one metre; what may be chance gains nothing.
func gainForCore(c *result.Comparison, cut *result.Cut) float64 {
	gain := Gain(c, cut)
	if gain > 0 && cut.First.Low <= 0 && cut.First.High > 0 {
		gain = 0
	}
	return gain / max(1, cut.Metres.Mean)
}

// BestCutSentences name what helps most for the core that it costs, and the hole that does.
func BestCutSentences(c *result.Comparison) (list []string) {
	ranked, _ := Ranked(c)
	helps := func(kinds ...plan.Kind) *result.Cut {
		for _, cut := range ranked {
			if slices.Contains(kinds, cut.Kind) && gainForCore(c, cut) > 0 {
				return cut
			}
		}
		return nil
	}
	best := helps(plan.Measurement, plan.WholeTask, plan.WholeHole, plan.WholeSite)
	if best == nil {
		return []string{"Leaving out no single thing helps what ranks first."}
	}
	list = append(list, bestCutSentence(c, "Most help for the core that it costs", best))
	if hole := helps(plan.WholeHole); hole != nil && hole != best {
		list = append(list, bestCutSentence(c, "Of the holes", hole))
	}
	return list
}

func bestCutSentence(c *result.Comparison, of string, cut *result.Cut) string {
	return fmt.Sprintf("%s: without %s rank 1 gets done %s, %s points more; it saves %s d and costs %s.", of, CutName(cut),
		words.Often(cut.Alternative.Allotted.ChancePrimary, c.Replications), gainWords(c, cut), words.SignedFixed(cut.Saves.Mean/float64(unit.Day), 1), coreCost(cut))
}

// gainWords are the points gained with their interval, where it is known.
func gainWords(c *result.Comparison, cut *result.Cut) string {
	if cut.First == (result.Interval{}) {
		return words.SignedFixed(100*Gain(c, cut), 0)
	}
	i := cut.First
	return words.Bounded(result.Interval{Mean: 100 * i.Mean, Low: 100 * i.Low, High: 100 * i.High}, 0) // whole points, as chances are whole per cent
}

// Trifles names what hardly matters in a sentence.
func Trifles(list []*result.Cut) string {
	if len(list) == 0 {
		return ""
	}
	var names []string
	for _, cut := range list {
		names = append(names, CutName(cut))
	}
	return "Hardly matters (less than half a day and than 1.5 points): " + strings.Join(names, ", ") + "."
}

// CutRank is the rank of what is cut, or of the hole that it belongs to.
func CutRank(c *result.Comparison, cut *result.Cut) string {
	for i := range c.Alternatives[0].Summary.Sites {
		site := &c.Alternatives[0].Summary.Sites[i]
		if site.Name != cut.Site {
			continue
		}
		if cut.Kind == plan.WholeSite {
			return words.Ranks(site)
		}
		for _, h := range site.Holes {
			if cut.What == h.Name || cut.Kind == plan.Measurement && strings.HasPrefix(cut.What, h.Name+" ") {
				return strconv.Itoa(h.Rank)
			}
		}
	}
	return ""
}

// coreCost says the core that a cut costs.
func coreCost(cut *result.Cut) string {
	if cut.Metres.Mean < 0.5 {
		return "no core"
	}
	return words.Fixed(cut.Metres.Mean, 0) + " m of core"
}

// AsPlannedSentence says what gets done with nothing cut.
func AsPlannedSentence(c *result.Comparison) string {
	a := &c.Alternatives[0].Summary.Allotted
	return fmt.Sprintf("Everything of rank 1 gets done %s, the whole programme %s, as planned.", words.Often(a.ChancePrimary, c.Replications), words.Often(a.ChanceAll, c.Replications))
}

// MetresADay is the core that each day of something brings.
func MetresADay(cut *result.Cut) float64 {
	if !(cut.Saves.Mean > 0) {
		return math.NaN()
	}
	return cut.Metres.Mean / (cut.Saves.Mean / float64(unit.Day))
}

// cutRow is the line of a cut.
func cutRow(c *result.Comparison, cut *result.Cut) []string {
	saves := words.InDays(cut.Saves)
	section := ""
	if BringsCore(cut) {
		section = words.SignedFixed(100*cut.Section, 0)
	}
	return []string{CutName(cut), CutRank(c, cut), words.Chance(cut.Alternative.Allotted.ChancePrimary, c.Replications), gainWords(c, cut),
		words.Chance(cut.Alternative.Allotted.ChanceAll, c.Replications), words.SignedFixed(cut.Metres.Mean, 0), words.SignedFixed(saves.Mean, 1), section}
}

// CutWords says what leaving something out saves and costs.
func CutWords(cut *result.Cut, replications int) string {
	return fmt.Sprintf("saves %s d and costs %s, mean of the whole programme; of the rest rank 1 gets done %s.",
		words.SignedFixed(cut.Saves.Mean/float64(unit.Day), 1), coreCost(cut), words.Often(cut.Alternative.Allotted.ChancePrimary, replications))
}

// BringsCore reports whether what is cut brings up core.
func BringsCore(cut *result.Cut) bool {
	return cut.Kind == plan.WholeHole || cut.Kind == plan.WholeSite
}

// CutName says what is cut.
func CutName(cut *result.Cut) string {
	name := cut.Site + words.OrLess(" "+cut.What, cut.What != "") + words.OrLess(" (the whole site)", cut.Kind == plan.WholeSite)
	if len(cut.Also) > 0 {
		name += " (and " + strings.Join(cut.Also, ", ") + ", which depends on it)"
	}
	return name
}

// moreDays prints what days more or less would bring.
func (p *printer) moreDays(c *result.Comparison) error {
	if len(c.Days) == 0 {
		return nil
	}
	days := c.Alternatives[0].Summary.Allotted.SeaDays.Days()
	p.Heading("What a day is worth")
	p.WriteByte('\n')
	columns := []text.Column{text.NumberColumn("sea days\n(d)"), text.NumberColumn("rank 1\ndone (%)"), text.NumberColumn("more\n(points)"), text.NumberColumn("all\ndone (%)"),
		text.NumberColumn("more\n(points)"), text.NumberColumn("core\n(m)"), text.NumberColumn("more\n(m)")}
	var rows [][]string
	for _, d := range DaysAndPlanned(c) {
		row := []string{words.Given(days + d.Days), words.Percent(d.First), "", words.Percent(d.All), "", words.Fixed(d.Metres, 0), ""}
		if d.Days != 0 {
			row[2], row[4], row[6] = words.Points(d.FirstMore), words.Points(d.AllMore), words.Bounded(d.MetresMore, 0)
		}
		rows = append(rows, row)
	}
	if err := p.Table(columns, rows); err != nil {
		return err
	}
	p.Say("%s", MoreNote)
	return nil
}

const MoreNote = "More: than as planned, replication by replication, mean and its 95 % interval."

// DaysAndPlanned are the sea days tried, with those planned in their place; more than these they
// have nothing.
func DaysAndPlanned(c *result.Comparison) (list []result.DayMore) {
	a := &c.Alternatives[0].Summary.Allotted
	none := result.Interval{Mean: math.NaN(), Low: math.NaN(), High: math.NaN()}
	planned := result.DayMore{First: a.ChancePrimary, All: a.ChanceAll, FirstMore: none, AllMore: none, Metres: a.Recovered.Mean, MetresMore: none}
	placed := false
	for _, d := range c.Days {
		if d.Days > 0 && !placed {
			list, placed = append(list, planned), true
		}
		list = append(list, d)
	}
	if !placed {
		list = append(list, planned)
	}
	return list
}
