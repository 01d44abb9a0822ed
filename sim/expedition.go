package sim

import (
	"coredays/model/voyage"
	"coredays/sim/ship"
)

// expedition is a ship with what is decided for her: what comes next, what is left out and when she goes home.
// Copying it (see copyFrom) forks the expedition.
type expedition struct {
	ship.Ship
	unconstrained *expedition // goes on without a deadline from where a limit of the expedition first binds
	// everything makes alternates and conditional items part of the programme.
	everything bool
	choice     Choice // made once what is in hand by the log is done
}

// newExpedition readies a ship for replications of a voyage.
func newExpedition(v *voyage.Voyage) *expedition { return &expedition{Ship: *ship.New(v)} }

// begins puts the ship at the start of one replication, in port, ready to sail.
func (s *expedition) begins(seed uint64, replication int) {
	s.everything, s.choice = false, Choice{}
	s.InPortAgain(seed, replication)
}

// copyFrom makes the expedition a copy of another that goes its own way from here.
func (s *expedition) copyFrom(o *expedition) {
	s.everything, s.choice = o.everything, o.choice
	s.CopyState(&o.Ship)
}
