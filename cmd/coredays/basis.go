package main

import (
	"context"
	"io"

	"github.com/spf13/cobra"

	"coredays/cmd/coredays/call"
	"coredays/model/basis"
	"coredays/model/result"
	"coredays/model/voyage"
	"coredays/output/json"
	"coredays/output/text"
	"coredays/sim"
	"coredays/sim/sensitivity"
)

// basisCall is a call of basis.
type basisCall struct {
	chosen
	replications int
	seed         uint64
	call.Answer
}

func newBasis() *cobra.Command {
	var b basisCall
	cmd := &cobra.Command{
		Use:   "basis [SCENARIO]",
		Short: "Every number used, its spread, and where it came from",
		Long: `Basis lists the numbers that a plan rests on: value, spread and the level at which it lives, unit, and
where it comes from: file and line of the scenario, the ship file, or a default with its source. With
--simulate those that matter to the days needed come first: what drives the spread, as simulate tells it,
and the numbers behind it with the part of the spread that each has.`,
		Example: `  coredays basis
  coredays basis plan.yaml --simulate 500
  coredays basis plan.yaml --json basis.json`,
		Args: call.OneScenario,
		RunE: func(cmd *cobra.Command, args []string) error {
			return b.execute(cmd.Context(), args, cmd.OutOrStdout(), cmd.ErrOrStderr())
		},
	}
	b.chosen.addFlags(cmd)
	b.Answer.AddFlags(cmd)
	cmd.Flags().IntVar(&b.replications, "simulate", 0, "simulate so many expeditions and begin with what matters to the days needed")
	cmd.Flags().Uint64Var(&b.seed, "seed", 1, "seed of all chance of that simulation")
	return cmd
}

// execute lists the numbers.
func (b *basisCall) execute(ctx context.Context, args []string, stdout, stderr io.Writer) error {
	if err := call.SimulateBound.Holds(b.replications); err != nil {
		return err
	}
	var v *voyage.Voyage
	err := call.OrInterrupted(ctx, func() (err error) {
		v, _, err = b.load(args)
		return err
	})
	if err != nil {
		return err
	}
	entries := basis.Of(v)
	var simulated *result.Summary
	if b.replications > 0 {
		results := replicate(ctx, v, sim.Run{Seed: b.seed, Replications: b.replications}, stderr)
		influences := sensitivity.Sensitivity(ctx, results)
		if results.Stopped || ctx.Err() != nil {
			return call.ErrInterrupted
		}
		basis.Weigh(entries, influences)
		simulated = results.Summary()
	}
	return b.report(v, entries, simulated, stdout)
}

// report prints the list or writes it as JSON.
func (b *basisCall) report(v *voyage.Voyage, entries []basis.Entry, simulated *result.Summary, stdout io.Writer) error {
	return b.Give(stdout,
		func(w io.Writer) error { return text.Basis(w, v.Plan, entries, simulated) },
		func(w io.Writer) error { return json.Basis(w, v.Plan, entries, simulated) })
}
