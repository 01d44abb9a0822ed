package sim

import (
	"testing"

	"coredays/model/plan"
	"coredays/sim/simtest"
)

// sailed sails one replication of a plan.
func sailed(t testing.TB, p *plan.Plan, bound bool) *ship {
	t.Helper()
	v := simtest.Compiled(t, p)
	s := newShip(v)
	s.crew = EstimateByCrew(v)
	s.begins(1, 0)
	s.constrained = bound
	s.sails()
	return s
}
