package output

import (
	"fmt"
	"math"
	"slices"

	"coredays/model/logbook"
)

// differences prints every pair, or of many alternatives those with the first.
func (p *page) differences(c *logbook.Comparison) error {
	if len(c.Differences) == 0 || c.Replications < 2 {
		return nil
	}
	p.heading("%s", differencesHeading(c))
	p.WriteByte('\n')
	few := len(c.Alternatives) <= mostPaired
	columns := []column{words("the one", 24), words("less the\nother", 24), numbers("days needed\n(d)"), numbers("the one is\nshorter (%)"),
		numbers("rank 1 done\n(points)"), numbers("core\n(m)")}
	if !few {
		columns = slices.Delete(columns, 1, 2)
	}
	var rows [][]string
	for _, d := range differencesTold(c) {
		one, other := c.Alternatives[d.A].Name, c.Alternatives[d.B].Name
		row := []string{one}
		if few {
			row = append(row, other)
		}
		rows = append(rows, append(row, bounded(daysInterval(d.Days), 2), shorter(&d), points(d.Chance), bounded(d.Metres, 0)))
	}
	if err := p.table(columns, rows); err != nil {
		return err
	}
	for _, line := range unsettled(c) {
		p.item(line)
	}
	if text := pairingSentence(c); text != "" {
		p.say("%s", text)
	}
	return nil
}

func differencesHeading(c *logbook.Comparison) string {
	return fmt.Sprintf("Differences%s, replication by replication (mean, and 95 %% interval of each by itself)", orLess(" from "+c.Alternatives[c.Best].Name, len(c.Alternatives) > mostPaired))
}

// differencesTold are all of few alternatives, and of many those from the first.
func differencesTold(c *logbook.Comparison) (list []logbook.Difference) {
	for _, d := range c.Differences {
		if d = fromTheFirst(c, d); len(c.Alternatives) <= mostPaired || d.B == c.Best {
			list = append(list, d)
		}
	}
	return list
}

// unsettled tell the differences in days that may be noise.
func unsettled(c *logbook.Comparison) (lines []string) {
	for _, d := range differencesTold(c) {
		if d.SettlesDays > 0 {
			lines = append(lines, fmt.Sprintf("%s and %s: the difference in days is within the noise; %s.", c.Alternatives[d.A].Name, c.Alternatives[d.B].Name, settling(&d)))
		}
	}
	return lines
}

// pairingSentence tells what the same luck and sea are good for; empty where nothing tells.
func pairingSentence(c *logbook.Comparison) string {
	gain := leastPairing(c)
	if !defined(gain) {
		return ""
	}
	return fmt.Sprintf("The error of the differences in days is at least %s times smaller than it would be without the same luck and sea.", figures(gain))
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
