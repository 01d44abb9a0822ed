package sim

import (
	"testing"

	"coredays/model/activity"
	"coredays/model/plan"
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
