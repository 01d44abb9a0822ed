package plan

import (
	"coredays/model/spread"
	"coredays/model/unit"
)

// Task is work that is no hole: one step, or several in a row. What a step has done stays done.
type Task struct {
	Steps []Step
	Kind  string // tasks of a kind share the random stream of the expedition; "" for a kind of its own
}

// Step is a step of a task.
type Step struct {
	Name          string // "" where the task has only this one
	Takes         spread.Quantity
	SeaLimit      unit.Length // significant wave height, 0 for none
	Interruptible bool        // pauses in a rough sea rather than beginning again
	Ruined        bool        // begins again after a breakdown too; otherwise that is a pause
	Pipe          Pipe
}

// Pipe is where the string has to be for a step.
type Pipe int

// The states.
const (
	PipeAsItIs     Pipe = iota // where the work before left it
	PipeOnDeck                 // all of it is recovered
	PipeAtTheFloor             // an assembly hangs clear of the sea floor
)
