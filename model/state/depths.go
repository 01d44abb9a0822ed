package state

import (
	"math"

	"coredays/model/activity"
	"coredays/model/riglog"
	"coredays/model/unit"
)

// joint is by how much depths may differ before they contradict each other, m: a joint of pipe is about 9.5 m [common
// practice], and a count may be one off.
const joint = 10.0

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
		r.fault(l, "hole %s is %g m deep, and site %s is approved to %g m: put the approval right, in the scenario or the state file, if it was amended", l.Hole, float64(l.Depth), l.Site, float64(approved))
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
