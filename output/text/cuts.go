package text

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"coredays/model/plan"
	"coredays/model/result"
	"coredays/model/unit"
	"coredays/output/words"
)

// cuts prints what each thing costs and yields: measurements and tasks with the most days first,
// holes and sites with the fewest metres a day first.
func (p *printer) cuts(c *result.Comparison) error {
	p.heading("What each thing costs and yields")
	for _, text := range append([]string{AsPlannedSentence(c)}, CheapestSentence(c)...) {
		p.say("%s", text)
	}
	p.WriteByte('\n')
	columns := []column{wordColumn("without", 34), numberColumn("saves (d)\nmean"), numberColumn("\nP50"), numberColumn("\nP90"), numberColumn("core less\n(m)"), numberColumn("m a day\nsaved"),
		numberColumn("section\n(points)"), numberColumn("the rest (%):\nrank 1"), numberColumn("\nall")}
	var rows [][]string
	for kind := plan.Measurement; kind <= plan.WholeSite; kind++ {
		if list := CutsOf(c, kind); len(list) > 0 {
			rows = append(rows, append([]string{"a " + kind.String()}, make([]string, 8)...))
			for _, cut := range list {
				rows = append(rows, cutRow(cut, c.Replications))
			}
		}
	}
	if err := p.table(columns, rows); err != nil {
		return err
	}
	p.say("%s", CutsNote)
	return nil
}

// CutsNote says what the columns of the table are of.
const CutsNote = "Saves and core: of the whole programme, no deadline, replication by replication; what comes later meets another sea, so one " +
	"thing less may cost days once in a while. Section: points of the site's section that no hole brings up any more. The rest: chances within the days of what is left. " +
	"Order: measurements and tasks by the days saved, the most first; holes and sites by the core for each day saved, the least first."

// worthCutting is how much a hole must save to be worth naming.
const worthCutting = float64(unit.Day) / 2

// CheapestSentence names the hole that costs the least core for a day saved among those that save
// enough to matter; none where no hole can be left out.
func CheapestSentence(c *result.Comparison) []string {
	holes := CutsOf(c, plan.WholeHole)
	if len(holes) == 0 {
		return nil
	}
	for _, cut := range holes { // the least core for a day first
		if cut.Saves.Mean >= worthCutting {
			return []string{fmt.Sprintf("Of the holes that save half a day or more, %s costs the least core for each day: leaving it out saves %s d and costs %s, mean of the whole programme.",
				CutName(cut), words.SignedFixed(cut.Saves.Mean/float64(unit.Day), 1), coreCost(cut))}
		}
	}
	return []string{"No hole by itself saves half a day."}
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

// CutsOf are the cuts of a kind in the order in which they are printed.
func CutsOf(c *result.Comparison, kind plan.Kind) (list []*result.Cut) {
	for i := range c.Cuts {
		if c.Cuts[i].Kind == kind {
			list = append(list, &c.Cuts[i])
		}
	}
	slices.SortStableFunc(list, func(a, b *result.Cut) int {
		if kind == plan.Measurement || kind == plan.WholeTask {
			return cmp.Compare(b.Saves.Mean, a.Saves.Mean)
		}
		return cmp.Compare(MetresADay(a), MetresADay(b))
	})
	return list
}

// MetresADay is the core that each day of something brings.
func MetresADay(cut *result.Cut) float64 {
	if !(cut.Saves.Mean > 0) {
		return math.NaN()
	}
	return cut.Metres.Mean / (cut.Saves.Mean / float64(unit.Day))
}

// cutRow is the line of a cut.
func cutRow(cut *result.Cut, replications int) []string {
	saves := words.InDays(cut.Saves)
	row := []string{"  " + CutName(cut), words.SignedFixed(saves.Mean, 1), words.SignedFixed(words.Middle(saves), 1), words.SignedFixed(saves.P90, 1), words.SignedFixed(cut.Metres.Mean, 0), "", "",
		words.Chance(cut.Alternative.Allotted.ChancePrimary, replications), words.Chance(cut.Alternative.Allotted.ChanceAll, replications)}
	if BringsCore(cut) {
		row[5], row[6] = words.SignedFixed(MetresADay(cut), 0), words.SignedFixed(100*cut.Section, 0)
	}
	return row
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
	name := cut.Site + words.OrLess(" "+cut.What, cut.What != "")
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
	p.heading("What a day is worth")
	p.WriteByte('\n')
	columns := []column{numberColumn("sea days\n(d)"), numberColumn("rank 1\ndone (%)"), numberColumn("more\n(points)"), numberColumn("all\ndone (%)"),
		numberColumn("more\n(points)"), numberColumn("core\n(m)"), numberColumn("more\n(m)")}
	var rows [][]string
	for _, d := range DaysAndPlanned(c) {
		row := []string{words.Given(days + d.Days), words.Percent(d.First), "", words.Percent(d.All), "", words.Fixed(d.Metres, 0), ""}
		if d.Days != 0 {
			row[2], row[4], row[6] = words.Points(d.FirstMore), words.Points(d.AllMore), words.Bounded(d.MetresMore, 0)
		}
		rows = append(rows, row)
	}
	if err := p.table(columns, rows); err != nil {
		return err
	}
	p.say("%s", MoreNote)
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
