package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"coredays/cmd/coredays/call"
	"coredays/model/listing"
	"coredays/sim"
	"coredays/sim/parts"
	"coredays/sim/share"
)

// merging is a call of merge.
type merging struct {
	cmd   *cobra.Command
	round string // file for the next round of a search
	call.Answer
	call.Detail
	files
}

func newMerge() *cobra.Command {
	var m merging
	cmd := &cobra.Command{
		Use:   "merge PART…",
		Short: "The shares of several machines put together: the same answer as from one",
		Long: `Merge puts together what "coredays simulate --shard", or compare, hindcast or study with --shard, wrote on
several machines, and gives the answer that one machine would have given, to the last digit. It reads the scenario
again from where it was. A share that is damaged, or of a plan that differs from it in any figure, of the ship and
the records too, is refused, with what differs; so is one of another version of the program or another kind of
machine. One replication of each share is sailed again and must come out the same, which shows what versions do
not tell. A share that is missing, or there twice, is told by its number.

A search for the best order goes in rounds: "coredays compare --orders --shard" sails a share of the first one. Merge
writes the next one to --round FILE, from which compare --round FILE sails it; after the last round it writes none, and
gives the answer. A search has at most seven rounds.`,
		Example: `  coredays simulate plan.yaml --shard 1/2 --part one.part && coredays simulate plan.yaml --shard 2/2 --part two.part && coredays merge one.part two.part --json result.json`,
		Args:    call.Taking(1, share.Most, "the parts that were sailed"),
		RunE: func(c *cobra.Command, args []string) error {
			return m.execute(c.Context(), args, c.OutOrStdout(), c.ErrOrStderr())
		},
	}
	m.cmd = cmd
	m.Answer.AddFlags(cmd)
	m.Detail.AddFlags(cmd)
	m.files.addFlags(cmd)
	cmd.Flags().Var(call.OutFile(&m.round), "round", "of a search for the best order: the `FILE` for the next round, where there is one")
	return cmd
}

// joined is what shares came to: it gives the answer.
type joined func(ctx context.Context, stdout, stderr io.Writer) error

// execute reads the shares and reports as if all had been sailed here.
func (m *merging) execute(ctx context.Context, paths []string, stdout, stderr io.Writer) error {
	if err := errors.Join(m.files.nowhereToDraw(), m.files.nowhereToShow()); err != nil {
		return err
	}
	var conclude joined
	err := call.OrInterrupted(ctx, func() error {
		all, err := share.OpenAll(paths)
		if err != nil {
			return call.AsFault(err)
		}
		defer all.Close()
		conclude, err = m.join(ctx, all)
		return err
	})
	if err != nil {
		return err
	}
	return conclude(ctx, stdout, stderr)
}

// join puts the shares together by the command that sailed them.
func (m *merging) join(ctx context.Context, all share.All) (joined, error) {
	head := &all[0].Head
	if err := m.fits(head.Call.Command); err != nil {
		return nil, err
	}
	if head.Program != machine() {
		return nil, call.AsFault(fmt.Errorf("the shares were sailed by %s, and this is %s: merge them with the program that sailed them", head.Program, machine()))
	}
	if err := call.SparesInputs(m.cmd, head.Call.Files); err != nil {
		return nil, err
	}
	how := map[string]func(context.Context, share.All) (joined, error){"simulate": m.simulation, "compare": m.comparison, "hindcast": m.hindcast, "study": m.study}
	conclude, err := how[head.Call.Command](ctx, all)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, call.AsFault(fmt.Errorf("%w: the shares name it so; merge them in the folder where they were sailed", err))
	}
	return conclude, err
}

// fits refuses flags that the command which sailed the shares has not.
func (m *merging) fits(command string) (err error) {
	of, _, _ := m.cmd.Root().Find([]string{command})
	m.cmd.Flags().Visit(func(f *pflag.Flag) {
		if err == nil && of.Flags().Lookup(f.Name) == nil {
			err = fmt.Errorf("--%s: the parts are of coredays %s, which has no such flag", f.Name, command)
		}
	})
	return err
}

// asSailed refuses shares of other plans than there are now.
func asSailed(all share.All, file string, now [][]listing.Line) error {
	if what := share.PlansDiffer(all[0].Head.Plans, now); what != "" {
		return call.AsFault(fmt.Errorf("%s is not the plan that was sailed (the one is the shares', the other the file's now): %s", file, what))
	}
	return nil
}

// runOf is the run that was shared out.
func runOf(shared *share.Call) sim.Run {
	return sim.Run{Seed: shared.Seed, Replications: shared.Replications}
}

// simulation puts together what simulate sailed.
func (m *merging) simulation(ctx context.Context, all share.All) (joined, error) {
	shared := &all[0].Head.Call
	s := &simulation{chosen: chosen{settings: shared.Settings, cmd: m.cmd}, gate: gate{shared.Anyway}, Answer: m.Answer, Detail: m.Detail, files: m.files}
	p, err := s.prepare(shared.Files)
	if err != nil {
		return nil, err
	}
	if err := asSailed(all, p.v.Plan.File, listed(p.v)); err != nil {
		return nil, err
	}
	results, err := parts.JoinRun(ctx, p.v, runOf(shared), all)
	return func(ctx context.Context, stdout, stderr io.Writer) error {
		return s.conclude(ctx, p, results, runOf(shared), stdout, stderr)
	}, call.AsFault(err)
}
