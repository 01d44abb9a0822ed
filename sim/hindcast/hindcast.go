// Package hindcast sails sites that were really drilled, visit by visit: each begins with the ship over the first hole
// and ends when the bit clears the rig floor after the last, as days on hole are counted on record.
package hindcast

import (
	"context"

	"coredays/model/chance"
	"coredays/model/voyage"
	"coredays/sim"
)

// Visits are the results of a hindcast.
type Visits struct {
	OnSite    [][]float64 // by voyage, by replication: s on site
	Lost      [][]float64 // of these: s waiting on weather and repairing breakdowns
	Recovered [][]float64 // by voyage, by replication: m of core
	Cores     [][]float64 // by voyage, by replication
	Stopped   bool        // the context ended the run; all else is then empty
}

// Sail sails the first site of each voyage again and again. The sites of a group, a leg, share
// what is drawn for an expedition. As with sim.Replicate, the results are the same for any number of
// workers.
func Sail(ctx context.Context, voyages []*voyage.Voyage, groups []string, run sim.Run) *Visits {
	p, err := SailPiece(ctx, voyages, groups, run, 0, len(voyages)*max(1, run.Replications))
	if err != nil {
		return &Visits{Stopped: true}
	}
	return Join(len(voyages), p)
}

// Piece is some of the visits of a hindcast: replications of the voyages, voyage after voyage, from one on to before
// another.
type Piece struct {
	First, End                     int
	OnSite, Lost, Recovered, Cores []float64 // as in Visits
}

// SailPiece sails some of the visits. Where the context ends first, that is an error.
func SailPiece(ctx context.Context, voyages []*voyage.Voyage, groups []string, run sim.Run, first, end int) (*Piece, error) {
	n := end - first
	p := &Piece{first, end, make([]float64, n), make([]float64, n), make([]float64, n), make([]float64, n)}
	shared(ctx, run, first, end, func(i, from, to, at int) {
		visitor, seed := sim.NewVisitor(ctx, voyages[i]), chance.SeedOf(run.Seed, groups[i])
		for r := from; r < to && ctx.Err() == nil; r++ {
			visited := visitor.First(seed, r)
			k := at + r - from
			p.OnSite[k], p.Lost[k], p.Recovered[k], p.Cores[k] = visited.Takes, visited.Lost, visited.Recovered, visited.Cores
		}
	})
	return p, ctx.Err()
}

// Join puts the pieces of a hindcast of so many voyages together, all of them in their order.
func Join(voyages int, pieces ...*Piece) *Visits {
	var all Piece
	for _, p := range pieces {
		all.OnSite, all.Lost = append(all.OnSite, p.OnSite...), append(all.Lost, p.Lost...)
		all.Recovered, all.Cores = append(all.Recovered, p.Recovered...), append(all.Cores, p.Cores...)
	}
	return &Visits{OnSite: byVoyage(voyages, all.OnSite), Lost: byVoyage(voyages, all.Lost), Recovered: byVoyage(voyages, all.Recovered), Cores: byVoyage(voyages, all.Cores)}
}

// byVoyage cuts a column into those of each voyage.
func byVoyage[T any](voyages int, column []T) [][]T {
	rows := make([][]T, voyages)
	for i := range rows {
		rows[i] = column[i*len(column)/voyages : (i+1)*len(column)/voyages : (i+1)*len(column)/voyages]
	}
	return rows
}
