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
		Reentry:      plan.Reentry(r.Choice(document.Join(path, "reentry"), f.Reentry, "none", "free-fall funnel")),
		Abandon:      plan.Abandon(r.Choice(document.Join(path, "abandon"), f.Abandon, "open", "heavy mud", "cement")),
		IfLost:       plan.IfLost(r.Choice(document.Join(path, "if_lost"), f.IfLost, "retry", "give up")),
	}
	r.stages(path, f, h)
	r.measurements(path, f, h)
	return h
}
