package output

import (
	"fmt"
	"math"
	"slices"

	"coredays/model/activity"
	"coredays/model/logbook"
	"coredays/model/unit"
)

// sideBySide prints a line for each alternative.
func (p *page) sideBySide(c *logbook.Comparison) error {
	p.heading("Side by side")
	p.WriteByte('\n')
	order := c.Question == logbook.WhichOrder
	columns := []column{words(headingOf(c.Question), 30), numbers("done (%):\nrank 1"), numbers("\nall")}
	if order {
		columns = append(columns, numbers("days (d)\nP50"), numbers("days more than\nthe first (d)"), numbers("track\n(nmi)"), numbers("core\n(m)"))
	} else {
		columns = append(columns, numbers("days needed (d)\nP50 (P10–P90)"), numbers("days more than\nthe first (d)"), numbers("waiting\n(d)"), numbers("core\n(m)"))
	}
	columns = append(columns, words("", 8))
	var rows [][]string
	for _, i := range byMerit(c) {
		rows = append(rows, sideRow(c, i, order))
	}
	if err := p.table(columns, rows); err != nil {
		return err
	}
	within := figures(c.Alternatives[c.Best].Summary.Allotted.SeaDays.Days())
	p.say("Done and core: within the days (%s d for the first). Days and waiting: of the whole programme, no deadline. Days more, "+
		"waiting and core are means; the intervals hold all at once with %.0f %% confidence.", within, 100*c.Confidence)
	if len(c.Alternatives) > 2 {
		p.say("*: as estimated, no other here beats it in chance, days and core at once.")
	}
	return nil
}

func headingOf(q logbook.Question) string {
	switch q {
	case logbook.WhichOrder:
		return "order"
	case logbook.WhichDeparture:
		return "sails"
	}
	return "plan"
}

// byMerit lists orders from the first on; plans and dates stay as they were given.
func byMerit(c *logbook.Comparison) []int {
	list := make([]int, 0, len(c.Alternatives))
	if c.Question == logbook.WhichOrder {
		list = append(list, c.Best)
	}
	for i := range c.Alternatives {
		if c.Question != logbook.WhichOrder || i != c.Best {
			list = append(list, i)
		}
	}
	return list
}

// sideRow is the line of an alternative.
func sideRow(c *logbook.Comparison, i int, order bool) []string {
	a := &c.Alternatives[i]
	days := inDays(a.Summary.Needed.Total)
	row := []string{a.Name, chance(a.Summary.Allotted.ChancePrimary, c.Replications), chance(a.Summary.Allotted.ChanceAll, c.Replications)}
	if order {
		row = append(row, fixed(days.P50, 1), more(c, i), fixed(float64(a.Distance/unit.NauticalMile), 0))
	} else {
		row = append(row, ranged(days, 1), more(c, i), fixed(waitingDays(a.Summary), 1))
	}
	return append(row, fixed(a.Summary.Allotted.Recovered.Mean, 0), standing(c, i)+orLess(" *", starred(c, i)))
}

// more is how many days an alternative needs more than the first.
func more(c *logbook.Comparison, i int) string {
	if i == c.Best {
		return ""
	}
	return bounded(daysInterval(c.Alternatives[i].Behind), 1)
}

// standing tells how an alternative stands to the first.
func standing(c *logbook.Comparison, i int) string {
	switch {
	case i == c.Best:
		return "first"
	case c.Alternatives[i].Alike:
		return "alike"
	}
	return "behind"
}

// starred tells whether an alternative has the mark of those that no other beats on all counts.
func starred(c *logbook.Comparison, i int) bool {
	return len(c.Alternatives) > 2 && c.Alternatives[i].Unbeaten
}

// waitingDays is the mean time waiting on weather, d.
func waitingDays(s *logbook.Summary) float64 {
	return s.Needed.ByClass[activity.Waiting].Mean / float64(unit.Day)
}

// daysInterval is an interval of seconds in days.
func daysInterval(i logbook.Interval) logbook.Interval { return scaled(i, 1/float64(unit.Day)) }

func scaled(i logbook.Interval, by float64) logbook.Interval {
	return logbook.Interval{Mean: i.Mean * by, Low: i.Low * by, High: i.High * by}
}

