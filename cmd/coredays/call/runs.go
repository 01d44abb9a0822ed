package call

import (
	"cmp"

	"github.com/spf13/cobra"

	"coredays/sim"
)

// Runs is how often to sail.
type Runs struct {
	Replications int
	Precision    string
	Seed         uint64
	Workers      int
}

// AddFlags adds how often, by what seed and by how many workers.
func (r *Runs) AddFlags(cmd *cobra.Command) {
	cmd.Flags().IntVar(&r.Replications, "replications", 2000, "how many expeditions to simulate")
	cmd.Flags().Uint64Var(&r.Seed, "seed", 1, "seed of all chance: the same seed gives the same answer")
	cmd.Flags().IntVar(&r.Workers, "workers", 0, "how many to sail at a time; 0 for one a processor; the answer is the same")
	cmd.Flags().Var((*FreeText)(&r.Precision), "precision", "go on until P90 of days needed is known to so much, such as 0.2d")
}

// Run turns the flags into what sim wants.
func (r *Runs) Run() (sim.Run, error) {
	if err := cmp.Or(replicationsBound.Holds(r.Replications), workersBound.Holds(r.Workers)); err != nil {
		return sim.Run{}, err
	}
	run := sim.Run{Seed: r.Seed, Replications: r.Replications, Workers: r.Workers}
	if r.Precision != "" {
		p, err := precise(r.Precision)
		if err != nil {
			return run, err
		}
		run.Precision = p
	}
	return run, nil
}
