package hindcast

import (
	"context"

	"coredays/model/chance"
	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/ship"
)

// CoresPiece is the cores of some of the visits, as Piece has their results.
type CoresPiece struct {
	First, End int
	Cores      [][]ship.Core
}

// SailCores sails the first site of each voyage as Sail does and gives the cores, by voyage
// and replication; nil where the context ended the run.
func SailCores(ctx context.Context, voyages []*voyage.Voyage, groups []string, run sim.Run) [][][]ship.Core {
	p, err := SailCoresPiece(ctx, voyages, groups, run, 0, len(voyages)*max(1, run.Replications))
	if err != nil {
		return nil
	}
	return JoinCores(len(voyages), p)
}

// SailCoresPiece sails some of the visits for their cores. Where the context ends first, that is an error.
func SailCoresPiece(ctx context.Context, voyages []*voyage.Voyage, groups []string, run sim.Run, first, end int) (*CoresPiece, error) {
	p := &CoresPiece{first, end, make([][]ship.Core, end-first)}
	shared(ctx, run, first, end, func(i, from, to, at int) {
		visitor, seed := sim.NewVisitor(ctx, voyages[i]), chance.SeedOf(run.Seed, groups[i])
		for r := from; r < to; r++ {
			p.Cores[at+r-from] = visitor.FirstCores(seed, r)
		}
	})
	return p, ctx.Err()
}

// JoinCores puts the pieces together, all of them in their order, by voyage and replication.
func JoinCores(voyages int, pieces ...*CoresPiece) [][][]ship.Core {
	var all [][]ship.Core
	for _, p := range pieces {
		all = append(all, p.Cores...)
	}
	return byVoyage(voyages, all)
}
