package main

import (
	"context"
	"io"
	"os"

	"coredays/model/voyage"
	"coredays/output/progress"
	"coredays/sim"
	"coredays/sim/statistics"
)

// replicate sails a voyage with its progress on standard error where that is a terminal.
func replicate(ctx context.Context, v *voyage.Voyage, run sim.Run, stderr io.Writer) *statistics.Results {
	defer watched(&run, run.Replications, stderr)()
	return sim.Replicate(ctx, v, run)
}

// watched has a run show its progress, out of so many replications or 0 where nobody knows how many
// there will be, on a terminal; and returns what ends the showing.
func watched(run *sim.Run, replications int, stderr io.Writer) func() {
	terminal, ok := stderr.(*os.File)
	if !ok {
		return func() {}
	}
	progress := progress.New(terminal, replications)
	run.Progress = progress.Done
	return progress.Close
}
