package alternatives

import (
	"fmt"
	"math"
	"slices"

	"coredays/model/result"
	"coredays/output/text"
	"coredays/output/words"
)

// differences prints every pair, or of many alternatives those with the first.
func (p *printer) differences(c *result.Comparison) error {
	if len(c.Differences) == 0 || c.Replications < 2 {
		return nil
	}
	p.Heading("%s", DifferencesHeading(c))
	p.WriteByte('\n')
	few := len(c.Alternatives) <= MostPaired
	columns := []text.Column{text.WordColumn("the one", 24), text.WordColumn("less the\nother", 24), text.NumberColumn("days needed\n(d)"), text.NumberColumn("the one is\nshorter (%)"),
		text.NumberColumn("rank 1 done\n(points)"), text.NumberColumn("core\n(m)")}
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
		rows = append(rows, append(row, words.Bounded(words.DaysInterval(d.Days), 2), shorter(&d), words.Points(d.Chance), words.Bounded(d.Metres, 0)))
	}
	if err := p.Table(columns, rows); err != nil {
		return err
	}
	for _, line := range Unsettled(c) {
		p.Item(line)
	}
	if text := PairingSentence(c); text != "" {
		p.Say("%s", text)
	}
	return nil
}

func DifferencesHeading(c *result.Comparison) string {
	return fmt.Sprintf("Differences%s, replication by replication (mean, and 95 %% interval of each by itself)", words.OrLess(" from "+Named(c, c.Best), len(c.Alternatives) > MostPaired))
}

// differencesTold are all of few alternatives, and of many those from the first.
func differencesTold(c *result.Comparison) (list []result.Difference) {
	for _, d := range c.Differences {
		if d = FromTheFirst(c, d); len(c.Alternatives) <= MostPaired || d.B == c.Best {
			list = append(list, d)
		}
	}
	return list
}

// Unsettled tell the differences in days that may be noise.
func Unsettled(c *result.Comparison) (lines []string) {
	for _, d := range differencesTold(c) {
		if d.SettlesDays > 0 {
			lines = append(lines, fmt.Sprintf("%s and %s: the difference in days is within the noise; %s.", Named(c, d.A), Named(c, d.B), settling(&d)))
		}
	}
	return lines
}

// PairingSentence says what the same random numbers and sea are good for; empty where nothing says.
func PairingSentence(c *result.Comparison) string {
	gain := leastPairing(c)
	if !words.Defined(gain) {
		return ""
	}
	return fmt.Sprintf("The error of the differences in days is at least %s times smaller than it would be without common random numbers and sea.", words.Figures(gain))
}

// FromTheFirst turns a difference round where the first alternative would not be the one taken away.
func FromTheFirst(c *result.Comparison, d result.Difference) result.Difference {
	if d.A != c.Best {
		return d
	}
	return turnedRound(d)
}

// turnedRound takes the one away from the other.
func turnedRound(d result.Difference) result.Difference {
	d.A, d.B = d.B, d.A
	d.Days, d.Chance, d.Metres = turned(d.Days), turned(d.Chance), turned(d.Metres)
	d.AShorter = max(0, 1-d.AShorter-d.Same)
	return d
}

func turned(i result.Interval) result.Interval {
	return result.Interval{Mean: -i.Mean, Low: -i.High, High: -i.Low}
}

// MostPaired is the number of alternatives up to which all pairs are printed.
const MostPaired = 4

func shorter(d *result.Difference) string {
	if d.Same == 1 {
		return "same"
	}
	return words.Percent(d.AShorter)
}

// settling says how many replications would tell a difference.
func settling(d *result.Difference) string {
	if d.SettlesAbove {
		return "not even " + words.Orderable(float64(d.SettlesDays)) + " replications would settle it"
	}
	return "about " + words.Orderable(float64(d.SettlesDays)) + " replications would settle it"
}

// leastPairing is the smallest gain among the pairs.
func leastPairing(c *result.Comparison) float64 {
	least := math.NaN()
	for i := range c.Differences {
		if g := c.Differences[i].Pairing; words.Defined(g) && !(g >= least) {
			least = g
		}
	}
	return least
}
