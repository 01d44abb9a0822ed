package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/spread"
	"coredays/sim/ship"
	"coredays/sim/simtest"
)

// A storm beyond the reach of the forecast has the pipe recovered 96 to 97 h into a task of 100 h. Its work is kept where
// the task may be interrupted, and lost where it may not.
func TestAnInterruptibleTaskKeepsItsWork(t *testing.T) {
	for _, interruptible := range []bool{true, false} {
		task := plan.Item{Name: "T", Rank: 1, Task: &plan.Task{Steps: []plan.Step{{Takes: simtest.Just(100 * simtest.Hours), SeaLimit: 3, Interruptible: interruptible}}}}
		s := inPort(t, simtest.OneSite(simtest.PistonHole("A", 20), task))
		goOnUntil(t, s, func() bool { return s.Items[0].State == ship.Done })
		seaAhead(s, append(repeated(1, 96), 11, 11, 1)...)
		goHome(t, s)
		worked := s.Spent[activity.Task] + s.Spent[activity.WholeTask]
		if interruptible && !simtest.Near(worked, 100*simtest.Hours) || !interruptible && (worked < 196*simtest.Hours || worked > 197*simtest.Hours) {
			t.Errorf("interruptible %v: %.2f h of work", interruptible, worked/simtest.Hours)
		}
	}
}

func TestTasksOfAKindShareTheLuckOfTheExpedition(t *testing.T) {
	takes := spread.Quantity{Shape: spread.Table{P: []float64{0.01, 0.99}, Value: []float64{1 * simtest.Hours, 99 * simtest.Hours}}, Shares: spread.All(spread.Expedition)}
	task := func(name, kind string) plan.Item {
		return plan.Item{Name: name, Rank: 1, Task: &plan.Task{Steps: []plan.Step{{Takes: takes}}, Kind: kind}}
	}
	p := simtest.Expedition(simtest.Site("S", geo.Position{Longitude: 1}, 1500, task("a", "survey"), task("b", "survey"), task("c", ""), task("d", "")))
	s := sailed(t, p, false)
	took := func(i int) float64 { return s.Items[i].Took }
	arrive, leave := 30*simtest.Minutes, 30*simtest.Minutes // counted to the first and the last
	if a, b := took(0)-arrive, took(1); !simtest.Near(a, b) {
		t.Errorf("two tasks of a kind take %.3f and %.3f h", a/simtest.Hours, b/simtest.Hours)
	}
	if c, d := took(2), took(3)-leave; simtest.Near(c, d) || simtest.Near(took(1), c) {
		t.Errorf("tasks of kinds of their own take %.3f and %.3f h, those of a kind %.3f h", c/simtest.Hours, d/simtest.Hours, took(1)/simtest.Hours)
	}
}
