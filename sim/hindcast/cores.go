package hindcast

import (
	"context"

	"coredays/model/chance"
	"coredays/model/voyage"
	"coredays/model/workers"
	"coredays/sim"
)

// Cores sails the first site of each voyage as Sail does and gives the cores, by voyage
// and replication; nil where the context ended the run.
func Cores(ctx context.Context, voyages []*voyage.Voyage, groups []string, run sim.Run) [][][]sim.Core {
	all := make([][][]sim.Core, len(voyages))
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
func coresOf(ctx context.Context, v *voyage.Voyage, seed uint64, replications int) [][]sim.Core {
	visitor := sim.NewVisitor(ctx, v)
	byReplication := make([][]sim.Core, replications)
	for n := range byReplication {
		byReplication[n] = visitor.FirstCores(seed, n)
	}
	return byReplication
}
