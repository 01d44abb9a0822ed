package main

import (
	"context"
	"io"
	"os"

	"coredays/model/voyage"
	"coredays/output"
	"coredays/sim"
)

// replicate sails a voyage with its progress on standard error where that is a terminal.
func replicate(ctx context.Context, v *voyage.Voyage, run sim.Run, stderr io.Writer) *sim.Results {
	if terminal, ok := stderr.(*os.File); ok {
		progress := output.NewProgress(terminal, run.Replications)
		defer progress.Close()
		run.Progress = progress.Done
	}
	return sim.Replicate(ctx, v, run)
}
