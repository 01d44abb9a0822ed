// Package mornings prints the page of a morning at sea: the parts of it that terminal, page and desk share.
package mornings

import (
	"fmt"
	"io"
	"strings"
	"time"

	"coredays/model/coring"
	"coredays/model/morning"
	"coredays/output/text"
	"coredays/output/words"
)

// Part is a part of the morning page: sentences, and perhaps a table below them.
type Part struct {
	Key     string // its name for links
	Heading string
	Said    []string
	Columns []text.Column
	Rows    [][]string
}

func (p *Part) say(format string, values ...any) {
	p.Said = append(p.Said, fmt.Sprintf(format, values...))
}

// Parts are the parts of the morning page in their order, those with nothing to say left out. What is printed, the
// page to hand round and the desk show the same.
func Parts(m *morning.Page) (list []Part) {
	for _, part := range []func(*morning.Page) Part{morningState, morningLeave, morningNext, morningItems, morningChoices, morningPace, morningLearned, morningChanged} {
		if p := part(m); len(p.Said) > 0 || len(p.Rows) > 0 {
			list = append(list, p)
		}
	}
	return list
}

// Line says what a morning page is of.
func Line(m *morning.Page) string {
	return fmt.Sprintf("%s: look-ahead of %s; seed %d; the rest sailed %d times", words.OrElse(m.Scenario, "Unnamed scenario"), words.Moment(m.At), m.Seed, m.Replications)
}

// InBrief is what must be known first.
func InBrief(m *morning.Page) string {
	return fmt.Sprintf("Home %s, latest %s: in time in %s of 100 expeditions; everything of rank 1 done in %s.", words.Dates(m.Sails, m.Home), words.Day(m.ArriveBy.UTC()),
		words.Percent(m.ChanceInTime), words.Percent(m.ChancePrimary))
}

// Caution is what a morning page does not decide.
const Caution = "A look-ahead is an estimate, not a clearance: approved depths, gas, the sea and the ice, ratings and the ship's safety are for those who answer for them."

// Print prints the morning page of an expedition.
func Print(w io.Writer, m *morning.Page) error {
	p := text.On(w)
	p.Paragraph("", text.Indent, Line(m))
	for _, part := range Parts(m) {
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
	p.Say("%s", Caution)
	return p.To(w)
}

// minute writes a moment without its year, to the minute.
func minute(at time.Time) string { return at.UTC().Format("2 Jan 15:04") }

// morningState says where the ship stands, in the words of the log.
func morningState(m *morning.Page) (p Part) {
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
func morningLeave(m *morning.Page) (p Part) {
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
	p.Columns, p.Rows = []text.Column{text.WordColumn("in time in", 10), text.WordColumn("begin to pull out", 30), text.WordColumn("bit on deck", 30), text.WordColumn("under way", 30)}, rows
	return p
}

// morningNext says what the next days give.
func morningNext(m *morning.Page) (p Part) {
	p.Key, p.Heading = "next", "The next days"
	var rows [][]string
	for i, n := range m.Next {
		first, second := m.Shifts[2*i], m.Shifts[2*i+1]
		rows = append(rows, []string{fmt.Sprintf("%.0f h", n.Hours), words.Ranged(n.Cored, words.Places(n.Cored.P90)), words.Ranged(n.Recovered, words.Places(n.Recovered.P90)),
			fmt.Sprintf("%s and %s", words.Ranged(first, 0), words.Ranged(second, 0))})
	}
	p.Columns, p.Rows = []text.Column{text.WordColumn("within", 8), text.NumberColumn("cored (m)\nP50 (P10–P90)"), text.NumberColumn("recovered (m)\nP50 (P10–P90)"), text.WordColumn("cores in its last two shifts of 12 h", 36)}, rows
	return p
}

// morningItems says what becomes of each hole and task.
func morningItems(m *morning.Page) (p Part) {
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
	p.Columns, p.Rows = []text.Column{text.WordColumn("site", 12), text.WordColumn("hole, task", 18), text.NumberColumn("rank"), text.WordColumn("is", 9), text.NumberColumn("whole\n(%)"), text.WordColumn("done on, UTC", 20), text.NumberColumn("depth (m)"), text.NumberColumn("core (m)")}, rows
	return p
}
