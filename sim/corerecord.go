package sim

import (
	"coredays/model/coring"
)

// Core is a core as it reached the deck in a hindcast.
type Core struct {
	Hole             string
	Tool             coring.Tool
	OnDeck           float64 // s after the ship came over the site
	Cored, Recovered float64 // m
}

// coreLog keeps the cores of a replication where somebody asks for them.
type coreLog struct{ cores []Core }

// note keeps a core; nobody asks for it where the log is nil.
func (l *coreLog) note(s *ship, t coring.Tool, cored, recovered float64) {
	if l != nil {
		l.cores = append(l.cores, Core{s.item.Name, t, s.clock, cored, recovered})
	}
}
