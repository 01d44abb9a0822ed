package scenario

import (
	"fmt"

	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/scenario/document"
	"coredays/scenario/entry"
	"coredays/scenario/fault"
)

// stages reads the tools of a hole and how far each goes.
func (r siteReader) stages(path string, f itemFile, h *plan.Hole) {
	if len(f.Core) == 0 && !f.DrillAheadTo.Given && len(f.Casing) == 0 {
		r.Fault(document.Join(path, "core"), "", "a tool and how far it goes, such as {with: APC, to: refusal}, or drill_ahead_to")
	}
	r.reachable(document.Join(path, "drill_ahead_to"), f.DrillAheadTo, h.DrillAheadTo)
	h.DrillAheadTo = max(h.DrillAheadTo, h.CasedTo())
	depth := h.DrillAheadTo
	for i, s := range entry.Few(r.Reader, document.Join(path, "core"), f.Core, entry.MostStages) {
		inner := document.At(document.Join(path, "core"), i)
		stage := plan.Stage{With: r.tool(document.Join(inner, "with"), s.With)}
		r.follows(document.Join(inner, "with"), stage.With, h)
		stage.Advance = r.advance(document.Join(inner, "advance"), s.Advance, stage.With)
		stage.HardShoe = r.shoe(document.Join(inner, "shoe"), s.Shoe, stage.With)
		r.begin(document.Join(inner, "from"), s.From, &stage, depth, i)
		r.target(document.Join(inner, "to"), s.To, &stage, max(depth, stage.From))
		if !stage.ToRefusal {
			depth = max(depth, stage.To)
		}
		h.Stages = append(h.Stages, stage)
	}
}

// advance reads how long each core of a stage is to be, 0 for as long as the tool usually makes it.
func (r siteReader) advance(path string, t document.Text, tool coring.Tool) unit.Length {
	length := unit.Length(r.Maybe(path, t, entry.CoreMeasure))
	if stroke := tool.Stroke(); length > stroke {
		r.Infeasible(path, t.Value, "no longer than a core of the "+tool.Of().What+", "+unit.OfLength.Format(float64(stroke), "m"))
	}
	return length
}

// shoe reads whether a tool cuts with what is made for hard ground.
func (r siteReader) shoe(path string, t document.Text, tool coring.Tool) bool {
	hard := r.Choice(path, t, "standard", "hard") == 1
	if hard && tool.Of().Cut != coring.Rotated {
		r.Fault(path, t.Value, "standard, or no word: a "+tool.Of().What+" is shot, and does not turn")
	}
	return hard
}

// begin reads the depth down to which is drilled without coring before the tool.
func (r siteReader) begin(path string, t document.Text, stage *plan.Stage, before unit.Depth, n int) {
	switch stage.From = r.Depth(path, t); {
	case stage.From == 0:
	case n == 0:
		r.Fault(path, t.Value, "drill_ahead_to of the hole for what is drilled before the first core")
	case stage.From <= before:
		r.Fault(path, t.Value, "deeper than what comes before in the hole, "+exactly(before))
	}
}

// tool reads the name of a coring tool.
func (r siteReader) tool(path string, t document.Text) coring.Tool {
	tool, err := coring.ParseTool(t.Value)
	if err != nil {
		var all []string
		for tool := range coring.Tools {
			all = append(all, tool.String())
		}
		r.Fault(path, t.Value, fault.Listed(all))
	}
	return tool
}

// follows refuses tools that can't follow those before them in the hole.
func (r siteReader) follows(path string, tool coring.Tool, h *plan.Hole) {
	for _, before := range h.Stages {
		if tool.Assembly() != before.With.Assembly() {
			r.Infeasible(path, tool.String(), "a hole of its own for a rotary assembly: the barrels do not run through the same one")
			return
		}
	}
}

// target reads how far a tool goes.
func (r siteReader) target(path string, t document.Text, stage *plan.Stage, from unit.Depth) {
	if t.Value != "refusal" {
		stage.To = unit.Depth(r.Number(path, t, entry.DepthMeasure))
		if stage.To > 0 && stage.To <= from {
			r.Fault(path, t.Value, "deeper than what comes before in the hole, "+exactly(from))
		}
		r.reachable(path, t, stage.To)
		return
	}
	stage.ToRefusal, stage.To = true, r.allowed()
	switch {
	case !stage.With.Piston():
		r.Fault(path, t.Value, "a depth, such as \"290 mbsf\": only a piston corer goes to refusal")
	case stage.To == 0:
		r.Fault(path, t.Value, "approved_to or layers at this site, so that there is an end where nothing refuses")
	case stage.To <= from:
		r.Fault(path, t.Value, fmt.Sprintf("room below %s: the ground is known and approved to %s", exactly(from), exactly(stage.To)))
	}
}

// exactly writes a depth with all its figures, so that it can stand beside another as a limit.
func exactly(d unit.Depth) string { return unit.OfDepth.Format(float64(d), "mbsf") }

// reachable refuses a depth that is not approved or below what is known of the ground.
func (r siteReader) reachable(path string, t document.Text, depth unit.Depth) {
	approved, layers := r.site.ApprovedTo, r.site.Layers
	switch {
	case approved > 0 && depth > approved:
		r.Infeasible(path, t.Value, "no deeper than the approved depth, "+exactly(approved))
	case len(layers) > 0 && depth > layers[len(layers)-1].Bottom:
		r.Infeasible(path, t.Value, "no deeper than the layers reach, "+exactly(layers[len(layers)-1].Bottom))
	}
}
