package state

import (
	"fmt"
	"math"
	"slices"
	"time"

	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/rig"
	"coredays/model/riglog"
	"coredays/model/unit"
)

const (
	joint    = 10.0          // m: a joint of pipe is about 9.5 m [common practice], and a count may be one off
	slack    = 2 * time.Hour // by which times may differ before they contradict each other
	shortest = 0.5           // m: the shortest core worth a cycle [common practice], as where it is simulated
	kept     = 40            // steps that are remembered: more than any operation has
	clearOf  = 30.0          // m above the sea floor at which a bit is held between holes [common practice]
)

// reader follows a log line by line.
type reader struct {
	plan   *plan.Plan
	st     *State
	lines  []riglog.Line
	first  []int // of each site, index of its first item
	faults []Fault
	deep   map[int]*riglog.Line // line with the depth known last, by item
	bitRow *riglog.Line         // line that stated the bit's depth last
	swept  time.Time            // when mud was swept around last
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
		r.note("line %d, %q, has no meaning: it counts as other work", l.Row, l.What)
	}
	r.at(l, site, item, doing)
	r.depth(l)
	r.bit(l, doing[0])
	seconds := unit.Duration(l.To.Sub(l.From).Seconds())
	for n, k := range doing {
		if k == activity.Task {
			k = r.taskKind()
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

// where is the place of a line in the plan.
func (r *reader) where(l *riglog.Line) (site, item int, ok bool) {
	if l.Site == "" {
		if l.Hole != "" {
			r.fault(l, "hole %s has no site", l.Hole)
			return None, None, false
		}
		return None, None, true
	}
	site = slices.IndexFunc(r.plan.Sites, func(s plan.Site) bool { return s.Name == l.Site })
	if site < 0 {
		r.fault(l, "the scenario has no site %s: write the site as the scenario does, or add it there", l.Site)
		return None, None, false
	}
	if l.Hole == "" {
		return site, None, true
	}
	item = slices.IndexFunc(r.plan.Sites[site].Items, func(i plan.Item) bool { return i.Name == l.Hole })
	if item < 0 {
		r.fault(l, "site %s has no hole or task %s in the scenario: add it there, since it was done", l.Site, l.Hole)
		return None, None, false
	}
	return site, r.first[site] + item, true
}

// idle tells whether nothing is done but waiting and repairing.
func idle(k activity.Kind) bool {
	return k == activity.WaitOnWeather || k == activity.Breakdown
}

// at brings the ship to the place of a line.
func (r *reader) at(l *riglog.Line, site, item int, doing []activity.Kind) {
	s := &r.st.Now
	sailing := slices.Contains(doing, activity.Passage) || slices.Contains(doing, activity.HangingPassage) || slices.Contains(doing, activity.Pilotage)
	switch {
	case site == None && sailing:
		r.leaveSite(l)
		return
	case site == None:
		return // such as weather written down without its place
	case sailing && s.Site == site && !slices.Contains(doing, activity.HangingPassage):
		r.fault(l, "the ship is under way (%q) and at site %s at once", l.What, l.Site)
		return
	}
	if site != s.Site {
		if s.Site != None {
			r.fault(l, "the ship is at site %s, and on the line before at site %s: how she came there is not in the log", l.Site, r.plan.Sites[s.Site].Name)
		}
		r.leaveSite(l)
		s.Site, s.LastSite = site, site
		x := &r.st.Sites[site]
		if x.State == ToCome {
			x.Arrived = l.From
		}
		x.State = InHand
	}
	if item == s.Item || item == None && idle(doing[0]) {
		return
	}
	r.leaveItem(l.From)
	if item == None {
		return
	}
	s.Item = item
	x := &r.st.Items[item]
	if x.State == Done {
		r.note("hole %s of site %s was gone back to at %s", r.item(item).Name, l.Site, l.From.Format(minutes))
	} else {
		x.Began = l.From
	}
	x.State = InHand
	s.Hole, s.TaskDone, s.Clear = Hole{}, 0, s.Bit == 0
}

func (r *reader) leaveSite(l *riglog.Line) {
	s := &r.st.Now
	r.leaveItem(l.From)
	if s.Site != None {
		x := &r.st.Sites[s.Site]
		x.Left, x.State = l.From, Done
		s.Site = None
	}
	s.OnStation = false
}

// leaveItem closes the hole or task in hand.
func (r *reader) leaveItem(at time.Time) {
	s := &r.st.Now
	if s.Item == None {
		return
	}
	x := &r.st.Items[s.Item]
	x.State, x.Ended = Done, at
	if h := r.item(s.Item).Hole; h != nil {
		x.Incomplete = s.Hole.Logged < len(h.Logging)
	}
	if s.Hole.Released {
		s.Assembly = coring.NoBHA
	}
	s.Item, s.Hole = None, Hole{}
}

// depth takes in how deep the hole was when a line began.
func (r *reader) depth(l *riglog.Line) {
	s := &r.st.Now
	if unknown(l.Depth) || s.Item == None {
		return
	}
	x := &r.st.Items[s.Item]
	if r.item(s.Item).Hole == nil {
		r.fault(l, "%s is a task, and has a depth", l.Hole)
		return
	}
	before := r.deep[s.Item]
	if before != nil && before.Depth-l.Depth > joint && l.Depth > 0 {
		r.fault(l, "hole %s is %g m deep, and on line %d it was %g m: a hole gets no shallower, unless it is begun again at 0", l.Hole, float64(l.Depth), before.Row, float64(before.Depth))
		return
	}
	if before != nil && l.Depth == 0 && before.Depth > joint {
		r.note("hole %s of site %s was begun again on line %d", l.Hole, l.Site, l.Row)
		s.Hole = Hole{}
	}
	if approved := r.plan.Sites[x.Site].ApprovedTo; approved > 0 && l.Depth > approved+joint {
		r.fault(l, "hole %s is %g m deep, and site %s is approved to %g m: put the approval right in the scenario if it was amended", l.Hole, float64(l.Depth), l.Site, float64(approved))
	}
	floor := unit.Length(r.plan.Sites[x.Site].WaterDepth)
	if !s.Hole.Open {
		s.Hole.Open, s.Hole.Opened = true, l.From
		s.Bit = max(s.Bit, floor)
		x.Spudded++
		r.st.Sites[x.Site].FloorKnown = true
	}
	if onBottom := s.Bit >= floor+unit.Length(s.Hole.Depth)-0.1; onBottom && l.Depth >= s.Hole.Depth {
		s.Bit = floor + unit.Length(l.Depth)
		s.Longest = max(s.Longest, s.Bit)
	}
	s.Hole.Depth = max(l.Depth, 0)
	x.Depth = max(x.Depth, l.Depth)
	line := *l
	r.deep[s.Item] = &line
}

// bit holds the depth of the bit that a line states against where it was.
func (r *reader) bit(l *riglog.Line, k activity.Kind) {
	s := &r.st.Now
	if s.Site != None && !unknown(l.BitTo) {
		if floor := float64(r.plan.Sites[s.Site].WaterDepth); float64(l.BitTo) > floor+float64(s.Hole.Depth)+100 {
			r.fault(l, "the bit is at %.0f m, and hole %s is %.0f m deep in %.0f m of water", float64(l.BitTo), l.Hole, float64(s.Hole.Depth), floor)
		}
	}
	if unknown(l.BitFrom) {
		return
	}
	if before := r.bitRow; before != nil && math.Abs(float64(l.BitFrom-before.BitTo)) > joint && before.Site == l.Site && before.Hole == l.Hole && !unknown(before.BitTo) && s.Hole.Depth == 0 {
		r.fault(l, "the bit begins at %.0f m, and on line %d it ended at %.0f m", float64(l.BitFrom), before.Row, float64(before.BitTo))
	}
	if k != activity.RunPipe || s.Bit == 0 {
		s.Bit = l.BitFrom
	}
	line := *l
	r.bitRow = &line
}

// remember keeps a step with the ship before it. What was stopped by the sea or a repair and goes on after it is
// one step; what is repeated, such as two connections, is two.
func (r *reader) remember(k activity.Kind, l *riglog.Line, seconds unit.Duration, begins bool) {
	st := r.st
	if idle(k) {
		if n := len(st.Steps); n > 0 {
			st.Steps[n-1].Idle += seconds
			st.Steps[n-1].To = l.To
		}
		return
	}
	if n := len(st.Steps); n > 0 && st.Steps[n-1].Kind == k && st.Steps[n-1].Idle > 0 && k != activity.Connection {
		x := &st.Steps[n-1]
		if k.Of().Stop == activity.Restart {
			x.Idle, x.Worked = x.Idle+x.Worked, 0
		}
		x.Worked += seconds
		x.To = l.To
		return
	}
	if len(st.Steps) == kept {
		st.Steps = slices.Delete(st.Steps, 0, 1)
	}
	from := l.From
	if n := len(st.Steps); n > 0 && !begins {
		from = st.Steps[n-1].To
	}
	st.Steps = append(st.Steps, Step{Kind: k, From: from, To: from.Add(time.Duration(float64(seconds) * float64(time.Second))), Worked: seconds, Before: st.Now})
}

// nextWork is what is done after the n-th thing of a line, waiting and repairs left out.
func (r *reader) nextWork(i, n int) activity.Kind {
	for ; i < len(r.lines); i, n = i+1, -1 {
		for _, k := range r.lines[i].Doing[min(n+1, len(r.lines[i].Doing)):] {
			if !idle(k) {
				return k
			}
		}
	}
	return activity.Kinds
}

// did changes the ship by what was done.
func (r *reader) did(k activity.Kind, seconds unit.Duration, to time.Time, next activity.Kind) {
	s := &r.st.Now
	if s.Site == None {
		return
	}
	if k == activity.WaitOnWeather {
		r.st.Sites[s.Site].Waited += seconds
	}
	floor := unit.Length(r.plan.Sites[s.Site].WaterDepth)
	high := max(floor-clearOf, floor/2)
	s.SinceOther[k] += seconds
	before := s.Bit
	switch k {
	case activity.Position:
		s.OnStation, s.LastService = true, to
	case activity.Secure:
		s.OnStation = false
	case activity.MakeUpBHA:
		s.TryOut = s.TryOut || !s.TriedOut
		s.Assembly, s.Rotated, s.TriedOut = r.assembly(), 0, true
		s.Hole.Conditioned, s.Hole.Released = false, false
	case activity.LayDownBHA:
		s.Assembly, s.Bit, s.Clear = coring.NoBHA, 0, true
	case activity.RunPipe:
		s.Bit = high
	case activity.PullPipe:
		if s.Bit <= high+0.1 || next == activity.LayDownBHA {
			s.Bit = 0
		} else {
			s.Bit = high
		}
	case activity.RunInHole:
		s.Bit = floor + unit.Length(s.Hole.Depth)
	case activity.PullFromHole:
		if s.Bit = floor; next == activity.RigUpLogging || next == activity.RunInHole {
			s.Bit += min(unit.Length(r.median(rig.LoggingPipeDepth)), unit.Length(s.Hole.Depth))
		}
	case activity.OffsetMove:
		s.Clear = true
	case activity.DrillAhead, activity.CutCore:
		s.Rotated += seconds
	case activity.DropFunnel:
		s.Hole.Funnel = true
	case activity.Stab:
		s.Hole.Stabs++
		s.Bit = floor + 1e-3
	case activity.ConditionHole:
		s.Hole.Conditioned = true
	case activity.ReleaseBit:
		s.Hole.Released = true
	case activity.RigUpLogging:
		s.Hole.Hung = true
	case activity.RunString:
		s.Hole.Logged++
	case activity.Penetrometer:
		s.Hole.Probes++
	case activity.HeavyMud, activity.CementPlug:
		s.Hole.Filled, s.Hole.Finished = true, true
	case activity.Sweep:
		r.swept = to
	case activity.SlipAndCut:
		s.NumberOf = 0
	case activity.RigService:
		s.LastService = to
	case activity.OtherWork:
		s.SinceOther, s.TryOut = [activity.Kinds]unit.Duration{}, false
	case activity.Task, activity.WholeTask, activity.FrailTask:
		s.TaskDone += seconds
	}
	if s.Bit != before && s.NumberOf < maxTrips {
		s.Trips[s.NumberOf] = [2]unit.Length{before, s.Bit}
		s.NumberOf++
	}
}

func (r *reader) median(of rig.Rate) float64 { return r.plan.Ship.Rates[of].Median() }

// assembly is the one that the hole in hand needs.
func (r *reader) assembly() coring.Assembly {
	if r.st.Now.Item == None || r.item(r.st.Now.Item).Hole == nil {
		return coring.NoBHA
	}
	if h := r.item(r.st.Now.Item).Hole; len(h.Stages) > 0 {
		return h.Stages[0].With.Assembly()
	}
	return coring.RotaryBHA
}
