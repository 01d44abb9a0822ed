package text

import (
	"fmt"
	"io"
	"math"
	"strings"
	"time"

	"coredays/model/coring"
	"coredays/model/morning"
	"coredays/model/result"
	"coredays/model/rig"
	"coredays/model/unit"
	"coredays/output/words"
)

// MorningPart is a part of the morning page: sentences, and perhaps a table below them.
type MorningPart struct {
	Key     string // its name for links
	Heading string
	Said    []string
	Columns []Column
	Rows    [][]string
}

func (p *MorningPart) say(format string, values ...any) {
	p.Said = append(p.Said, fmt.Sprintf(format, values...))
}

// MorningParts are the parts of the morning page in their order, those with nothing to say left out. What is printed, the
// page to hand round and the desk show the same.
func MorningParts(m *morning.Page) (list []MorningPart) {
	for _, part := range []func(*morning.Page) MorningPart{morningState, morningLeave, morningNext, morningItems, morningChoices, morningPace, morningLearned, morningChanged} {
		if p := part(m); len(p.Said) > 0 || len(p.Rows) > 0 {
			list = append(list, p)
		}
	}
	return list
}

// MorningLine says what a morning page is of.
func MorningLine(m *morning.Page) string {
	return fmt.Sprintf("%s: look-ahead of %s; seed %d; the rest sailed %d times", words.OrElse(m.Scenario, "Unnamed scenario"), words.Moment(m.At), m.Seed, m.Replications)
}

// MorningInBrief is what must be known first.
func MorningInBrief(m *morning.Page) string {
	return fmt.Sprintf("Home %s, latest %s: in time in %s of 100 expeditions; everything of rank 1 done in %s.", words.Dates(m.Sails, m.Home), words.Day(m.ArriveBy.UTC()),
		words.Percent(m.ChanceInTime), words.Percent(m.ChancePrimary))
}

// MorningCaution is what a morning page does not decide.
const MorningCaution = "A look-ahead is an estimate, not a clearance: approved depths, gas, the sea and the ice, ratings and the ship's safety are for those who answer for them."

// Morning prints the morning page of an expedition.
func Morning(w io.Writer, m *morning.Page) error {
	p := On(w)
	p.Paragraph("", Indent, MorningLine(m))
	for _, part := range MorningParts(m) {
		p.Heading("%s", part.Heading)
		for _, line := range part.Said {
			p.Say("%s", line)
		}
		if len(part.Rows) > 0 {
			if err := p.Table(part.Columns, part.Rows); err != nil {
				return err
			}
		}
	}
	if len(m.Warnings) > 0 {
		p.Heading("Warnings")
		for _, x := range m.Warnings {
			p.Item(x)
		}
	}
	p.Heading("Not decided here")
	p.Say("%s", MorningCaution)
	return p.To(w)
}

// minute writes a moment without its year, to the minute.
func minute(at time.Time) string { return at.UTC().Format("2 Jan 15:04") }

// morningState says where the ship stands, in the words of the log.
func morningState(m *morning.Page) (p MorningPart) {
	p.Key, p.Heading = "state", "Where the ship stands, by the log"
	s := &m.State.Now
	where := "under way"
	if m.Where.Site != "" {
		where = fmt.Sprintf("at site %s, %s m of water", m.Where.Site, words.Fixed(float64(m.Where.Floor), 0))
		if m.Where.Hole != "" {
			where += ", " + m.Where.Hole + " in hand"
		}
		if s.Hole.Open {
			where += fmt.Sprintf(", %s m deep", words.Fixed(float64(s.Hole.Depth), 1))
		}
	}
	p.say("Day %s of %s: %s.", words.Fixed(m.At.Sub(m.Sails).Hours()/24, 1), words.Fixed(m.ArriveBy.Sub(m.Sails).Hours()/24, 0), where)
	doing := m.State.Words
	if doing != "" {
		doing = fmt.Sprintf("\"%s\" since %s", doing, minute(m.State.Since))
	}
	pipe := "all pipe is on deck"
	if s.Bit > 0 {
		pipe = fmt.Sprintf("the bit is at %s m below the sea surface", words.Fixed(float64(s.Bit), 0))
	}
	if s.Assembly != coring.NoBHA {
		pipe += fmt.Sprintf(", assembly %s", s.Assembly)
		if s.Assembly.Of().Bit {
			pipe += fmt.Sprintf(", %s h of rotating with this bit", words.Fixed(float64(s.Rotated)/3600, 1))
		}
	}
	p.say("%s; %s.", words.OrElse(doing, "nothing in hand"), pipe)
	var refused []string
	for i := range m.State.Items {
		if x := &m.State.Items[i]; x.Refused > 0 {
			refused = append(refused, fmt.Sprintf("%s %s at %s m", m.Items[i].Site, m.Items[i].Name, words.Fixed(float64(x.Refused), 0)))
		}
	}
	if len(refused) > 0 {
		p.say("Refusals met: %s.", strings.Join(refused, "; "))
	}
	var cut, up float64
	for i := range m.State.Cores {
		cut, up = cut+float64(m.State.Cores[i].Cored), up+float64(m.State.Cores[i].Recovered)
	}
	if n := len(m.State.Cores); n > 0 {
		p.say("%d cores so far: %s m cored, %s m recovered.", n, words.Figures(cut), words.Figures(up))
	}
	return p
}

