package scenario

import (
	"slices"

	"coredays/model/plan"
	"coredays/model/unit"
)

// condition reads on which earlier hole an item depends.
func (r siteReader) condition(path string, f whenFile) *plan.Condition {
	condition := &plan.Condition{
		Hole:  slices.IndexFunc(r.site.Items, func(i plan.Item) bool { return i.Hole != nil && i.Name == f.Hole.value }),
		Depth: unit.Depth(r.number(join(path, "depth"), f.Depth, depthMeasure)),
	}
	if !f.Refused.given {
		r.fault(join(path, "refused"), "", "above or below")
	}
	condition.Above = r.choice(join(path, "refused"), f.Refused, "above", "below") == 0
	switch {
	case condition.Hole < 0:
		r.fault(join(path, "hole"), f.Hole.value, "the name of a hole before this one at the same site")
		condition.Hole = 0
	case !pistonCored(r.site.Items[condition.Hole].Hole):
		r.fault(join(path, "hole"), f.Hole.value, "a hole that is cored with a piston corer, which alone is refused")
	}
	return condition
}

func pistonCored(h *plan.Hole) bool {
	return slices.ContainsFunc(h.Stages, func(s plan.Stage) bool { return s.With.Piston() })
}
