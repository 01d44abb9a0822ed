package sim

import (
	"strings"
	"testing"

	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// One in a hundred expeditions that comes home late is nothing to warn of, two are; where most are late it is
// the passages that leave too little.
func TestLateExpeditionsAreWarnedOf(t *testing.T) {
	r := replicated(t, simtest.OneSite(simtest.PistonHole("A", 20)), 100, 1)
	for late, want := range map[int]string{0: "", 1: "", 2: "In 2 % of the expeditions port is reached after the sea days: the way home took longer",
		50: "In 50 % of the expeditions port is reached after the sea days: the way home took longer",
		51: "In 51 % of the expeditions port is reached after the sea days: they are too few for the passages"} {
		for n := range r.Done {
			left := 1.0
			if n < late {
				left = -1
			}
			r.Constrained[n*r.Layout.Width+statistics.ColInHand] = left
		}
		all := strings.Join(r.Summary().Warnings, " ")
		if told := strings.Contains(all, "port is reached after"); told != (want != "") || !strings.Contains(all, want) {
			t.Errorf("%d of 100 late: %q", late, all)
		}
	}
}
