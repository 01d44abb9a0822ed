package parts

import (
	"cmp"
	"context"

	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/hindcast"
	"coredays/sim/share"
	"coredays/sim/ship"
)

// Sites are sites on record that a hindcast sails: the voyages, the leg of each, and how much work each is, such as
// its cores.
type Sites struct {
	Voyages []*voyage.Voyage
	Legs    []string
	Work    []int
}

// SailHindcast sails a share of a hindcast.
func SailHindcast(ctx context.Context, s Sites, run sim.Run, which share.Which, put func(any) error) error {
	first, end := which.RangeOf(s.Work, run.Replications)
	piece, err := hindcast.SailPiece(ctx, s.Voyages, s.Legs, run, first, end)
	if err != nil {
		return err
	}
	return put(piece)
}

// JoinHindcast puts the shares of a hindcast together.
func JoinHindcast(ctx context.Context, s Sites, run sim.Run, all share.All) (*hindcast.Visits, error) {
	var pieces []*hindcast.Piece
	for _, share := range all {
		p := &hindcast.Piece{}
		if err := share.Take(p); err != nil {
			return nil, err
		}
		first, end := share.Head.Which.RangeOf(s.Work, run.Replications)
		if p.First != first || p.End != end || !hindcast.IsOf(ctx, p, s.Voyages, s.Legs, run) {
			return nil, cmp.Or(ctx.Err(), ofAnother(share))
		}
		pieces = append(pieces, p)
	}
	return hindcast.Join(len(s.Voyages), pieces...), nil
}

// SailCores sails a share of a hindcast for its cores.
func SailCores(ctx context.Context, s Sites, run sim.Run, which share.Which, put func(any) error) error {
	first, end := which.RangeOf(s.Work, run.Replications)
	piece, err := hindcast.SailCoresPiece(ctx, s.Voyages, s.Legs, run, first, end)
	if err != nil {
		return err
	}
	return put(piece)
}

// JoinCores puts the shares of the cores of a hindcast together, by voyage and replication.
func JoinCores(s Sites, run sim.Run, all share.All) ([][][]ship.Core, error) {
	var pieces []*hindcast.CoresPiece
	for _, share := range all {
		p := &hindcast.CoresPiece{}
		if err := share.Take(p); err != nil {
			return nil, err
		}
		if first, end := share.Head.Which.RangeOf(s.Work, run.Replications); p.First != first || p.End != end || len(p.Cores) != end-first {
			return nil, ofAnother(share)
		}
		pieces = append(pieces, p)
	}
	return hindcast.JoinCores(len(s.Voyages), pieces...), nil
}
