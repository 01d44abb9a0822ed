package output

import (
	"fmt"

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
	p.say("%s", sideNote(c))
	if len(c.Alternatives) > 2 {
		p.say("*: %s.", unbeatenWords)
	}
	return nil
}

// sideNote tells what the columns of the table are of.
func sideNote(c *logbook.Comparison) string {
	return fmt.Sprintf("Done and core: within the days (%s d for the first). Days and waiting: of the whole programme, no deadline. Days more, "+
		"waiting and core are means; the intervals hold all at once with %.0f %% confidence.", given(c.Alternatives[c.Best].Summary.Allotted.SeaDays.Days()), 100*c.Confidence)
}

const unbeatenWords = "as estimated, no other here beats it in chance, days and core at once"

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
		return "open"
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
