package sim

import (
	"coredays/model/activity"
	"coredays/model/plan"
)

// task is how far the task in hand is. The zero value is one not yet begun.
type task struct {
	step int
	left float64 // s of work left of the step; 0 where it is not begun
}

// taskStep is the step of the task in hand.
func (s *ship) taskStep() *plan.Step { return &s.item.Task.Steps[s.task.step] }

// The pipe is brought to where the step has to have it, also after a storm in which it was recovered.

func (s *ship) taskWantsNoPipe() bool {
	return s.taskInHand() && s.taskStep().Pipe == plan.PipeOnDeck && s.bit > 0
}

func (s *ship) taskWantsBHA() bool {
	return s.taskInHand() && s.taskStep().Pipe == plan.PipeAtTheFloor && s.noBHA()
}

func (s *ship) taskWantsPipe() bool {
	return s.taskInHand() && s.taskStep().Pipe == plan.PipeAtTheFloor && s.bitHigh()
}

// doTask does the next step of work that is no hole. One that a rough sea would undo waits for a forecast, as
// far as that reaches.
func (s *ship) doTask() {
	s.Place.Hole = s.item.Key
	step := s.taskStep()
	if s.task.left == 0 {
		s.task.left = s.Draw(s.item.Takes[s.task.step])
	}
	if !step.Interruptible {
		s.awaitForecast(s.waveLimitOf(activity.FreeTask), s.task.left)
	}
	worked := s.do(kindOf(step), s.task.left)
	if step.Interruptible {
		s.task.left = max(0, s.task.left-worked) // what was done before pipe was recovered stays done
	}
	if s.ended != goingOn {
		return
	}
	if s.diary != nil {
		s.diary.remark(step.Name)
	}
	if step.Pipe == plan.PipeAtTheFloor {
		s.sites[s.siteNumber()].surveyed = true
	}
	s.task = task{step: s.task.step + 1}
	if s.task.step == len(s.item.Task.Steps) {
		s.finishItem(false)
	}
}

// kindOf is what stopping a step means.
func kindOf(step *plan.Step) activity.Kind {
	switch {
	case step.Interruptible:
		return activity.Task
	case step.Ruined:
		return activity.FrailTask
	}
	return activity.WholeTask
}
