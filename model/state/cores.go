package state

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"time"

	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/riglog"
	"coredays/model/unit"
)

// letters are those of the tools in a core table.
func toolOf(letter string) (coring.Tool, bool) {
	for t := range coring.Tools {
		if t.Letter() == letter {
			return t, true
		}
	}
	return 0, false
}

// noted is a core as a simulated diary notes it: "12H: 9.5 m cut, 8.3 up".
var noted = regexp.MustCompile(`^(\d+)([A-Z]): ([\d.]+) m cut, ([\d.]+) up`)

// cores takes in the cores that were on deck by the moment, from the core table, or where there is none from the
// notes of the log.
func (r *reader) cores(table []riglog.Core) {
	if len(table) == 0 {
		table = r.fromNotes()
	}
	seen := map[[2]int]*riglog.Core{}
	for i := range table {
		c := &table[i]
		if c.OnDeck.After(r.st.At) {
			continue
		}
		fault := func(format string, values ...any) {
			r.faults = append(r.faults, Fault{c.File, c.Row, fmt.Sprintf(format, values...)})
		}
		site := slices.IndexFunc(r.plan.Sites, func(s plan.Site) bool { return s.Name == c.Site })
		if site < 0 {
			fault("core %d%s is from site %s, which the scenario does not have", c.Number, c.Type, c.Site)
			continue
		}
		item := slices.IndexFunc(r.plan.Sites[site].Items, func(x plan.Item) bool { return x.Name == c.Hole && x.Hole != nil })
		if item < 0 {
			fault("core %d%s is from hole %s of site %s, which the scenario does not have", c.Number, c.Type, c.Hole, c.Site)
			continue
		}
		item += r.first[site]
		x := &r.st.Items[item]
		tool, known := toolOf(c.Type)
		if !known {
			continue // such as a wash core
		}
		switch {
		case x.State == ToCome:
			fault("core %d%s is from hole %s of site %s, which by the log is not begun", c.Number, c.Type, c.Hole, c.Site)
			continue
		case !c.OnDeck.IsZero() && c.OnDeck.Before(x.Began.Add(-slack)):
			fault("core %d%s of hole %s came on deck at %s, before the hole was begun at %s by the log", c.Number, c.Type, c.Hole, c.OnDeck.Format(minutes), x.Began.Format(minutes))
			continue
		case !c.OnDeck.IsZero() && !x.Ended.IsZero() && c.OnDeck.After(x.Ended.Add(slack)):
			fault("core %d%s of hole %s came on deck at %s, after the hole was left at %s by the log", c.Number, c.Type, c.Hole, c.OnDeck.Format(minutes), x.Ended.Format(minutes))
			continue
		}
		key := [2]int{item, c.Number}
		if before := seen[key]; before != nil {
			fault("core %d of hole %s is on line %d too", c.Number, c.Hole, before.Row)
			continue
		}
		seen[key] = c
		cored, recovered := c.Cored, c.Recovered
		if unknown(cored) {
			cored = tool.Stroke()
		}
		if unknown(recovered) {
			recovered = 0
		}
		r.st.Cores = append(r.st.Cores, Core{item, c.Number, tool, c.Top, cored, recovered, c.OnDeck})
	}
	slices.SortStableFunc(r.st.Cores, func(a, b Core) int { return a.OnDeck.Compare(b.OnDeck) })
	r.deepened()
}

// fromNotes are the cores that the notes of the log tell.
func (r *reader) fromNotes() (list []riglog.Core) {
	for i := range r.lines {
		l := &r.lines[i]
		m := noted.FindStringSubmatch(l.Note)
		if m == nil || i == len(r.lines)-1 { // the last line may be cut short before its core was on deck
			continue
		}
		number, _ := strconv.Atoi(m[1])
		cored, _ := strconv.ParseFloat(m[3], 64)
		recovered, _ := strconv.ParseFloat(m[4], 64)
		list = append(list, riglog.Core{File: l.File, Row: l.Row, Site: l.Site, Hole: l.Hole, Number: number, Type: m[2], Top: l.Depth,
			Cored: unit.Length(cored), Recovered: unit.Length(recovered), OnDeck: l.To})
	}
	return list
}

// deepened brings the holes down to where their cores say that they are, and tells stages and refusals.
func (r *reader) deepened() {
	for item := range r.st.Items {
		x := &r.st.Items[item]
		h := r.item(item).Hole
		if h == nil || x.State == ToCome {
			continue
		}
		at := r.by(item, h, r.st.At, Hole{Depth: x.Depth})
		if r.st.Now.Item == item {
			now := &r.st.Now
			if at.Depth > now.Hole.Depth { // cores that came up since the last line with a depth
				floor := unit.Length(r.plan.Sites[x.Site].WaterDepth)
				if now.Bit >= floor+unit.Length(now.Hole.Depth)-0.1 && now.Hole.Open {
					now.Bit = floor + unit.Length(at.Depth)
				}
			}
			now.Hole = r.by(item, h, r.st.At, now.Hole)
			for i := range r.st.Steps {
				if step := &r.st.Steps[i]; step.Before.Item == item {
					depth := step.Before.Hole.Depth
					step.Before.Hole = r.by(item, h, step.From, step.Before.Hole)
					step.Before.Hole.Depth = depth
				}
			}
		}
		x.Depth = max(x.Depth, at.Depth)
		x.Incomplete = x.State == Done && (x.Incomplete || short(h, x))
	}
}

