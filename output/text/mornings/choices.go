package mornings

import (
	"fmt"
	"math"
	"strings"

	"coredays/model/morning"
	"coredays/model/result"
	"coredays/model/unit"
	"coredays/output/text"
	"coredays/output/words"
)

// morningChoices says what each choice is worth.
func morningChoices(m *morning.Page) (p Part) {
	p.Key, p.Heading = "choices", "What each choice is worth, against going on as planned"
	if len(m.Choices) < 2 {
		p.say("There is nothing to choose.")
		return p
	}
	if m.Advice != "" {
		p.say("Better than going on: %s.", m.Advice)
	} else {
		p.say("No choice is told apart from going on as planned and better.")
	}
	var rows [][]string
	day := float64(unit.Day)
	for i := range m.Choices {
		c := &m.Choices[i]
		primary, metres, days := words.Percent(c.ChancePrimary)+" %", words.Fixed(c.Recovered.P50, 0), words.Fixed(c.DaysLeft.P50/day, 1)
		if i > 0 {
			primary, metres, days = told(c.Primary, 100, 0), told(c.Metres, 1, 0), told(c.Days, 1/day, 1)
		}
		rows = append(rows, []string{c.Name, primary, metres, days})
	}
	p.say("Differences are paired, with 95 %% intervals of the simulation; \"no difference\" is within them.")
	p.Columns, p.Rows = []text.Column{text.WordColumn("choice", 34), text.WordColumn("all of rank 1 (points)", 22), text.WordColumn("core (m)", 18), text.WordColumn("days to port", 18)}, rows
	return p
}

// told is a difference where it is more than noise.
func told(d morning.Difference, by float64, places int) string {
	if !d.Told() {
		return "no difference"
	}
	return words.Bounded(result.Interval{Mean: d.Mean * by, Low: d.CI[0] * by, High: d.CI[1] * by}, places)
}

// morningPace says how far behind the plan the ship is, and by what.
func morningPace(m *morning.Page) (p Part) {
	if m.Pace == nil {
		return p
	}
	p.Key, p.Heading = "pace", "Ahead or behind"
	p.say("%s the plan's mean for what is done: %s.", behind(m.Pace.Behind), byCause(m.Pace.Sea, m.Pace.Trouble, m.Pace.Rest, m.Pace.Scope))
	return p
}

func behind(seconds float64) string {
	days := words.Fixed(math.Abs(seconds)/float64(unit.Day), 1)
	if seconds < 0 {
		return days + " days ahead of"
	}
	return days + " days behind"
}

func byCause(sea, trouble, pace, scope float64) string {
	one := func(name string, s float64) string {
		return fmt.Sprintf("%s %s d", name, words.SignedFixed(s/float64(unit.Day), 1))
	}
	return strings.Join([]string{one("sea", sea), one("trouble", trouble), one("pace", pace), one("scope (holes begun again)", scope)}, ", ")
}
