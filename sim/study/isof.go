package study

import (
	"context"
	"math"
	"slices"

	"coredays/sim"
)

// IsOf reports whether a piece is of these plans, by sailing its first replication again; the error is of its plan, or
// of the context.
func (p *Piece) IsOf(ctx context.Context, plans []Plan, run sim.Run) (bool, error) {
	if p.Plan < 0 || p.Plan >= len(plans) || p.First < 0 || len(p.Rows) < figures {
		return false, nil
	}
	again := &Piece{Plan: p.Plan, First: p.First, End: p.First + 1}
	run.Workers = 1
	if err := again.sail(ctx, plans, run); err != nil {
		return false, err
	}
	return slices.EqualFunc(again.Rows, p.Rows[:figures], func(a, b float64) bool { return math.Float64bits(a) == math.Float64bits(b) }), nil
}
