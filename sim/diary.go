package sim

import (
	"context"
	"slices"

	"coredays/model/result"
	"coredays/model/unit"
	"coredays/model/voyage"
	"coredays/model/workers"
	"coredays/sim/ship"
)

// Diary sails one replication again and writes down all of it: bound by the rules of the
// expedition, or the whole programme without a deadline. It is nil where the context ends before the expedition.
func Diary(ctx context.Context, v *voyage.Voyage, seed uint64, replication int, bound bool) *result.Diary {
	s := newExpedition(v).until(ctx)
	s.Crew = EstimateByCrew(v)
	s.Diary = &ship.Recorder{Sails: v.Plan.Sails}
	s.begins(seed, replication)
	s.Constrained = bound
	if !workers.UnlessDropped(s.sails) {
		return nil
	}
	return &result.Diary{Title: v.Plan.Title, Seed: seed, Replication: replication, Bound: bound, Days: unit.Duration(s.Clock), Entries: s.Diary.Entries}
}

// DiaryFrom writes down one replication from a start on.
func DiaryFrom(ctx context.Context, x *Start, seed uint64, replication int) *result.Diary {
	s := newExpedition(x.v).until(ctx)
	s.Crew = EstimateByCrew(x.v)
	s.resumes(x, Choice{}, seed, replication, s.fitting(x, seed, replication))
	s.Diary = &ship.Recorder{Sails: x.v.Plan.Sails}
	s.Constrained = true
	if !workers.UnlessDropped(s.goesOn) {
		return nil
	}
	return &result.Diary{Title: x.v.Plan.Title, Seed: seed, Replication: replication, Bound: true, Entries: slices.Clip(s.Diary.Entries)}
}
