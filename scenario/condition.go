package scenario

import (
	"fmt"
	"slices"

	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/scenario/document"
	"coredays/scenario/entry"
)

// condition reads on which earlier hole an item depends.
func (r siteReader) condition(path string, f whenFile) *plan.Condition {
	condition := &plan.Condition{
		Hole:  slices.IndexFunc(r.site.Items, func(i plan.Item) bool { return i.Hole != nil && i.Name == f.Hole.Value }),
		Depth: unit.Depth(r.Number(document.Join(path, "depth"), f.Depth, entry.DepthMeasure)),
	}
	if !f.Refused.Given {
		r.Fault(document.Join(path, "refused"), "", "above or below")
	}
	condition.Above = r.Choice(document.Join(path, "refused"), f.Refused, "above", "below") == 0
	switch {
	case condition.Hole < 0 && r.leavesOut(f.Hole.Value):
		r.Fault(document.Join(path, "hole"), f.Hole.Value, "a hole that is not left out")
		condition.Hole = 0
	case condition.Hole < 0:
		r.Fault(document.Join(path, "hole"), f.Hole.Value, "the name of a hole before this one at the same site")
		condition.Hole = 0
	case !pistonCored(r.site.Items[condition.Hole].Hole):
		r.Fault(document.Join(path, "hole"), f.Hole.Value, "a hole that is cored with a piston corer, which alone is refused")
	}
	r.canArise(path, f, condition)
	return condition
}

// canArise refuses a condition that no refusal in the hole can meet.
func (r siteReader) canArise(path string, f whenFile, condition *plan.Condition) {
	if condition.Depth <= 0 || len(r.site.Items) == 0 {
		return // said already
	}
	hole := r.site.Items[condition.Hole].Hole
	if hole == nil || !pistonCored(hole) {
		return
	}
	deepest := unit.Depth(0)
	for _, stage := range hole.Stages {
		if stage.With.Piston() {
			deepest = max(deepest, stage.To)
		}
	}
	switch {
	case !condition.Above && deepest > 0 && condition.Depth >= deepest:
		r.Fault(document.Join(path, "depth"), f.Depth.Value, fmt.Sprintf("less than %s, below which the piston corer does not go in %s: it is never refused there", exactly(deepest), f.Hole.Value))
	case condition.Above && condition.Depth <= hole.DrillAheadTo:
		r.Fault(document.Join(path, "depth"), f.Depth.Value, fmt.Sprintf("more than %s, above which %s is not cored: nothing is refused there", exactly(hole.DrillAheadTo), f.Hole.Value))
	}
}

func pistonCored(h *plan.Hole) bool {
	return slices.ContainsFunc(h.Stages, func(s plan.Stage) bool { return s.With.Piston() })
}