// by is how far a hole is by the cores that were on deck at a moment.
func (r *reader) by(item int, h *plan.Hole, moment time.Time, at Hole) Hole {
	at.Stage, at.Half, at.Partials, at.Cores, at.Unswept = 0, false, 0, 0, 0
	last := coring.Tools
	for i := range r.st.Cores {
		if c := &r.st.Cores[i]; c.Item == item && !c.OnDeck.After(moment) {
			if c.Tool == last {
				r.notRefused(&r.st.Items[item], h, &at, c.Tool)
			}
			last = c.Tool
			r.advance(&r.st.Items[item], h, &at, c)
		}
	}
	return at
}

// notRefused takes back that a piston corer was refused where the crew went on with it: its short cores were short strokes.
func (r *reader) notRefused(x *Item, h *plan.Hole, at *Hole, t coring.Tool) {
	then := r.plan.Sites[x.Site].Refusal.Then
	uses := func(stage int) (half, does bool) {
		if stage < 0 || stage >= len(h.Stages) || !t.Piston() {
			return false, false
		}
		with := h.Stages[stage].With
		return with != t, with == t || with.GoesOn(then) && t == then
	}
	stage := at.Stage
	if _, does := uses(stage); !does {
		stage--
	}
	half, does := uses(stage)
	if !does || stage == at.Stage && half == at.Half {
		return
	}
	if at.Stage, at.Half = stage, half; !half {
		x.Refused = 0
	}
}

// short tells whether a hole was left before its target. One that was cored to refusal alone is not.
func short(h *plan.Hole, x *Item) bool {
	if n := len(h.Stages); n > 0 {
		last := &h.Stages[n-1]
		return !(last.ToRefusal && x.Refused > 0) && x.Depth < last.To-unit.Depth(coring.Shortest)
	}
	return x.Depth < h.DrillAheadTo-unit.Depth(coring.Shortest)
}

// advance goes on by one core.
func (r *reader) advance(x *Item, h *plan.Hole, at *Hole, c *Core) {
	then := r.plan.Sites[x.Site].Refusal.Then
	for at.Stage < len(h.Stages) {
		with := h.Stages[at.Stage].With
		if with == c.Tool {
			at.Half = false
			break
		}
		if with.GoesOn(then) && c.Tool == then {
			if !at.Half && x.Refused == 0 {
				x.Refused = c.Top
			}
			at.Half = true
			break
		}
		more := slices.IndexFunc(h.Stages[at.Stage+1:], func(s plan.Stage) bool { return s.With == c.Tool })
		if more < 0 {
			break
		}
		if with.Piston() && x.Refused == 0 && c.Top < h.Stages[at.Stage].To-unit.Depth(coring.Shortest) {
			x.Refused = c.Top
		}
		at.Stage, at.Half, at.Partials = at.Stage+1+more, false, 0
	}
	at.Cores = max(at.Cores, c.Number)
	if c.Tool.Has(coring.Swept) && c.OnDeck.After(r.swept) {
		at.Unswept++
	}
	at.Depth = max(at.Depth, c.Top+unit.Depth(c.Cored))
	if c.Tool.Piston() && c.Number > 1 {
		const partial = 0.95 // of the full stroke [common practice], as where it is simulated
		full := c.Tool.Stroke()
		if at.Stage < len(h.Stages) {
			full = min(full, unit.Length(h.Stages[at.Stage].To-c.Top))
		}
		if c.Cored < partial*full {
			at.Partials++
		} else {
			at.Partials = 0
		}
		r.refuse(x, h, at, c.Top+unit.Depth(c.Cored))
	}
}

// end says what is in hand at the moment.
func (r *reader) end() {
	st := r.st
	if n := len(st.Steps); n > 0 && st.Now.Item != None && st.Steps[n-1].To.Before(st.At.Add(-time.Minute)) {
		r.note("nothing is written down from %s to %s", st.Steps[n-1].To.Format(minutes), st.At.Format(minutes))
	}
}

// refuse applies the scenario's rule for piston corers: so many incomplete strokes in a row.
func (r *reader) refuse(x *Item, h *plan.Hole, at *Hole, depth unit.Depth) {
	rule := &r.plan.Sites[x.Site].Refusal
	if rule.PartialStrokes < 1 || at.Partials < rule.PartialStrokes || at.Stage >= len(h.Stages) {
		return
	}
	if x.Refused == 0 {
		x.Refused = depth
	}
	at.Partials = 0
	if !at.Half && h.Stages[at.Stage].With.GoesOn(rule.Then) {
		at.Half = true
		return
	}
	at.Stage, at.Half = at.Stage+1, false
}
