package sim

import (
	"testing"

	"coredays/model/plan"
	"coredays/sim/simtest"
)

// halfDrilled is a ship that drills a hole to 300 m, of which nothing is cored, when a storm comes.
func halfDrilled(t *testing.T, lost plan.IfLost, storm float64) *expedition {
	t.Helper()
	d := simtest.DrilledHole("D", 300)
	d.Hole.IfLost = lost
	s := inPort(t, simtest.OneSite(d))
	goOnUntil(t, s, func() bool { return s.Hole.Open })
	seaAhead(s, 1, 1, 1, storm, storm, 1)
	return s
}

func TestADrilledHoleThatIsLostIsNotComplete(t *testing.T) {
	for _, storm := range []float64{9, 11} { // clear the sea floor at 8 m, recover pipe at 10 m
		s := halfDrilled(t, plan.GiveUp, storm)
		goHome(t, s)
		if log := s.Items[0]; !log.Incomplete || log.Depth < 100 || log.Depth > 200 {
			t.Errorf("%g m of sea: lost at %g m of 300, incomplete %v", storm, log.Depth, log.Incomplete)
		}
		s = halfDrilled(t, plan.Retry, storm)
		goHome(t, s)
		if log := s.Items[0]; log.Incomplete || log.Depth != 300 || log.Holes != 2 {
			t.Errorf("%g m of sea: %d holes to %g m of 300, incomplete %v", storm, log.Holes, log.Depth, log.Incomplete)
		}
	}
}

func TestADrilledHoleThatIsFoundAgainIsDrilledOn(t *testing.T) {
	s := halfDrilled(t, plan.GiveUp, 9)
	s.Hole.Funnel = true
	goHome(t, s)
	if log := s.Items[0]; log.Incomplete || log.Depth != 300 || log.Holes != 1 {
		t.Errorf("%d holes to %g m of 300, incomplete %v", log.Holes, log.Depth, log.Incomplete)
	}
}
