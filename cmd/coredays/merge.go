package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"

	"github.com/spf13/cobra"

	"coredays/model/listing"
	"coredays/sim"
	"coredays/sim/parts"
	"coredays/sim/statistics"
)

func newMerge() *cobra.Command {
	var s simulation
	cmd := &cobra.Command{
		Use:   "merge PART…",
		Short: "The shares of a simulation put together: the same answer as from one machine",
		Long: `Merge puts together what "coredays simulate --shard" wrote on several machines, and gives the answer
that one machine would have given, to the last digit. It reads the scenario again from where it was. A share
that is damaged, or of a plan that differs from it in any figure, of the ship and the records too, is refused,
with what differs; so is one of another version of the program or another kind of machine. One replication of each
share is sailed again and must come out the same, which shows what versions do not tell.`,
		Example: `  coredays simulate plan.yaml --shard 1/2 --part one.part && coredays simulate plan.yaml --shard 2/2 --part two.part && coredays merge one.part two.part --json result.json`,
		Args:    taking(1, 1_000_000, "the parts that were sailed"),
		RunE: func(c *cobra.Command, args []string) error {
			return s.merge(c.Context(), args, c.OutOrStdout(), c.ErrOrStderr())
		},
	}
	s.cmd = cmd
	s.answer.addFlags(cmd)
	s.detail.addFlags(cmd)
	s.files.addFlags(cmd)
	return cmd
}

// merge reads the shares and reports as if all had been sailed here.
func (s *simulation) merge(ctx context.Context, paths []string, stdout, stderr io.Writer) error {
	if err := s.misused(); err != nil {
		return err
	}
	var p *prepared
	var results *statistics.Results
	var call partCall
	err := orInterrupted(ctx, func() error {
		shares, err := readParts(paths)
		if err != nil {
			return planFault{err}
		}
		call = shares[0].Call
		if p, err = s.prepareToMerge(&call); err != nil {
			return err
		}
		results, err = joined(ctx, p, shares)
		return asFault(err)
	})
	if err != nil {
		return err
	}
	return s.conclude(ctx, p, results, sim.Run{Seed: call.Seed, Replications: call.Replications}, stdout, stderr)
}

// prepareToMerge reads the scenario again that the shares were sailed of.
func (s *simulation) prepareToMerge(call *partCall) (*prepared, error) {
	if err := sparesInputs(s.cmd, call.Scenario); err != nil {
		return nil, err
	}
	s.settings, s.anyway = call.Settings, call.Anyway
	p, err := s.prepare(call.Scenario)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, planFault{fmt.Errorf("%w: the shares name it so; merge them in the folder where they were sailed", err)}
	}
	return p, err
}

// joined puts the shares together that are of the plan as it stands here and now.
func joined(ctx context.Context, p *prepared, shares []*partFile) (*statistics.Results, error) {
	if sailed := shares[0].Program; sailed != machine() {
		return nil, fmt.Errorf("the shares were sailed by %s, and this is %s: merge them with the program that sailed them", sailed, machine())
	}
	if what := inWhatPlansDiffer(shares[0].Plan, listing.Of(p.v.Plan)); what != "" {
		return nil, fmt.Errorf("%s is not the plan that was sailed (the one is the shares', the other the file's now): %s", p.v.Plan.File, what)
	}
	var list []parts.Part
	for _, share := range shares {
		list = append(list, share.Part)
	}
	results, err := parts.Join(ctx, p.v, list)
	if err == nil && results.Replications() < shares[0].Call.Replications {
		err = fmt.Errorf("replications %d to %d are in no part", results.Replications(), shares[0].Call.Replications-1)
	}
	return results, err
}
