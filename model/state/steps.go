package state

import (
	"slices"
	"time"

	"coredays/model/activity"
	"coredays/model/riglog"
	"coredays/model/unit"
)

// kept is how many steps are remembered: more than any operation has.
const kept = 40

// idle tells whether nothing is done but waiting and repairing.
func idle(k activity.Kind) bool {
	return k == activity.WaitOnWeather || k == activity.Breakdown
}

// remember keeps a step with the ship before it. What was stopped by the sea or a repair and goes on after it is
// one step; what is repeated, such as two connections, is two.
func (r *reader) remember(k activity.Kind, l *riglog.Line, seconds unit.Duration, begins bool) {
	st := r.st
	if idle(k) {
		if n := len(st.Steps); n > 0 {
			st.Steps[n-1].Idle += seconds
			st.Steps[n-1].To = l.To
		}
		return
	}
	if n := len(st.Steps); n > 0 && st.Steps[n-1].Kind == k && st.Steps[n-1].Idle > 0 && k != activity.Connection {
		x := &st.Steps[n-1]
		if k.Of().Stop == activity.Restart {
			x.Idle, x.Worked = x.Idle+x.Worked, 0
		}
		x.Worked += seconds
		x.To = l.To
		return
	}
	if len(st.Steps) == kept {
		st.Steps = slices.Delete(st.Steps, 0, 1)
	}
	from := l.From
	if n := len(st.Steps); n > 0 && !begins {
		from = st.Steps[n-1].To
	}
	st.Steps = append(st.Steps, Step{Kind: k, From: from, To: from.Add(time.Duration(float64(seconds) * float64(time.Second))), Worked: seconds, Before: st.Now})
}

// nextWork is what is done after the n-th thing of a line, waiting and repairs left out.
func (r *reader) nextWork(i, n int) activity.Kind {
	for ; i < len(r.lines); i, n = i+1, -1 {
		for _, k := range r.lines[i].Doing[min(n+1, len(r.lines[i].Doing)):] {
			if !idle(k) {
				return k
			}
		}
	}
	return activity.Kinds
}
