package scenario

import (
	"slices"

	"coredays/model/plan"
	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/scenario/document"
	"coredays/scenario/entry"
)

// task reads work that is no hole: its steps, or the only one.
func (r siteReader) task(path string, f itemFile) *plan.Task {
	r.strangers(path, f.holeKeys(), "nothing here: this belongs to a hole, and this is a task")
	if f.Steps == nil {
		only := stepFile{Takes: f.Takes, SeaLimit: f.SeaLimit, Interruptible: f.Interruptible, Breakdown: f.Breakdown, Pipe: f.Pipe}
		return &plan.Task{Steps: []plan.Step{r.step(path, only)}}
	}
	isSteps := func(u use) bool { return u.key == "steps" }
	r.strangers(path, slices.DeleteFunc(f.taskKeys(), isSteps), "nothing here: each of the steps has it")
	task := &plan.Task{}
	at := document.Join(path, "steps")
	for i, s := range entry.Few(r.Reader, at, f.Steps, entry.MostStages) {
		inner := document.At(at, i)
		step := r.step(inner, s)
		step.Name = r.Name(document.Join(inner, "step"), s.Step)
		if slices.ContainsFunc(task.Steps, func(other plan.Step) bool { return other.Name == step.Name && step.Name != "" }) {
			r.Fault(document.Join(inner, "step"), step.Name, "a name that no other step of this task has")
		}
		task.Steps = append(task.Steps, step)
	}
	return task
}

// step reads one step of a task.
func (r siteReader) step(path string, f stepFile) plan.Step {
	step := plan.Step{
		Takes:         r.Quantity(document.Join(path, "takes"), f.Takes, entry.TaskMeasure, spread.Quantity{}),
		SeaLimit:      unit.Length(r.Maybe(document.Join(path, "sea_limit"), f.SeaLimit, entry.HeightMeasure)),
		Interruptible: r.Yes(document.Join(path, "interruptible"), f.Interruptible, true),
		Ruined:        r.Choice(document.Join(path, "breakdown"), f.Breakdown, "pauses", "ruins") == 1,
		Pipe:          plan.Pipe(r.Choice(document.Join(path, "pipe"), f.Pipe, "as it is", "on deck", "at the sea floor")),
	}
	if step.Ruined && step.Interruptible {
		r.Fault(document.Join(path, "breakdown"), f.Breakdown.Value, "pauses, or interruptible: no beside it: what a rough sea does not undo, a repair does not")
	}
	return step
}
