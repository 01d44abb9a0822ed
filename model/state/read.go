package state

import (
	"fmt"
	"math"
	"slices"
	"time"

	"coredays/model/activity"
	"coredays/model/plan"
	"coredays/model/riglog"
	"coredays/model/unit"
)

// slack is by how much times may differ before they contradict each other [judgement].
const slack = 2 * time.Hour

// reader follows a log line by line.
type reader struct {
	plan     *plan.Plan
	st       *State
	lines    []riglog.Line
	first    []int // of each site, index of its first item
	faults   []Fault
	deep     map[int]*riglog.Line // line with the depth known last, by item
	bitRow   *riglog.Line         // line that stated the bit's depth last
	swept    time.Time            // when mud was swept around last
	unknown  *riglog.Line         // the first whose words have no meaning
	unknowns int                  // how many have none
}

// Read tells where the ship stands at a moment from what she wrote down; a zero moment is the end of the log. What
// contradicts the plan, the clock or the papers themselves is told with its lines, all of it.
func Read(p *plan.Plan, papers *riglog.Papers, at time.Time) (*State, []Fault) {
	r := &reader{plan: p, st: &State{Waves: unit.Length(math.NaN())}, deep: map[int]*riglog.Line{}}
	for i := range p.Sites {
		r.first = append(r.first, len(r.st.Items))
		r.st.Sites = append(r.st.Sites, Site{})
		for n := range p.Sites[i].Items {
			r.st.Items = append(r.st.Items, Item{Site: i, Number: n})
		}
	}
	s := &r.st.Now
	s.Site, s.Item, s.LastSite = None, None, None
	if r.st.At = at; !r.cut(papers.Lines) {
		return nil, r.faults
	}
	r.st.From = r.lines[0].File
	for i := range r.lines {
		r.line(i)
	}
	switch {
	case r.unknowns == 1:
		r.note("line %d, %q, has no meaning: it counts as other work", r.unknown.Row, r.unknown.What)
	case r.unknowns > 1:
		r.note("%d lines have no meaning and count as other work, the first is line %d, %q", r.unknowns, r.unknown.Row, r.unknown.What)
	}
	r.cores(papers.Cores)
	r.end()
	if len(r.faults) > 0 {
		return nil, r.faults
	}
	return r.st, nil
}

func (r *reader) fault(l *riglog.Line, format string, values ...any) {
	r.faults = append(r.faults, Fault{l.File, l.Row, fmt.Sprintf(format, values...)})
}

// once notes a fault with the first line that has it: a hole that is not in the scenario has hundreds.
func (r *reader) once(l *riglog.Line, format string, values ...any) {
	why := fmt.Sprintf(format, values...)
	if !slices.ContainsFunc(r.faults, func(f Fault) bool { return f.Why == why }) {
		r.faults = append(r.faults, Fault{l.File, l.Row, why})
	}
}

const minutes = "2006-01-02T15:04"

// cut takes the lines up to the moment, the last one cut short there. It reports whether there are any.
func (r *reader) cut(lines []riglog.Line) bool {
	if len(lines) == 0 {
		r.faults = append(r.faults, Fault{Why: "there is no line of an operations log"})
		return false
	}
	first, last := &lines[0], &lines[len(lines)-1]
	if r.st.At.IsZero() {
		r.st.At = last.To
	}
	at := r.st.At
	switch {
	case at.Before(first.From):
		r.fault(first, "the log begins at %s, after the moment asked for, %s", first.From.Format(minutes), at.Format(minutes))
		return false
	case at.After(last.To.Add(slack)):
		r.fault(last, "the log ends at %s, more than 2 h before the moment asked for, %s: bring it up to date, or give an earlier moment", last.To.Format(minutes), at.Format(minutes))
	case first.From.Before(r.plan.Sails.Add(-slack)):
		r.fault(first, "it begins at %s, and by the scenario the ship sails at %s", first.From.Format(minutes), r.plan.Sails.UTC().Format(minutes))
	}
	for _, l := range lines {
		if !l.From.Before(at) {
			break
		}
		if l.To.After(at) {
			if !unknown(l.BitFrom) && !unknown(l.BitTo) { // at an even speed
				share := at.Sub(l.From).Seconds() / l.To.Sub(l.From).Seconds()
				l.BitTo = l.BitFrom + unit.Length(share)*(l.BitTo-l.BitFrom)
			}
			l.To = at
		}
		r.lines = append(r.lines, l)
	}
	return len(r.lines) > 0
}

func unknown[T ~float64](x T) bool { return math.IsNaN(float64(x)) }

// line takes in a line.
func (r *reader) line(i int) {
	l := &r.lines[i]
	r.clock(i)
	site, item, ok := r.where(l)
	if !ok {
		return
	}
	doing := l.Doing
	if len(doing) == 0 {
		doing = []activity.Kind{activity.OtherWork}
		if r.unknown == nil {
			r.unknown = l
		}
		r.unknowns++
	}
	r.at(l, site, item, doing)
	r.depth(l)
	r.bit(l, doing[0])
	seconds := unit.Duration(l.To.Sub(l.From).Seconds())
	for n, k := range doing {
		if k == activity.Task {
			k = r.taskKind()
		}
		if held := seconds / unit.Duration(len(doing)); i > 0 && n == 0 && k == r.st.Doing {
			r.st.Held += held
		} else {
			r.st.Doing, r.st.Held = k, held
		}
		r.remember(k, l, seconds/unit.Duration(len(doing)), n == 0)
		r.st.Spent[k] += seconds / unit.Duration(len(doing))
		if c := k.Of().Class; r.st.Now.Item != None && (c == activity.Waiting || c == activity.Repair) {
			r.st.Items[r.st.Now.Item].Lost += seconds / unit.Duration(len(doing))
		}
		r.did(k, seconds/unit.Duration(len(doing)), l.To, r.nextWork(i, n))
	}
	if to := l.BitTo; !unknown(to) {
		r.st.Now.Bit = to
	}
	r.st.Now.Longest = max(r.st.Now.Longest, r.st.Now.Bit)
	r.st.Words, r.st.Since = l.What, l.From
}

// taskKind is what stopping the task in hand means, by its first step: a log does not say which step a line is.
func (r *reader) taskKind() activity.Kind {
	i := r.st.Now.Item
	if i == None || r.item(i).Task == nil {
		return activity.Task
	}
	switch first := r.item(i).Task.Steps[0]; {
	case first.Interruptible:
		return activity.Task
	case first.Ruined:
		return activity.FrailTask
	}
	return activity.WholeTask
}

// item is an item of the plan by its number among all.
func (r *reader) item(n int) *plan.Item {
	x := &r.st.Items[n]
	return &r.plan.Sites[x.Site].Items[x.Number]
}

func (r *reader) note(format string, values ...any) {
	r.st.Notes = append(r.st.Notes, fmt.Sprintf(format, values...))
}

// clock holds a line against the one before.
func (r *reader) clock(i int) {
	if i == 0 {
		return
	}
	before, l := &r.lines[i-1], &r.lines[i]
	switch apart := l.From.Sub(before.To); {
	case apart > slack:
		r.fault(l, "%.1f h are missing: line %d ends at %s and it begins at %s", apart.Hours(), before.Row, before.To.Format(minutes), l.From.Format(minutes))
	case apart < -slack:
		r.fault(l, "it begins at %s, %.1f h before line %d ends", l.From.Format(minutes), -apart.Hours(), before.Row)
	}
}