// morningLeave says when to leave, and whether it all fits.
func morningLeave(m *morning.Page) (p MorningPart) {
	p.Key, p.Heading = "leave", "When to leave"
	late := m.ArriveBy
	p.say("In port by %s at the latest. Going on as planned she is there %s; in time in %s %% of the expeditions.", minute(late)+" UTC",
		words.Dates(m.Sails, m.Home), words.Percent(m.ChanceInTime))
	if len(m.LeaveBy) == 0 {
		return p
	}
	var rows [][]string
	both := func(at time.Time) string {
		if at.IsZero() {
			return words.Absent
		}
		return fmt.Sprintf("%s (%s)", minute(at), at.UTC().Add(time.Duration(m.LocalAhead)*time.Hour).Format("2 Jan 15:04"))
	}
	for _, l := range m.LeaveBy {
		rows = append(rows, []string{words.Percent(l.Chance) + " %", both(l.PullOut), both(l.BitOnDeck), both(l.UnderWay)})
	}
	p.say("Latest times, UTC (local, %+d h), from how she stands now:", m.LocalAhead)
	p.Columns, p.Rows = []Column{WordColumn("in time in", 10), WordColumn("begin to pull out", 30), WordColumn("bit on deck", 30), WordColumn("under way", 30)}, rows
	return p
}

// morningNext says what the next days give.
func morningNext(m *morning.Page) (p MorningPart) {
	p.Key, p.Heading = "next", "The next days"
	var rows [][]string
	for i, n := range m.Next {
		first, second := m.Shifts[2*i], m.Shifts[2*i+1]
		rows = append(rows, []string{fmt.Sprintf("%.0f h", n.Hours), words.Ranged(n.Cored, words.Places(n.Cored.P90)), words.Ranged(n.Recovered, words.Places(n.Recovered.P90)),
			fmt.Sprintf("%s and %s", words.Ranged(first, 0), words.Ranged(second, 0))})
	}
	p.Columns, p.Rows = []Column{WordColumn("within", 8), NumberColumn("cored (m)\nP50 (P10–P90)"), NumberColumn("recovered (m)\nP50 (P10–P90)"), WordColumn("cores in its last two shifts of 12 h", 36)}, rows
	return p
}

// morningItems says what becomes of each hole and task.
func morningItems(m *morning.Page) (p MorningPart) {
	p.Key, p.Heading = "holes", "Each hole and task"
	p.say("All of the primary sites is done in %s %% of the expeditions, all of rank 1 in %s %%; core recovered in the end %s m.",
		words.Percent(m.ChanceAll), words.Percent(m.ChancePrimary), words.Ranged(m.Recovered, 0))
	var rows [][]string
	for i := range m.Items {
		x := &m.Items[i]
		when, depth := words.Absent, words.Absent
		if x.Finished.N > 0 {
			when = words.Dates(m.Sails, x.Finished)
		}
		if x.Depth.N > 0 && x.Depth.P90 > 0 {
			depth = words.Ranged(x.Depth, 0)
		}
		core := words.Absent
		if x.Recovered.N > 0 && x.Recovered.P90 > 0 {
			core = words.Ranged(x.Recovered, 0)
		}
		rows = append(rows, []string{x.Site, x.Name, fmt.Sprint(x.Rank), x.Status, words.Percent(x.Chance), when, depth, core})
	}
	p.Columns, p.Rows = []Column{WordColumn("site", 12), WordColumn("hole, task", 18), NumberColumn("rank"), WordColumn("is", 9), NumberColumn("whole\n(%)"), WordColumn("done on, UTC", 20), NumberColumn("depth (m)"), NumberColumn("core (m)")}, rows
	return p
}

// morningChoices says what each choice is worth.
func morningChoices(m *morning.Page) (p MorningPart) {
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
	p.Columns, p.Rows = []Column{WordColumn("choice", 34), WordColumn("all of rank 1 (points)", 22), WordColumn("core (m)", 18), WordColumn("days to port", 18)}, rows
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
func morningPace(m *morning.Page) (p MorningPart) {
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

// muchLearned is the change of a median, or of a width, from which what was learned is printed [our choice]; JSON
// has all.
const muchLearned = 0.03

// morningLearned says what was learned.
func morningLearned(m *morning.Page) (p MorningPart) {
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
	p.Columns, p.Rows = []Column{WordColumn("what", 34), WordColumn("unit", 9), WordColumn("plan", 22), WordColumn("now", 22), NumberColumn("seen")}, rows
	return p
}

func tripled(x [3]float64, size float64) string {
	return words.Figures(x[0]*size) + " / " + words.Figures(x[1]*size) + " / " + words.Figures(x[2]*size)
}

// morningChanged says what changed since the page before.
func morningChanged(m *morning.Page) (p MorningPart) {
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
