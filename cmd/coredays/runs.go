package main

import (
	"cmp"

	"github.com/spf13/cobra"

	"coredays/cmd/coredays/call"
	"coredays/sim"
)

// runs is how often to sail.
type runs struct {
	replications int
	precision    string
	seed         uint64
	workers      int
}

func (r *runs) addFlags(cmd *cobra.Command) {
	cmd.Flags().IntVar(&r.replications, "replications", 2000, "how many expeditions to simulate")
	cmd.Flags().Uint64Var(&r.seed, "seed", 1, "seed of all chance: the same seed gives the same answer")
	cmd.Flags().IntVar(&r.workers, "workers", 0, "how many to sail at a time; 0 for one a processor; the answer is the same")
	cmd.Flags().Var((*call.FreeText)(&r.precision), "precision", "go on until P90 of days needed is known to so much, such as 0.2d")
}

// run turns the flags into what sim wants.
func (r *runs) run() (sim.Run, error) {
	if err := cmp.Or(replicationsBound.holds(r.replications), workersBound.holds(r.workers)); err != nil {
		return sim.Run{}, err
	}
	run := sim.Run{Seed: r.seed, Replications: r.replications, Workers: r.workers}
	if r.precision != "" {
		p, err := precise(r.precision)
		if err != nil {
			return run, err
		}
		run.Precision = p
	}
	return run, nil
}
