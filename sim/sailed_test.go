package sim

import (
	"testing"

	"coredays/model/plan"
	"coredays/sim/simtest"
)

// sailed sails one replication of a plan.
func sailed(t testing.TB, p *plan.Plan, bound bool) *expedition {
	t.Helper()
	v := simtest.Compiled(t, p)
	s := newExpedition(v)
	s.Crew = EstimateByCrew(v)
	s.begins(1, 0)
	s.Constrained = bound
	s.sails()
	return s
}
