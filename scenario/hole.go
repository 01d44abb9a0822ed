package scenario

import (
	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/scenario/document"
	"coredays/scenario/entry"
)

// hole reads a hole.
func (r siteReader) hole(path string, f itemFile) *plan.Hole {
	r.strangers(path, f.taskKeys(), "nothing here: this belongs to a task, and this is a hole")
	h := &plan.Hole{
		StartOffset:  unit.Length(r.Maybe(document.Join(path, "start_offset"), f.StartOffset, entry.OffsetMeasure)),
		DrillAheadTo: r.Depth(document.Join(path, "drill_ahead_to"), f.DrillAheadTo),
		Oriented:     r.Yes(document.Join(path, "oriented"), f.Oriented, false),
		Logging:      r.logging(document.Join(path, "logging"), f.Logging),
		Reentry:      plan.Reentry(r.Choice(document.Join(path, "reentry"), f.Reentry, "none", "free-fall funnel", "cone")),
		Abandon:      plan.Abandon(r.Choice(document.Join(path, "abandon"), f.Abandon, "open", "heavy mud", "cement")),
		IfLost:       plan.IfLost(r.Choice(document.Join(path, "if_lost"), f.IfLost, "retry", "give up")),
	}
	r.casing(path, f, h)
	r.existing(path, f, h)
	r.stages(path, f, h)
	r.measurements(path, f, h)
	r.endsEarly(document.Join(path, "ends_early"), f.EndsEarly, h)
	return h
}

// existing reads how deep a hole is that is there already. What goes on from there never begins a new hole.
func (r siteReader) existing(path string, f itemFile, h *plan.Hole) {
	at := document.Join(path, "existing")
	h.Existing = r.Depth(at, f.Existing)
	r.asItStands(path, f, h)
	switch {
	case h.Existing == 0 && h.Reentry == plan.Cone && len(h.Casing) == 0:
		r.Fault(document.Join(path, "reentry"), f.Reentry.Value, "a depth under existing beside it, or casing with which a new cone is set")
	case h.Existing == 0:
		return
	case h.Reentry != plan.Cone:
		r.Fault(at, f.Existing.Value, "reentry: cone beside it: nothing else stands on the sea floor for years")
	case f.IfLost.Given && h.IfLost == plan.Retry:
		r.Fault(document.Join(path, "if_lost"), f.IfLost.Value, "give up, or no word: an existing hole can't be drilled anew")
	case f.StartOffset.Given:
		r.Fault(document.Join(path, "start_offset"), f.StartOffset.Value, "nothing here: an existing hole does not begin at the sea floor")
	case f.DrillAheadTo.Given && h.DrillAheadTo <= h.Existing:
		r.Fault(document.Join(path, "drill_ahead_to"), f.DrillAheadTo.Value, "deeper than the existing hole, "+exactly(h.Existing))
	}
	r.reachable(at, f.Existing, h.Existing)
	h.IfLost = plan.GiveUp
	h.DrillAheadTo = max(h.DrillAheadTo, h.Existing)
}

// asItStands reads how much of an existing hole is filled and cased.
func (r siteReader) asItStands(path string, f itemFile, h *plan.Hole) {
	fill, cased := document.Join(path, "fill"), document.Join(path, "cased_to")
	h.Fill = unit.Length(r.Maybe(fill, f.Fill, entry.FillMeasure))
	h.CasedAlready = r.Depth(cased, f.CasedTo)
	r.inExisting(fill, f.Fill, unit.Depth(h.Fill), h)
	r.inExisting(cased, f.CasedTo, h.CasedAlready, h)
	if len(h.Casing) > 0 && h.CasedAlready >= h.Casing[0].To && h.CasedAlready > 0 {
		r.Fault(cased, f.CasedTo.Value, "less than the first string under casing, which hangs in it, "+exactly(h.Casing[0].To))
	}
}

// inExisting refuses what no existing hole has room for.
func (r siteReader) inExisting(path string, t document.Text, is unit.Depth, h *plan.Hole) {
	switch {
	case t.Given && h.Existing == 0:
		r.Fault(path, t.Value, "a depth under existing beside it: this tells of a hole that is there already")
	case is > h.Existing:
		r.Fault(path, t.Value, "no more than the hole is deep, "+exactly(h.Existing))
	}
}
