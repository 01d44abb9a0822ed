package desk

import (
	"bytes"
	"context"
	"io"
	"net/http"

	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/statistics"
)

// Write writes what a simulation comes to as a report or a workbook.
type Write func(ctx context.Context, to io.Writer, v *voyage.Voyage, r *statistics.Results, warnings []string, invented bool) error

// written answers with a file made of the plan on the page.
func (d *Desk) written(what func() Write, kind string) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		q, ok := asked(w, r)
		if !ok {
			return
		}
		now := d.readingOf(q.Text)
		if !now.sails() || what() == nil {
			http.Error(w, "a plan without faults that the check does not stop", http.StatusUnprocessableEntity)
			return
		}
		ctx, done, err := d.turn.take(r.Context(), &q)
		if err != nil {
			http.Error(w, err.Error(), http.StatusConflict)
			return
		}
		defer done()
		var whole bytes.Buffer
		results := sim.Replicate(ctx, now.voyage, sim.Run{Seed: seed, Replications: refined})
		if err := d.fill(ctx, &whole, what(), &now, results); err != nil {
			http.Error(w, err.Error(), http.StatusConflict)
			return
		}
		w.Header().Set("Content-Type", kind)
		_, _ = w.Write(whole.Bytes())
	}
}

func (d *Desk) fill(ctx context.Context, to *bytes.Buffer, write Write, now *reading, results *statistics.Results) error {
	if results.Stopped {
		return context.Cause(ctx)
	}
	return write(ctx, to, now.voyage, results, now.Warnings, d.invented())
}
