package sim

import (
	"testing"

	"coredays/model/plan"
	"coredays/sim/ship"
	"coredays/sim/simtest"
)

// goOn carries an expedition on by one operation, as sails does, and names the operation.
func goOn(s *expedition) string {
	s.enforceLimits()
	s.nextItem()
	r := s.nextStep()
	r.do(s)
	if s.Ended != ship.GoingOn {
		s.MakeSafe()
	}
	return r.name
}

// goOnUntil carries an expedition on until a condition holds and lists what was done.
func goOnUntil(t testing.TB, s *expedition, holds func() bool) (did []string) {
	t.Helper()
	for !holds() {
		if did = append(did, goOn(s)); len(did) > 10_000 {
			t.Fatalf("never so; did last %q", did[len(did)-10:])
		}
	}
	return did
}

// goHome carries an expedition on until she is in the last port.
func goHome(t testing.TB, s *expedition) []string {
	t.Helper()
	return goOnUntil(t, s, func() bool { return s.Home })
}

// inPort is a ship in port, about to begin replication 0 of a plan.
func inPort(t testing.TB, p *plan.Plan) *expedition {
	t.Helper()
	v := simtest.Compiled(t, p)
	s := newExpedition(v)
	s.Crew = EstimateByCrew(v)
	s.begins(1, 0)
	return s
}

// seaAhead gives the sea hour by hour from the hour that begins next, the last for ever.
func seaAhead(s *expedition, heights ...float64) {
	calm := make([]float64, int(s.Clock/simtest.Hours)+1)
	for i := range calm {
		calm[i] = 1
	}
	s.Sea.Forced = append(calm, heights...)
}

// times counts how often something was done.
func times(did []string, what string) (n int) {
	for _, name := range did {
		if name == what {
			n++
		}
	}
	return n
}
