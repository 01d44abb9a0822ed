package sim

import (
	"context"

	"coredays/model/chance"
	"coredays/model/coring"
	"coredays/model/voyage"
	"coredays/model/workers"
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

// HindcastCores sails the first site of each voyage as Hindcast does and gives the cores, by voyage
// and replication; nil where the context ended the run.
func HindcastCores(ctx context.Context, voyages []*voyage.Voyage, groups []string, run Run) [][][]Core {
	all := make([][][]Core, len(voyages))
	workers.Share(ctx, run.Workers, 0, len(voyages), func() func(int) {
		return func(n int) {
			all[n] = coresOf(ctx, voyages[n], chance.SeedOf(run.Seed, groups[n]), max(1, run.Replications))
		}
	})
	if ctx.Err() != nil {
		return nil
	}
	return all
}

// coresOf are the cores of the replications of one visit.
func coresOf(ctx context.Context, v *voyage.Voyage, seed uint64, replications int) [][]Core {
	s := newShip(v).until(ctx)
	byReplication := make([][]Core, replications)
	for n := range byReplication {
		s.begins(seed, n)
		s.cores = &coreLog{}
		s.visits()
		byReplication[n] = s.cores.cores
	}
	return byReplication
}
