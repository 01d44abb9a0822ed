package output

import (
	"fmt"
	"math"

	"coredays/model/activity"
	"coredays/model/logbook"
	"coredays/model/unit"
)

// sideBySide prints a line for each alternative.
func (p *page) sideBySide(c *logbook.Comparison) error {
	p.heading("Side by side")
	p.WriteByte('\n')
	columns := []column{
		words(headingOf(c.Question), 30),
		numbers("rank 1\ndone (%)"),
		numbers("all\ndone (%)"),
		numbers("days needed (d)\nP50 (P10–P90)"),
		numbers("days more than the\nfirst (d), mean"),
		numbers("waiting\n(d)"),
		numbers("core\n(m)"),
	}
	order := c.Question == logbook.WhichOrder
	if order {
		columns = append(columns, numbers("track\n(nmi)"))
	}
	columns = append(columns, words("", 10))
	var rows [][]string
	for _, i := range byMerit(c) {
		rows = append(rows, sideRow(c, i, order))
	}
	if err := p.table(columns, rows); err != nil {
		return err
	}
	within := figures(c.Alternatives[c.Best].Summary.Allotted.SeaDays.Days())
	p.say("Done and core: within the days (%s d for the first). Days needed and waiting (mean): the whole programme, no deadline. "+
		"Intervals of days hold together with %.0f %% confidence.", within, 100*c.Confidence)
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
func sideRow(c *logbook.Comparison, i int, withTrack bool) []string {
	a := &c.Alternatives[i]
	days := inDays(a.Summary.Needed.Total)
	row := []string{a.Name, chance(a.Summary.Allotted.ChancePrimary, c.Replications), chance(a.Summary.Allotted.ChanceAll, c.Replications),
		ranged(days, places(days.P50, days.P90)), more(c, i), fixed(waitingDays(a.Summary), 1), fixed(a.Summary.Allotted.Recovered.Mean, 0)}
	if withTrack {
		row = append(row, fixed(float64(a.Distance/unit.NauticalMile), 0))
	}
	return append(row, standing(c, i))
}

// more is how many days an alternative needs more than the first.
func more(c *logbook.Comparison, i int) string {
	if i == c.Best {
		return ""
	}
	return bounded(daysInterval(c.Alternatives[i].Behind))
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
func bounded(i logbook.Interval) string {
	decimals := places(i.Mean, i.Low, i.High)
	mean, low, high := signedFixed(i.Mean, decimals), signedFixed(i.Low, decimals), signedFixed(i.High, decimals)
	if !defined(i.Low) || !defined(i.High) || low == high {
		return mean
	}
	return mean + " (" + low + " to " + high + ")"
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
	p.heading("Differences, replication by replication (mean and its 95 %% interval)")
	p.WriteByte('\n')
	columns := []column{words("the one", 20), words("less the other", 20), numbers("days needed (d)"), numbers("the one is\nshorter (%)"),
		numbers("rank 1 done\n(points)"), numbers("core (m)")}
	var rows [][]string
	var unsettled []string
	for i := range c.Differences {
		d := &c.Differences[i]
		if len(c.Alternatives) > mostPaired && d.A != c.Best && d.B != c.Best {
			continue
		}
		a, b := c.Alternatives[d.A].Name, c.Alternatives[d.B].Name
		rows = append(rows, []string{a, b, bounded(daysInterval(d.Days)), shorter(d), bounded(scaled(d.Chance, 100)), bounded(d.Metres)})
		if d.SettlesDays > 0 {
			unsettled = append(unsettled, fmt.Sprintf("%s and %s: the difference in days is within the noise; %s.", a, b, settling(d)))
		}
	}
	if err := p.table(columns, rows); err != nil {
		return err
	}
	for _, line := range unsettled {
		p.item(line)
	}
	if gain := leastPairing(c); defined(gain) {
		p.say("The same luck makes the error of the differences in days at least %s times smaller than runs apart would.", figures(gain))
	}
	return nil
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
