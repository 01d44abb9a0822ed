package parts

import (
	"context"

	"coredays/model/result"
	"coredays/model/voyage"
	"coredays/sim"
	"coredays/sim/choice"
	"coredays/sim/share"
	"coredays/sim/statistics"
)

// SailTrial sails a share of a comparison: of each alternative the same replications, so that the shares are equal
// work however unlike the alternatives are.
func SailTrial(ctx context.Context, t *choice.Trial, run sim.Run, which share.Which, put func(any) error) error {
	progress := run.Progress
	first, end := which.Range(run.Replications)
	for i, v := range t.Voyages() {
		if progress != nil {
			run.Progress = func(done int) { progress(i*(end-first) + done) }
		}
		if err := SailRun(ctx, v, run, which, put); err != nil {
			return err
		}
	}
	return nil
}

// JoinTrial puts the shares of a comparison together, one alternative after the other.
func JoinTrial(ctx context.Context, t *choice.Trial, run sim.Run, all share.All) (*result.Comparison, error) {
	return t.Joined(run, func(v *voyage.Voyage) (*statistics.Results, error) { return JoinRun(ctx, v, run, all) })
}
