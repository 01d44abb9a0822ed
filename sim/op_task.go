package sim

import (
	"coredays/model/activity"
	"coredays/model/plan"
	"coredays/sim/ship"
)

// The pipe is brought to where the step has to have it, also after a storm in which it was recovered.

func (s *expedition) taskWantsNoPipe() bool {
	return s.TaskStep().Pipe == plan.PipeOnDeck && s.Bit > 0
}

func (s *expedition) taskWantsBHA() bool {
	return s.TaskStep().Pipe == plan.PipeAtTheFloor && s.noBHA()
}

func (s *expedition) taskWantsPipe() bool {
	return s.TaskStep().Pipe == plan.PipeAtTheFloor && s.bitHigh()
}

// doTask does the next step of work that is no hole. One that a rough sea would undo waits for a forecast, as
// far as that reaches.
func (s *expedition) doTask() {
	s.Place.Hole = s.Item.Key
	step := s.TaskStep()
	if s.Task.Left == 0 {
		s.Task.Left = s.Draw(s.Item.Takes[s.Task.Step])
	}
	if !step.Interruptible {
		s.awaitForecast(s.WaveLimitOf(activity.FreeTask), s.Task.Left)
	}
	worked := s.Do(kindOf(step), s.Task.Left)
	if step.Interruptible {
		s.Task.Left = max(0, s.Task.Left-worked) // what was done before pipe was recovered stays done
	}
	if s.Ended != ship.GoingOn {
		return
	}
	if s.Diary != nil {
		s.Diary.Remark(step.Name)
	}
	if step.Pipe == plan.PipeAtTheFloor {
		s.Sites[s.SiteNumber()].Surveyed = true
	}
	s.Task = ship.Task{Step: s.Task.Step + 1}
	if s.Task.Step == len(s.Item.Task.Steps) {
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
