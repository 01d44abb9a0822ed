package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/geo"
	"coredays/model/plan"
	"coredays/model/spread"
)

// A storm has the pipe recovered 16 to 17 h into a task of 20 h. Its work is kept where the task may be
// interrupted, and lost where it may not.
func TestAnInterruptibleTaskKeepsItsWork(t *testing.T) {
	for _, interruptible := range []bool{true, false} {
		task := plan.Item{Name: "T", Rank: 1, Task: &plan.Task{Takes: just(20 * hours), SeaLimit: 3, Interruptible: interruptible}}
		s := inPort(t, oneSite(pistonHole("A", 20), task))
		goOnUntil(t, s, func() bool { return s.items[0].state == done })
		seaAhead(s, append(repeated(1, 16), 11, 11, 1)...)
		goHome(t, s)
		worked := s.spent[activity.Task] + s.spent[activity.WholeTask]
		if interruptible && !near(worked, 20*hours) || !interruptible && (worked < 36*hours || worked > 37*hours) {
			t.Errorf("interruptible %v: %.2f h of work", interruptible, worked/hours)
		}
	}
}

func TestTasksOfAKindShareTheLuckOfTheExpedition(t *testing.T) {
	takes := spread.Quantity{Shape: spread.Table{P: []float64{0.01, 0.99}, Value: []float64{1 * hours, 99 * hours}}, Shares: spread.All(spread.Expedition)}
	task := func(name, kind string) plan.Item {
		return plan.Item{Name: name, Rank: 1, Task: &plan.Task{Takes: takes, Kind: kind}}
	}
	p := expedition(site("S", geo.Position{Longitude: 1}, 1500, task("a", "survey"), task("b", "survey"), task("c", ""), task("d", "")))
	s := sailed(t, p, false)
	took := func(i int) float64 { return s.items[i].took }
	arrive, leave := 30*minutes, 30*minutes // counted to the first and the last
	if a, b := took(0)-arrive, took(1); !near(a, b) {
		t.Errorf("two tasks of a kind take %.3f and %.3f h", a/hours, b/hours)
	}
	if c, d := took(2), took(3)-leave; near(c, d) || near(took(1), c) {
		t.Errorf("tasks of kinds of their own take %.3f and %.3f h, those of a kind %.3f h", c/hours, d/hours, took(1)/hours)
	}
}
