package alternatives

import (
	"fmt"
	"strings"

	"coredays/model/activity"
	"coredays/model/result"
	"coredays/model/unit"
	"coredays/output/text"
	"coredays/output/words"
)

// sideBySide prints a line for each alternative.
func (p *printer) sideBySide(c *result.Comparison) error {
	p.Heading("Side by side")
	p.WriteByte('\n')
	order := c.Question == result.WhichOrder
	columns := []text.Column{text.WordColumn(HeadingOf(c.Question), 30), text.NumberColumn("done (%):\nrank 1"), text.NumberColumn("\nall")}
	if order {
		than := "more than\n" + AgainstName(c)
		columns = append(columns, text.NumberColumn("rank 1 (points)\n"+than), text.NumberColumn("days (d)\nP50"), text.NumberColumn("days (d)\n"+than), text.NumberColumn("mean\ncore (m)"))
	} else {
		columns = append(columns, text.NumberColumn("days needed (d)\nP50 (P10–P90)"), text.NumberColumn("days more than\nthe first (d)"), text.NumberColumn("mean\nwait (d)"), text.NumberColumn("mean\ncore (m)"))
	}
	standing := 8
	if order {
		standing = 18 // that of the scenario is named
	}
	columns = append(columns, text.WordColumn("", standing))
	var rows [][]string
	for _, i := range ByMerit(c) {
		rows = append(rows, sideRow(c, i, order))
	}
	if err := p.Table(columns, rows); err != nil {
		return err
	}
	p.Say("%s", SideNote(c))
	if len(c.Alternatives) > 2 {
		p.Say("*: %s.", UnbeatenWords)
	}
	return nil
}

// SideNote says what the columns of the table are of.
func SideNote(c *result.Comparison) string {
	means := "Days and waiting: of the whole programme, no deadline. Days more, waiting and core are means"
	if c.Question == result.WhichOrder {
		means = "Days: of the whole programme, no deadline. Days more and core are means"
	}
	return fmt.Sprintf("Done and core: within the days (%s d for the first). "+means+"; %s.", words.Given(c.Alternatives[c.Best].Summary.Allotted.SeaDays.Days()), HeldWords(c))
}

const UnbeatenWords = "as estimated, no other here beats it in chance, days and core at once"

func HeadingOf(q result.Question) string {
	switch q {
	case result.WhichOrder:
		return "order"
	case result.WhichDeparture:
		return "sails"
	}
	return "plan"
}

// ByMerit lists orders from the first on, that of the scenario above all; plans and dates stay as they were given.
func ByMerit(c *result.Comparison) []int {
	list := make([]int, 0, len(c.Alternatives))
	if c.Question == result.WhichOrder {
		if c.Planned >= 0 && c.Planned < len(c.Alternatives) && c.Planned != c.Best {
			list = append(list, c.Planned)
		}
		list = append(list, c.Best)
	}
	for i := range c.Alternatives {
		if c.Question != result.WhichOrder || i != c.Best && i != c.Planned {
			list = append(list, i)
		}
	}
	return list
}

// sideRow is the line of an alternative.
func sideRow(c *result.Comparison, i int, order bool) []string {
	a := &c.Alternatives[i]
	days := words.InDays(a.Summary.Needed.Total)
	row := []string{a.Name, words.Chance(a.Summary.Allotted.ChancePrimary, c.Replications), words.Chance(a.Summary.Allotted.ChanceAll, c.Replications)}
	if order {
		chance, more := chanceMore(c, i), daysMore(c, i)
		if ByDays(c) { // the interval is that of the figure that decides
			chance, _, _ = strings.Cut(chance, " (")
		} else {
			more, _, _ = strings.Cut(more, " (")
		}
		row = append(row, chance, words.Fixed(days.P50, 1), more)
	} else {
		row = append(row, words.Ranged(days, 1), daysMore(c, i), words.Fixed(WaitingDays(a.Summary), 1))
	}
	return append(row, words.Fixed(a.Summary.Allotted.Recovered.Mean, 0), words.OrLess("planned, ", order && i == c.Planned)+Standing(c, i)+words.OrLess(" *", Starred(c, i)))
}

// Standing says how an alternative stands to the first.
func Standing(c *result.Comparison, i int) string {
	switch {
	case i == c.Best:
		return "first"
	case c.Alternatives[i].Alike:
		return "open"
	}
	return "behind"
}

// Starred reports whether an alternative has the mark of those that no other beats on all counts.
func Starred(c *result.Comparison, i int) bool {
	return len(c.Alternatives) > 2 && c.Alternatives[i].Unbeaten
}

// WaitingDays is the mean time waiting on weather, d.
func WaitingDays(s *result.Summary) float64 {
	return s.Needed.ByClass[activity.Waiting].Mean / float64(unit.Day)
}
