package main

import (
	"context"
	"errors"
	"io"

	"coredays/model/result"
	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/choice"
)

// nowhereToShow gives a search for an order, or a date, that nothing would show.
func (f *files) nowhereToShow() error {
	if f.orders && f.report == "" {
		return errors.New("--orders shows the best order of the sites on the page of --report; give that too, or call coredays compare --orders")
	}
	return f.dated.Without(f.report)
}

// bestOrder looks for the best order of the sites as compare does, where that was asked for.
func (s *simulation) bestOrder(ctx context.Context, v *voyage.Voyage, args []string, run sim.Run, known *result.Summary, stderr io.Writer) *result.Comparison {
	if !s.files.orders {
		return nil
	}
	run.Precision = 0 // of the days needed, in the answer alone
	c := comparison{chosen: s.chosen, gate: s.gate, orders: true}
	defer watched(&run, 0, stderr)()
	found := choice.BestOrder(ctx, v, run)
	c.label(found, v.Plan, args)
	found.Warnings = ofTheFirst(found, known.Warnings)
	return found
}
