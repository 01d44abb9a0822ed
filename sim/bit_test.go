package sim

import (
	"slices"
	"testing"

	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/sim/simtest"
	"coredays/sim/statistics"
)

// At 5 m/h a bit of 50 h is worn out by the core that ends at 256.5 m, the 27th of 9.5 m.
func TestEachRotaryHoleBeginsWithABitThatWears(t *testing.T) {
	p := simtest.OneSite(simtest.RotaryHole("A", 400), simtest.RotaryHole("B", 400))
	p.Sites[0].Layers[0].Lithology.Rate = simtest.Just(5 / simtest.Hours)
	s := sailed(t, p, false)
	for i, log := range s.Items {
		if log.Depth != 256.5 || !log.Incomplete {
			t.Errorf("hole %d ends at %g m, incomplete %v; by hand at 256.5 m of 400", i, log.Depth, log.Incomplete)
		}
	}
	if s.Consumed[statistics.RotaryBits] != 2 {
		t.Errorf("%d bits for two holes", s.Consumed[statistics.RotaryBits])
	}
}

// The storm comes while the worn bit is being pulled, when the funnel has been dropped.
func TestAHoleWithAFunnelGoesOnAfterAStormAtAChangeOfBits(t *testing.T) {
	hole := simtest.RotaryHole("A", 700)
	hole.Hole.Reentry = plan.Funnel
	p := simtest.OneSite(hole)
	p.Sites[0].Layers[0].Lithology.Rate = simtest.Just(5 / simtest.Hours)
	s := inPort(t, p)
	goOnUntil(t, s, func() bool { return s.Item != nil && s.bitWorn() })
	seaAhead(s, 1, 1, 8.5, 8.5, 1)
	did := goHome(t, s)
	if log := s.Items[0]; log.Depth != 700 || log.Holes != 1 || log.Incomplete {
		t.Errorf("%d holes to %g m, incomplete %v", log.Holes, log.Depth, log.Incomplete)
	}
	// Worn at 256.5 and 513 m: three bits, two re-entries.
	if n := times(did, "find the hole again"); n != 2 || s.Consumed[statistics.RotaryBits] != 3 || s.Consumed[statistics.Funnels] != 1 {
		t.Errorf("%d re-entries, %d bits, %d funnels", n, s.Consumed[statistics.RotaryBits], s.Consumed[statistics.Funnels])
	}
}

// The bit is released for logging, then a storm drives the pipe out of the hole.
func TestAReleasedBitIsReplacedBeforeTheNextHole(t *testing.T) {
	for _, lost := range []plan.IfLost{plan.Retry, plan.GiveUp} {
		a := simtest.RotaryHole("A", 500)
		a.Hole.Logging, a.Hole.IfLost = []int{0, 1}, lost
		s := inPort(t, simtest.OneSite(a, simtest.RotaryHole("B", 100)))
		goOnUntil(t, s, func() bool { return s.Hole.Released })
		seaAhead(s, 1, 1, 1, 1, 8.5, 8.5, 1)
		did := goOnUntil(t, s, func() bool { return s.Hole.Lost })
		did = append(did, goOnUntil(t, s, func() bool { return s.Hole.Open && !s.Hole.Lost })...)
		if made := slices.Index(did, "make up the BHA"); made < 0 || made > slices.Index(did, "spud") {
			t.Errorf("if lost %d: did %q", lost, did)
		}
		if s.BHA != coring.RotaryBHA || s.Rotating != 0 || s.Consumed[statistics.RotaryBits] != 2 {
			t.Errorf("if lost %d: %d bits, the one in the string turned for %.1f h", lost, s.Consumed[statistics.RotaryBits], s.Rotating/simtest.Hours)
		}
	}
}
