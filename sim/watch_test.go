package sim

import (
	"testing"

	"coredays/model/voyage"
)

// watch is a ship under the eyes of the test.
type watch struct {
	t    *testing.T
	name string
	*expedition
	slow map[voyage.Place]bool // sites that took longer to reach than the crew estimated
}

func (w *watch) wrong(format string, values ...any) {
	w.t.Helper()
	w.t.Errorf(w.name+": "+format, values...)
}

// mostIdle is how many operations may follow each other without any time passing, more than a hole
// has reasons to do nothing.
const mostIdle = 12

// sails is the loop of a ship, with a look at clock and bit after each operation.
func (w *watch) sails() {
	idle := 0
	for !w.Home && w.Clock <= w.Longest() && !w.t.Failed() {
		before, late := *w.expedition, w.tooLate()
		did := goOn(w.expedition)
		w.looks(did, &before)
		if idle++; w.Clock > before.Clock {
			idle = 0
		}
		if idle > mostIdle {
			w.wrong("goes round in circles: to %s", did)
		}
		if late && work[did] {
			w.wrong("with no time left but to leave, the ship went on to %s", did)
		}
	}
	w.expedition.sails() // closes the books
}

// looks holds the ship after an operation against what she was before.
func (w *watch) looks(did string, before *expedition) {
	for k := range w.Spent {
		if w.Spent[k] < before.Spent[k]-1e-6 {
			w.wrong("to %s took back %g s", did, before.Spent[k]-w.Spent[k])
		}
	}
	if !(w.Bit >= 0) || w.Here != nil && w.Bit > w.Here.Floor+w.Hole.Depth+1e-3 {
		w.wrong("the bit is at %g m after the ship did: %s", w.Bit, did)
	}
	if w.At != before.At && w.Clock-before.Clock > before.passageTime(w.At) {
		w.slow[w.At] = true
	}
}

// work is what is not done any more when it is time to leave.
var work = map[string]bool{"take station": true, "do the task": true, "make up the BHA": true, "run pipe to the sea floor": true, "spud": true, "find the hole again": true, "drill down": true,
	"change the bit": true, "run to the bottom": true, "run the penetrometer": true, "take a core": true, "log": true}

// tooLate reports whether the crew can't be home in time by its own estimate even if it leaves at once.
func (w *watch) tooLate() bool {
	return w.Constrained && w.Here != nil && w.Item != nil && w.Clock+w.LeaveTime()+w.HomeTime(w.At) > w.Voyage.Deadline
}
