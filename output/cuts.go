package output

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"coredays/model/logbook"
	"coredays/model/plan"
	"coredays/model/unit"
)

// cuts prints what each thing costs and yields: measurements and tasks with the most days first,
// holes and sites with the fewest metres a day first.
func (p *page) cuts(c *logbook.Comparison) error {
	planned := &c.Alternatives[0]
	p.heading("What each thing costs and yields")
	p.say("Everything of rank 1 gets done %s, the whole programme %s, as planned.",
		often(planned.Summary.Allotted.ChancePrimary, c.Replications), often(planned.Summary.Allotted.ChanceAll, c.Replications))
	p.WriteByte('\n')
	columns := []column{words("without", 34), numbers("saves (d)\nmean"), numbers("\nP50"), numbers("\nP90"), numbers("core less\n(m)"), numbers("m a day\nsaved"),
		numbers("section\nless (%)"), numbers("the rest (%):\nrank 1"), numbers("\nall")}
	var rows [][]string
	for kind := plan.Measurement; kind <= plan.WholeSite; kind++ {
		if list := cutsOf(c, kind); len(list) > 0 {
			rows = append(rows, append([]string{"a " + kind.String()}, make([]string, 8)...))
			for _, cut := range list {
				rows = append(rows, cutRow(cut, c.Replications))
			}
		}
	}
	if err := p.table(columns, rows); err != nil {
		return err
	}
	p.say("Saves and core: of the whole programme, no deadline, replication by replication; what comes later meets another sea, so one " +
		"thing less may cost days once in a while. Section: points of the site's section that no hole brings up any more. The rest: chances within the days of what is left.")
	return nil
}

// cutsOf are the cuts of a kind in the order in which they are printed.
func cutsOf(c *logbook.Comparison, kind plan.Kind) (list []*logbook.Cut) {
	for i := range c.Cuts {
		if c.Cuts[i].Kind == kind {
			list = append(list, &c.Cuts[i])
		}
	}
	slices.SortStableFunc(list, func(a, b *logbook.Cut) int {
		if kind == plan.Measurement || kind == plan.WholeTask {
			return cmp.Compare(b.Saves.Mean, a.Saves.Mean)
		}
		return cmp.Compare(metresADay(a), metresADay(b))
	})
	return list
}

// metresADay is the core that each day of something brings.
func metresADay(cut *logbook.Cut) float64 {
	if !(cut.Saves.Mean > 0) {
		return math.NaN()
	}
	return cut.Metres.Mean / (cut.Saves.Mean / float64(unit.Day))
}

// cutRow is the line of a cut.
func cutRow(cut *logbook.Cut, replications int) []string {
	name := "  " + cut.Site + orLess(" "+cut.What, cut.What != "")
	if len(cut.Also) > 0 {
		name += " (and " + strings.Join(cut.Also, ", ") + ", which depends on it)"
	}
	saves := inDays(cut.Saves)
	row := []string{name, signedFixed(saves.Mean, 1), signedFixed(middle(saves), 1), signedFixed(saves.P90, 1), signedFixed(cut.Metres.Mean, 0), "", "",
		chance(cut.Alternative.Allotted.ChancePrimary, replications), chance(cut.Alternative.Allotted.ChanceAll, replications)}
	if cut.Kind == plan.WholeHole || cut.Kind == plan.WholeSite {
		row[5], row[6] = signedFixed(metresADay(cut), 0), signedFixed(100*cut.Section, 0)
	}
	return row
}

// moreDays prints what days more or less would bring.
func (p *page) moreDays(c *logbook.Comparison) error {
	if len(c.Days) == 0 {
		return nil
	}
	planned := c.Alternatives[0].Summary.Allotted
	p.heading("What a day is worth")
	p.WriteByte('\n')
	columns := []column{numbers("sea days\n(d)"), numbers("rank 1\ndone (%)"), numbers("more\n(points)"), numbers("all\ndone (%)"),
		numbers("more\n(points)"), numbers("core\n(m)"), numbers("more\n(m)")}
	var rows [][]string
	asPlanned := []string{figures(planned.SeaDays.Days()), percent(planned.ChancePrimary), "", percent(planned.ChanceAll), "", fixed(planned.Recovered.Mean, 0), ""}
	placed := false
	for _, d := range c.Days {
		if d.Days > 0 && !placed {
			rows, placed = append(rows, asPlanned), true
		}
		rows = append(rows, []string{figures(planned.SeaDays.Days() + d.Days), percent(d.First), points(d.FirstMore), percent(d.All),
			points(d.AllMore), fixed(d.Metres, 0), bounded(d.MetresMore, 0)})
	}
	if !placed {
		rows = append(rows, asPlanned)
	}
	if err := p.table(columns, rows); err != nil {
		return err
	}
	p.say("More: than as planned, replication by replication, mean and its 95 %% interval.")
	return nil
}
