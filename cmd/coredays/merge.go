package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"

	"github.com/spf13/cobra"

	"coredays/sim"
)

func newMerge() *cobra.Command {
	var s simulation
	cmd := &cobra.Command{
		Use:   "merge PART…",
		Short: "The shares of a simulation put together: the same answer as from one machine",
		Long: `Merge puts together what "coredays simulate --shard" wrote on several machines, and gives the answer
that one machine would have given, to the last digit. It reads the scenario again from where it was, and
sails one replication of each share again: that it comes out the same shows that scenario, program and
kind of machine are the same.`,
		Example: `  coredays simulate plan.yaml --shard 1/2 --part one.part && coredays simulate plan.yaml --shard 2/2 --part two.part && coredays merge one.part two.part --json result.json`,
		Args:    taking(1, 1_000_000, "the parts that were sailed"),
		RunE: func(c *cobra.Command, args []string) error {
			return s.merge(c.Context(), args, c.OutOrStdout(), c.ErrOrStderr())
		},
	}
	s.answer.addFlags(cmd)
	s.files.addFlags(cmd)
	return cmd
}

// merge reads the shares and reports as if all had been sailed here.
func (s *simulation) merge(ctx context.Context, paths []string, stdout, stderr io.Writer) error {
	if err := s.misused(); err != nil {
		return err
	}
	call, parts, err := readParts(paths)
	if err != nil {
		return fault{err}
	}
	s.settings, s.anyway = call.Settings, call.Anyway
	p, err := s.prepare(call.Scenario)
	if errors.Is(err, fs.ErrNotExist) {
		return fault{fmt.Errorf("%w: the shares name it so; merge them in the folder where they were sailed", err)}
	}
	if err != nil {
		return err
	}
	results, err := sim.Join(p.v, parts)
	if err == nil && results.Replications() < call.Replications {
		err = fmt.Errorf("replications %d to %d are in no part", results.Replications(), call.Replications-1)
	}
	if err != nil {
		return fault{err}
	}
	return s.conclude(ctx, p, results, sim.Run{Seed: call.Seed, Replications: call.Replications}, stdout, stderr)
}
