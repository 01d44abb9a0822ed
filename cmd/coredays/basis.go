package main

import (
	"context"
	"io"

	"github.com/spf13/cobra"

	"coredays/model/basis"
	"coredays/model/voyage"
	"coredays/output"
	"coredays/sim"
)

// basisCall is a call of basis.
type basisCall struct {
	chosen
	replications int
	seed         uint64
	answer
}

func newBasis() *cobra.Command {
	var b basisCall
	cmd := &cobra.Command{
		Use:   "basis [SCENARIO]",
		Short: "Every number used, its spread, and where it came from",
		Long: `Basis lists the numbers that a plan rests on: value, spread and the level at which it lives, unit, and
where it comes from: file and line of the scenario, the ship file, or a default with its source. With
--simulate they are sorted by how much each matters to the days needed.`,
		Example: `  coredays basis
  coredays basis plan.yaml --simulate 500
  coredays basis plan.yaml --json basis.json`,
		Args: oneScenario,
		RunE: func(cmd *cobra.Command, args []string) error {
			return b.execute(cmd.Context(), args, cmd.OutOrStdout(), cmd.ErrOrStderr())
		},
	}
	b.chosen.addFlags(cmd)
	b.answer.addFlags(cmd)
	cmd.Flags().IntVar(&b.replications, "simulate", 0, "simulate so many expeditions and sort by what matters to the days needed")
	cmd.Flags().Uint64Var(&b.seed, "seed", 1, "seed of all chance of that simulation")
	return cmd
}

// execute lists the numbers.
func (b *basisCall) execute(ctx context.Context, args []string, stdout, stderr io.Writer) error {
	if err := simulateBound.holds(b.replications); err != nil {
		return err
	}
	v, _, err := b.load(args)
	if err != nil {
		return err
	}
	entries, done := basis.Of(v), 0
	if b.replications > 0 {
		results := replicate(ctx, v, sim.Run{Seed: b.seed, Replications: b.replications}, stderr)
		if results.Stopped {
			return errInterrupted
		}
		basis.Weigh(entries, results.Sensitivity())
		done = b.replications
	}
	return b.report(v, entries, done, stdout)
}

// report prints the list or writes it as JSON.
func (b *basisCall) report(v *voyage.Voyage, entries []basis.Entry, replications int, stdout io.Writer) error {
	return b.give(stdout,
		func(w io.Writer) error { return output.Basis(w, v.Plan, entries, replications) },
		func(w io.Writer) error { return output.BasisJSON(w, v.Plan, entries, replications) })
}
