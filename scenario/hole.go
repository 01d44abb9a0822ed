package scenario

import (
	"fmt"

	"coredays/model/coring"
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

// stages reads the tools of a hole and how far each goes.
func (r siteReader) stages(path string, f itemFile, h *plan.Hole) {
	if len(f.Core) == 0 && !f.DrillAheadTo.given {
		r.fault(join(path, "core"), "", "a tool and how far it goes, such as {with: APC, to: refusal}, or drill_ahead_to")
	}
	r.reachable(join(path, "drill_ahead_to"), f.DrillAheadTo, h.DrillAheadTo)
	depth := h.DrillAheadTo
	for i, s := range f.Core {
		inner := at(join(path, "core"), i)
		stage := plan.Stage{With: r.tool(join(inner, "with"), s.With)}
		r.follows(join(inner, "with"), stage.With, h)
		r.target(join(inner, "to"), s.To, &stage, depth)
		if !stage.ToRefusal {
			depth = max(depth, stage.To)
		}
		h.Stages = append(h.Stages, stage)
	}
}

// tool reads the name of a coring tool.
func (r siteReader) tool(path string, t text) coring.Tool {
	tool, err := coring.ParseTool(t.value)
	if err != nil {
		var all []string
		for tool := range coring.Tools {
			all = append(all, tool.String())
		}
		r.fault(path, t.value, listed(all))
	}
	return tool
}

// follows refuses tools that can't follow those before them in the hole.
func (r siteReader) follows(path string, tool coring.Tool, h *plan.Hole) {
	for _, before := range h.Stages {
		switch {
		case tool.Assembly() != before.With.Assembly():
			r.fault(path, tool.String(), "a hole of its own for a rotary assembly: the barrels do not run through the same one")
			return
		case tool.Piston() && !before.With.Piston():
			r.fault(path, tool.String(), fmt.Sprintf("no piston corer after %s, which is taken where the piston is refused", before.With))
			return
		}
	}
}

// target reads how far a tool goes.
func (r siteReader) target(path string, t text, stage *plan.Stage, from unit.Depth) {
	if t.value != "refusal" {
		stage.To = unit.Depth(r.number(path, t, depthMeasure))
		if stage.To > 0 && stage.To <= from {
			r.fault(path, t.value, "deeper than what comes before in the hole, "+from.Tell())
		}
		r.reachable(path, t, stage.To)
		return
	}
	stage.ToRefusal, stage.To = true, r.allowed()
	switch {
	case !stage.With.Piston():
		r.fault(path, t.value, "a depth, such as \"290 mbsf\": only a piston corer goes to refusal")
	case stage.To == 0:
		r.fault(path, t.value, "approved_to or layers at this site, so that there is an end where nothing refuses")
	case stage.To <= from:
		r.fault(path, t.value, fmt.Sprintf("room below %s: the ground is known and approved to %s", from.Tell(), stage.To.Tell()))
	}
}

// reachable refuses a depth that is not approved or below what is known of the ground.
func (r siteReader) reachable(path string, t text, depth unit.Depth) {
	approved, layers := r.site.ApprovedTo, r.site.Layers
	switch {
	case approved > 0 && depth > approved:
		r.fault(path, t.value, "no deeper than the approved depth, "+approved.Tell())
	case len(layers) > 0 && depth > layers[len(layers)-1].Bottom:
		r.fault(path, t.value, "no deeper than the layers reach, "+layers[len(layers)-1].Bottom.Tell())
	}
}

// measurements reads what is measured in a hole beside logging.
func (r siteReader) measurements(path string, f itemFile, h *plan.Hole) {
	piston := pistonCored(h)
	if h.Oriented && !piston {
		r.fault(join(path, "oriented"), f.Oriented.value, "a stage with a piston corer: only its cores are oriented")
	}
	if f.Temperature != nil {
		inner := join(path, "temperature")
		if f.Temperature.Tool.given {
			r.choice(join(inner, "tool"), f.Temperature.Tool, "shoe")
		}
		if !piston {
			r.fault(inner, "", "a stage with a piston corer, which carries the temperature shoe")
		}
		h.Temperature = r.cores(join(inner, "on_cores"), f.Temperature.OnCores)
	}
	if f.Penetrometer != nil {
		r.penetrometer(join(path, "penetrometer.at"), f.Penetrometer.At, h)
	}
}

// penetrometer reads the depths of penetrometer runs.
func (r siteReader) penetrometer(path string, given []text, h *plan.Hole) {
	if len(given) == 0 {
		r.fault(path, "", `depths, such as "[40 mbsf, 80 mbsf]"`)
	}
	last := unit.Depth(0)
	for i, t := range given {
		depth := unit.Depth(r.number(at(path, i), t, depthMeasure))
		switch {
		case depth > bottomOf(h):
			r.fault(at(path, i), t.value, "no deeper than the hole, "+bottomOf(h).Tell())
		case depth > 0 && depth <= last:
			r.fault(at(path, i), t.value, "deeper than the run before, "+last.Tell())
		}
		last = max(last, depth)
		h.Penetrometer = append(h.Penetrometer, depth)
	}
}
