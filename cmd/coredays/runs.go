package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"coredays/model/unit"
	"coredays/sim"
)

// mostReplications is where --precision ends too. A replication takes about 5 kB of memory.
const mostReplications = 1_000_000

// mostWorkers is far more than any machine has processors.
const mostWorkers = 10_000

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
	cmd.Flags().Var((*words)(&r.precision), "precision", "go on until P90 of days needed is known to so much, such as 0.2d")
}

// run turns the flags into what sim wants.
func (r *runs) run() (sim.Run, error) {
	if r.replications < 1 || r.replications > mostReplications {
		return sim.Run{}, fmt.Errorf("--replications %d: give a whole number from 1 to %d", r.replications, mostReplications)
	}
	if r.workers < 0 || r.workers > mostWorkers {
		return sim.Run{}, fmt.Errorf("--workers %d: give a whole number from 0 to %d", r.workers, mostWorkers)
	}
	run := sim.Run{Seed: r.seed, Replications: r.replications, Workers: r.workers}
	if r.precision != "" {
		p, err := unit.OfDuration.Parse(r.precision)
		if err != nil {
			return run, fmt.Errorf("--precision %q %v: give %s", r.precision, err, unit.OfDuration.Wanted())
		}
		if p <= 0 {
			return run, fmt.Errorf("--precision %q: give a time above 0, such as 0.2d", r.precision)
		}
		run.Precision = unit.Duration(p)
	}
	return run, nil
}
