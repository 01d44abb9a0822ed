package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/plan"
	"coredays/sim/ship"
	"coredays/sim/simtest"
)

// stepped is a task of steps of so many hours each.
func stepped(steps ...plan.Step) *plan.Plan { return aTask(plan.Task{Steps: steps}) }

func hours(h float64) plan.Step { return plan.Step{Takes: simtest.Just(h * simtest.Hours)} }

// Steps of 4, 5 and 6 h take the 15 h of one task, and what the pipe for the second takes besides: 3 h for the
// assembly, 1,470 m in 49 stands at 20 an hour down and up again, an hour for laying it down: 8.9 h.
func TestStepsTakeTheirSumAndThePipeTheyNeed(t *testing.T) {
	one := sailed(t, stepped(hours(15)), false).Clock
	if got := sailed(t, stepped(hours(4), hours(5), hours(6)), false).Clock; !simtest.Near(got, one) {
		t.Errorf("three steps take %.3f h, one of their sum %.3f h", got/simtest.Hours, one/simtest.Hours)
	}
	withPipe := hours(5)
	withPipe.Pipe = plan.PipeAtTheFloor
	last := hours(6)
	last.Pipe = plan.PipeOnDeck
	for _, p := range []*plan.Plan{stepped(hours(4), withPipe, hours(6)), stepped(hours(4), withPipe, last)} {
		s := sailed(t, p, false)
		if got := s.Clock - one; !simtest.Near(got, (3+2*1470.0/30/20+1)*simtest.Hours) {
			t.Errorf("pipe for a step takes %.3f h, by hand 8.9 h", got/simtest.Hours)
		}
	}
}

// Every 7 h on station the rig is repaired for 1 h in the mean. Of three steps of 4 h that pause, 12 h of work stay 12.
// In those that a breakdown ruins, no more is lost than each had done, and it is done again.
func TestABreakdownPausesAStepUnlessItRuinsIt(t *testing.T) {
	work := func(ruined bool) (most float64) {
		for n := range 40 {
			step := hours(4)
			step.Ruined = ruined
			s := newExpedition(simtest.Compiled(t, breaking(stepped(step, step, step), 7, 1)))
			s.begins(3, n)
			s.sails()
			most = max(most, s.Spent[activity.WholeTask]+s.Spent[activity.FrailTask])
		}
		return most / simtest.Hours
	}
	if got := work(false); !simtest.Near(got, 12) {
		t.Errorf("%.3f h of work where a breakdown is a pause", got)
	}
	if got := work(true); got < 13 {
		t.Errorf("at most %.3f h of work where a breakdown ruins a step", got)
	}
}

// A storm has pipe recovered 96 to 97 h after the task begins, further ahead than a forecast reaches. Of one step
// of 100 h all is lost; where its first 10 h are a step of their own, these are not done again. With a step of 40 h
// the forecast tells the storm before the second, which is not begun, and nothing is lost.
func TestAStormUndoesNoMoreThanTheStepInHand(t *testing.T) {
	worked := func(steps ...float64) float64 {
		task := &plan.Task{}
		for _, h := range steps {
			step := hours(h)
			step.SeaLimit = 3
			task.Steps = append(task.Steps, step)
		}
		s := inPort(t, simtest.OneSite(simtest.PistonHole("A", 20), plan.Item{Name: "T", Rank: 1, Task: task}))
		goOnUntil(t, s, func() bool { return s.Items[0].State == ship.Done })
		seaAhead(s, append(repeated(1, 96), 11, 11, 1)...)
		goHome(t, s)
		return s.Spent[activity.WholeTask] / simtest.Hours
	}
	if got := worked(100); got < 196 || got > 197 {
		t.Errorf("one step: %.2f h of work, by hand 100 and the 96 to 97 h lost", got)
	}
	if got := worked(10, 90); got < 186 || got > 187 {
		t.Errorf("two steps: %.2f h of work, by hand 100 and the 86 to 87 h lost", got)
	}
	if got := worked(40, 60); !simtest.Near(got, 100) {
		t.Errorf("told by the forecast: %.2f h of work, by hand 100 h", got)
	}
}