// bounded writes "1.4 (1.1 to 1.6)", and one number where the bounds would say nothing.
func bounded(i logbook.Interval, places int) string {
	mean, low, high := signedFixed(i.Mean, places), signedFixed(i.Low, places), signedFixed(i.High, places)
	if !defined(i.Low) || !defined(i.High) || low == high {
		return mean
	}
	return mean + " (" + low + " to " + high + ")"
}

// points writes an interval of chances in points, to a tenth where that says something.
func points(i logbook.Interval) string {
	i = scaled(i, 100)
	if math.Max(math.Abs(i.Low), math.Abs(i.High)) < 9.95 {
		return bounded(i, 1)
	}
	return bounded(i, 0)
}

// signedFixed writes a number that may be below zero; what is too small to show is zero.
func signedFixed(value float64, places int) string {
	if math.Abs(value) < math.Pow10(-places)/2 {
		value = 0
	}
	return fixed(value, places)
}

// differences prints every pair, or of many alternatives those with the first.
func (p *page) differences(c *logbook.Comparison) error {
	if len(c.Differences) == 0 || c.Replications < 2 {
		return nil
	}
	p.heading("Differences%s, replication by replication (mean and its 95 %% interval)", orLess(" from "+c.Alternatives[c.Best].Name, len(c.Alternatives) > mostPaired))
	p.WriteByte('\n')
	few := len(c.Alternatives) <= mostPaired
	columns := []column{words("the one", 24), words("less the\nother", 24), numbers("days needed\n(d)"), numbers("the one is\nshorter (%)"),
		numbers("rank 1 done\n(points)"), numbers("core\n(m)")}
	if !few {
		columns = slices.Delete(columns, 1, 2)
	}
	var rows [][]string
	var unsettled []string
	for i := range c.Differences {
		d := fromTheFirst(c, c.Differences[i])
		if !few && d.B != c.Best {
			continue
		}
		one, other := c.Alternatives[d.A].Name, c.Alternatives[d.B].Name
		row := []string{one}
		if few {
			row = append(row, other)
		}
		rows = append(rows, append(row, bounded(daysInterval(d.Days), 2), shorter(&d), points(d.Chance), bounded(d.Metres, 0)))
		if d.SettlesDays > 0 {
			unsettled = append(unsettled, fmt.Sprintf("%s and %s: the difference in days is within the noise; %s.", one, other, settling(&d)))
		}
	}
	if err := p.table(columns, rows); err != nil {
		return err
	}
	for _, line := range unsettled {
		p.item(line)
	}
	if gain := leastPairing(c); defined(gain) {
		p.say("The error of the differences in days is at least %s times smaller than it would be without the same luck and sea.", figures(gain))
	}
	return nil
}

// fromTheFirst turns a difference round where the first alternative would not be the one taken away.
func fromTheFirst(c *logbook.Comparison, d logbook.Difference) logbook.Difference {
	if d.A != c.Best {
		return d
	}
	d.A, d.B = d.B, d.A
	d.Days, d.Chance, d.Metres = turned(d.Days), turned(d.Chance), turned(d.Metres)
	d.AShorter = max(0, 1-d.AShorter-d.Same)
	return d
}

func turned(i logbook.Interval) logbook.Interval {
	return logbook.Interval{Mean: -i.Mean, Low: -i.High, High: -i.Low}
}

// mostPaired is the number of alternatives up to which all pairs are printed.
const mostPaired = 4

func shorter(d *logbook.Difference) string {
	if d.Same == 1 {
		return "same"
	}
	return percent(d.AShorter)
}

// settling says how many replications would tell a difference.
func settling(d *logbook.Difference) string {
	if d.SettlesAbove {
		return "not even " + orderable(float64(d.SettlesDays)) + " replications would settle it"
	}
	return "about " + orderable(float64(d.SettlesDays)) + " replications would settle it"
}

// leastPairing is the smallest gain among the pairs.
func leastPairing(c *logbook.Comparison) float64 {
	least := math.NaN()
	for i := range c.Differences {
		if g := c.Differences[i].Pairing; defined(g) && !(g >= least) {
			least = g
		}
	}
	return least
}
