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
	return h
}

// existing reads how deep a hole is that is there already. What goes on from there never begins a new hole.
func (r siteReader) existing(path string, f itemFile, h *plan.Hole) {
	at := document.Join(path, "existing")
	h.Existing = r.Depth(at, f.Existing)
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
