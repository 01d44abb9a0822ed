package parts

import (
	"cmp"
	"context"
	"crypto/sha256"
	"encoding/hex"
	"fmt"

	"coredays/model/result"
	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/choice"
	"coredays/sim/share"
)

// RoundOf is a round of a search in words, with a digest of how the search stands: shares with the same are of one
// round.
func RoundOf(s *choice.Search) string {
	state := s.State()
	sum := sha256.Sum256(fmt.Appendf(nil, "%v", state))
	return fmt.Sprintf("round %d %s", state.Round, hex.EncodeToString(sum[:8]))
}

// SailRound sails a share of the round that a search has come to.
func SailRound(ctx context.Context, s *choice.Search, run sim.Run, which share.Which, put func(any) error) error {
	if err := put(s.State()); err != nil {
		return err
	}
	if s.Last() {
		return SailTrial(ctx, s.Trial(), run, which, put)
	}
	first, end := which.Range(s.Units())
	piece, err := s.Sail(ctx, first, end)
	if err != nil {
		return err
	}
	return put(piece)
}

// JoinRound puts the shares of a round of a search together: the search stands then at the next round, or where that
// was the last its answer is returned.
func JoinRound(ctx context.Context, v *voyage.Voyage, run sim.Run, all share.All) (*choice.Search, *result.Comparison, error) {
	s := choice.NewSearch(v, run)
	for _, share := range all {
		var state choice.SearchState
		if err := share.Take(&state); err != nil {
			return nil, nil, err
		}
		s.Resume(state) // one as the other, as the heads of the shares say
	}
	if s.Last() {
		answer, err := JoinTrial(ctx, s.Trial(), run, all)
		return s, answer, err
	}
	pieces, err := piecesOf(ctx, s, all)
	if err != nil {
		return nil, nil, err
	}
	s.Take(ctx, pieces...)
	return s, nil, ctx.Err()
}

// piecesOf are the pieces of a round, each held against the plan by sailing its first unit again.
func piecesOf(ctx context.Context, s *choice.Search, all share.All) (pieces []*choice.Piece, err error) {
	for _, share := range all {
		p := &choice.Piece{}
		if err := share.Take(p); err != nil {
			return nil, err
		}
		first, end := share.Head.Which.Range(s.Units())
		if p.First != first || p.End != end || !s.IsOf(ctx, p) {
			return nil, cmp.Or(ctx.Err(), ofAnother(share))
		}
		pieces = append(pieces, p)
	}
	return pieces, nil
}

// ofAnother says that a share is not what it should be, though its head says so.
func ofAnother(o *share.Opened) error {
	return fmt.Errorf("%s is of another plan, or was sailed by another version of the program or on another kind of machine", o.Path)
}
