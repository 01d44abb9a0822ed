package sim

import (
	"testing"

	"coredays/model/plan"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/sim/statistics"
)

// The interval of P90 of a thousand goes from rank 881 to 919, so that P90 of 1 to 1,000 s is known to 19 s.
func TestARunGoesOnUntilP90IsKnownSoWell(t *testing.T) {
	for _, c := range []struct {
		n         int
		precision unit.Duration
		want      int
	}{{1000, 19, 1000}, {1000, 18.99, 2000}, {1000, 0, 1000}, {1, 1, 2}, {600_000, 1e-6, mostReplications}, {mostReplications, 1e-6, mostReplications}} {
		if got := (Run{Precision: c.precision}).enough(taken(c.n)); got != c.want {
			t.Errorf("%d replications at %g s: goes on to %d, want %d", c.n, float64(c.precision), got, c.want)
		}
	}
}

// taken is results of which only the days needed are known: 1 s, 2 s and so on.
func taken(n int) *statistics.Results {
	r := statistics.NewResults(&voyage.Voyage{Plan: &plan.Plan{}}, 0, 0)
	r.Grow(n)
	for i := range n {
		r.Row(r.Unconstrained, i)[statistics.ColDays] = float64(i + 1)
		r.Done[i] = true
	}
	return r
}
