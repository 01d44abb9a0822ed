package mornings

import (
	"fmt"
	"math"

	"coredays/model/morning"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/output/text"
	"coredays/output/words"
)

// muchLearned is the change of a median, or of a width, from which what was learned is printed [our choice]; JSON
// has all.
const muchLearned = 0.03

// morningLearned says what was learned.
func morningLearned(m *morning.Page) (p Part) {
	var rows [][]string
	for i := range m.Learned {
		x := &m.Learned[i]
		wide, now := x.Plan[2]-x.Plan[0], x.Now[2]-x.Now[0]
		if x.Plan[1] == 0 || math.Abs(x.Now[1]/x.Plan[1]-1) < muchLearned && now > (1-5*muchLearned)*wide {
			continue
		}
		name, in, size := x.Name, "", 1.0
		if x.Rate < rig.Rates {
			name, in, size = x.Rate.Of().Key, x.Rate.Of().Unit, x.Rate.InUnit(1)
		}
		rows = append(rows, []string{name, in, tripled(x.Plan, size), tripled(x.Now, size), fmt.Sprint(x.Seen)})
	}
	if len(rows) == 0 {
		return p
	}
	p.Key, p.Heading = "learned", "What was learned, P10 / P50 / P90 of the next one here"
	p.Columns, p.Rows = []text.Column{text.WordColumn("what", 34), text.WordColumn("unit", 9), text.WordColumn("plan", 22), text.WordColumn("now", 22), text.NumberColumn("seen")}, rows
	return p
}

func tripled(x [3]float64, size float64) string {
	return words.Figures(x[0]*size) + " / " + words.Figures(x[1]*size) + " / " + words.Figures(x[2]*size)
}

// morningChanged says what changed since the page before.
func morningChanged(m *morning.Page) (p Part) {
	c := m.Before
	if c == nil {
		return p
	}
	p.Key, p.Heading = "changed", fmt.Sprintf("Changed since %s", words.Moment(c.At))
	later := "later"
	if c.Home < 0 {
		later = "earlier"
	}
	p.say("Even arrival %s days %s; all of rank 1 %s points, everything %s points; core %s m.", words.Fixed(math.Abs(c.Home)/float64(unit.Day), 1), later,
		words.SignedFixed(100*c.ChancePrimary, 0), words.SignedFixed(100*c.ChanceAll, 0), words.SignedFixed(c.Recovered, 0))
	if c.Split {
		p.say("Against the plan she lost: %s.", byCause(c.Sea, c.Trouble, c.Rest, c.Scope))
	}
	if c.Advice != m.Advice {
		p.say("Better than going on was %s; now %s.", words.OrElse(c.Advice, "nothing"), words.OrElse(m.Advice, "nothing"))
	}
	return p
}
