package sim

import (
	"fmt"

	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/sim/simtest"
)

// items throw what there is to do at a site: mostly holes, of which some depend on others.
func (d dice) items(bottom unit.Depth) (items []plan.Item) {
	tasksOnly := d.oneIn(8)
	for n := range 1 + d.IntN(4) {
		item := plan.Item{Name: fmt.Sprintf("%c", 'A'+n), Rank: 1 + d.IntN(3)}
		if tasksOnly || d.oneIn(6) {
			item.Task = &plan.Task{Steps: []plan.Step{{Takes: d.around(oneOf(d, 1.0, 10, 30) * simtest.Hours), SeaLimit: oneOf[unit.Length](d, 0, 0, 2, 3, 6, 12), Interruptible: d.oneIn(2)}}}
		} else {
			item.Hole, item.When = d.hole(bottom), d.condition(items, bottom)
		}
		items = append(items, item)
	}
	return items
}

// condition throws what an item may depend on.
func (d dice) condition(earlier []plan.Item, bottom unit.Depth) *plan.Condition {
	for n := range earlier {
		if earlier[n].Hole != nil && d.oneIn(6) {
			return &plan.Condition{Hole: n, Above: d.oneIn(2), Depth: unit.Depth(d.Float64()) * bottom}
		}
	}
	return nil
}

// hole throws a hole and what is done in it.
func (d dice) hole(bottom unit.Depth) *plan.Hole {
	h := &plan.Hole{Oriented: d.oneIn(2), Reentry: oneOf(d, plan.NoReentry, plan.Funnel),
		Abandon: oneOf(d, plan.OpenHole, plan.HeavyMud, plan.Cement), IfLost: oneOf(d, plan.Retry, plan.GiveUp)}
	if d.oneIn(3) {
		h.StartOffset = unit.Length(9 * d.Float64())
	}
	if d.oneIn(3) {
		h.DrillAheadTo = 1 + unit.Depth(d.Float64())*(bottom-2)
	}
	if h.DrillAheadTo == 0 || !d.oneIn(6) {
		h.Stages = d.stages(h.DrillAheadTo, bottom)
	}
	if d.oneIn(3) {
		h.Temperature = []int{1, 2, 4, 7}
	}
	if d.oneIn(4) {
		h.Penetrometer = []unit.Depth{bottom / 10, bottom / 2, 2 * bottom}
	}
	h.Logging = oneOf(d, nil, nil, []int{0}, []int{0, 1})
	return h
}

// stages throw the tools of a hole from a depth down; some have nothing left to core.
func (d dice) stages(from, bottom unit.Depth) (stages []plan.Stage) {
	with := func(tools ...coring.Tool) []plan.Stage {
		for _, tool := range tools {
			stage := plan.Stage{With: tool, To: min(bottom, from+0.2+unit.Depth(d.Float64())*(bottom-from))}
			if tool == coring.APC && d.oneIn(2) {
				stage.To, stage.ToRefusal = bottom, true
			} else if !d.oneIn(8) {
				from = stage.To
			}
			stages = append(stages, stage)
		}
		return stages
	}
	switch d.IntN(6) {
	case 0, 1:
		return with(coring.RCB, coring.RCB)
	case 2:
		return with(coring.XCB)
	case 3:
		return with(coring.APC)
	case 4:
		return with(coring.APC, coring.XCB)
	default:
		return with(coring.APC, coring.HLAPC, coring.XCB)
	}
}
