package scenario

import (
	"coredays/model/plan"
	"coredays/model/unit"
)

// hole reads a hole.
func (r siteReader) hole(path string, f itemFile) *plan.Hole {
	r.strangers(path, f.taskKeys(), "nothing here: this belongs to a task, and this is a hole")
	h := &plan.Hole{
		StartOffset:  unit.Length(r.maybe(join(path, "start_offset"), f.StartOffset, offsetMeasure)),
		DrillAheadTo: r.depth(join(path, "drill_ahead_to"), f.DrillAheadTo),
		Oriented:     r.yes(join(path, "oriented"), f.Oriented, false),
		Logging:      r.logging(join(path, "logging"), f.Logging),
		Reentry:      plan.Reentry(r.choice(join(path, "reentry"), f.Reentry, "none", "free-fall funnel")),
		Abandon:      plan.Abandon(r.choice(join(path, "abandon"), f.Abandon, "open", "heavy mud", "cement")),
		IfLost:       plan.IfLost(r.choice(join(path, "if_lost"), f.IfLost, "retry", "give up")),
	}
	r.stages(path, f, h)
	r.measurements(path, f, h)
	return h
}
