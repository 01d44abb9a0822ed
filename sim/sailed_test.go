package sim

import (
	"testing"

	"coredays/model/plan"
)

// sailed sails one replication of a plan.
func sailed(t testing.TB, p *plan.Plan, bound bool) *ship {
	t.Helper()
	v := compiled(t, p)
	s := newShip(v)
	s.guess = reckon(v)
	s.begins(1, 0)
	s.bound = bound
	s.sails()
	return s
}
