package record

import (
	"coredays/model/coring"
	"coredays/model/unit"
)

// Step is what one tool did in a hole.
type Step struct {
	With   coring.Tool
	Cores  int
	Length unit.Length // cored
}

// longestCore is the longest core of the records' full barrels on average over a hole, as a share
// of the stroke: 9.66 m of 9.5 m is the 95th hundredth of holes with at least five cores (hole
// summaries, doi:10.5281/zenodo.10498831).
const longestCore = 1.02

// Steps are the tools of a hole from the sea floor down. Where the source has no metres by tool they
// follow from the cores: each a full stroke, all shortened alike where that is more than was cored.
func (h *Hole) Steps() []Step {
	var steps []Step
	scale := h.strokeScale()
	for t := range coring.Tools { // in the order in which they follow each other
		length := unit.Length(float64(h.Cores[t])*scale) * t.Stroke()
		if h.ByTool {
			length = h.Metres[t]
		}
		if h.Cores[t] > 0 && length > 0 {
			steps = append(steps, Step{t, h.Cores[t], length})
		}
	}
	return h.withOther(steps)
}

// strokeScale is the mean core over the full stroke; where no cored length is stated, 1.
func (h *Hole) strokeScale() float64 {
	var full unit.Length
	for t, n := range h.Cores {
		full += unit.Length(n) * coring.Tool(t).Stroke()
	}
	if full == 0 || h.Cored == 0 {
		return 1
	}
	return min(longestCore, float64(h.Cored/full))
}

// withOther counts the metres of other tools to the last tool of the hole: such tools are run
// through its assembly. A hole of other tools alone counts as rotary.
func (h *Hole) withOther(steps []Step) []Step {
	if h.OtherMetres <= 0 {
		return steps
	}
	if len(steps) == 0 {
		return []Step{{coring.RCB, max(1, h.Other), h.OtherMetres}}
	}
	last := &steps[len(steps)-1]
	last.Length += h.OtherMetres
	last.Cores += h.Other
	return steps
}

// Ahead is the length drilled without coring. The sources do not say where it was: it is taken as
// the top of the hole.
func (h *Hole) Ahead() unit.Length {
	ahead := unit.Length(h.Depth)
	for _, step := range h.Steps() {
		ahead -= step.Length
	}
	return max(0, ahead)
}
