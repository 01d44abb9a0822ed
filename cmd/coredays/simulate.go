package main

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"io"
	"slices"

	"github.com/spf13/cobra"

	"coredays/cmd/coredays/call"
	"coredays/model/basis"
	"coredays/model/result"
	"coredays/model/voyage"
	"coredays/output/json"
	"coredays/output/text"
	"coredays/sim"
	"coredays/sim/parts"
	"coredays/sim/share"
	"coredays/sim/statistics"
)

// simulation is a call of simulate.
type simulation struct {
	chosen
	runs  call.Runs
	shard shard
	gate
	call.Answer
	call.Detail
	files
}

func newSimulate() *cobra.Command {
	var s simulation
	cmd := &cobra.Command{
		Use:   "simulate [SCENARIO]",
		Short: "Days needed and what gets done, with their spread",
		Long: `Simulate sails the expedition of a scenario thousands of times and prints two results:
the days that the whole programme needs without a deadline, and what gets done within the
sea days under the rules of the expedition. Without a file it sails the built-in demonstration.

A log for --log is a table with a line for each thing done, in the order of time, and at least the
columns from (when it began, UTC, such as 2027-02-23T20:53), site (empty under way), hole, and
depth_mbsf (of the hole at that time, m below the sea floor; empty before it is spudded). Commas,
semicolons or tabs divide them; other columns are left alone. The ship arrives at a site with its
first line, so let that be the arrival. "coredays diary --csv" writes a simulated one.`,
		Example: `  coredays simulate
  coredays simulate plan.yaml --replications 10000 --seed 7
  coredays simulate plan.yaml --precision 0.2d --json result.json
  coredays simulate plan.yaml --set "sites[0].cap=9 d"
  coredays simulate plan.yaml --report plan.html
  coredays simulate plan.yaml --report plan.html --orders --replications 200
  coredays simulate plan.yaml --report plan.html --log log.csv
  coredays simulate plan.yaml --charts charts --csv tables --xlsx plan.xlsx --geojson track.geojson
  coredays simulate plan.yaml --shard 3/16 --part share-03.part`,
		Args: call.OneScenario,
		RunE: func(c *cobra.Command, args []string) error {
			return s.execute(c.Context(), args, c.OutOrStdout(), c.ErrOrStderr())
		},
	}
	s.chosen.addFlags(cmd)
	s.runs.AddFlags(cmd)
	s.shard.addFlags(cmd)
	s.gate.addFlags(cmd)
	s.Answer.AddFlags(cmd)
	s.Detail.AddFlags(cmd)
	s.files.addFlags(cmd)
	return cmd
}

// execute simulates and reports.
func (s *simulation) execute(ctx context.Context, args []string, stdout, stderr io.Writer) error {
	run, err := s.runs.Run()
	if err != nil {
		return err
	}
	if err := s.misused(); err != nil {
		return err
	}
	var p *prepared
	err = call.OrInterrupted(ctx, func() (err error) {
		p, err = s.prepare(args)
		return err
	})
	if err != nil {
		return err
	}
	if s.shard.asked != "" {
		defer watched(&run, run.Replications/s.shard.which.Of, stderr)()
		return s.shard.sail(ctx, s.call(args, run), listed(p.v), func(put func(any) error) error {
			return parts.SailRun(ctx, p.v, run, s.shard.which, put)
		}, stdout, stderr)
	}
	return s.conclude(ctx, p, replicate(ctx, p.v, run, stderr), run, stdout, stderr)
}

// misused says what is wrong with the call.
func (s *simulation) misused() error {
	if s.shard.asked != "" && s.runs.Precision != "" {
		return errors.New("--precision looks at all replications, which no --shard has")
	}
	return cmp.Or(s.shard.misused(s.runs.Replications, s.JSONFile != "" || s.files != files{}),
		errors.Join(s.files.nowhereToDraw(), s.files.nowhereToShow()))
}

// call is what the shares of the simulation have in common.
func (s *simulation) call(args []string, run sim.Run) share.Call {
	return share.Call{Command: "simulate", Files: args, Settings: s.settings, Anyway: s.anyway, Seed: run.Seed, Replications: run.Replications}
}

// prepared is a simulation that is ready to sail.
type prepared struct {
	args     []string
	v        *voyage.Voyage
	invented bool     // the demonstration
	checked  string   // what the check says, in a sentence
	based    string   // whose numbers it rests on
	warnings []string // of the check
	log      *result.Log
}

// notes are those on the log.
func (p *prepared) notes() (list []string) {
	if p.log != nil {
		for _, note := range p.log.Notes {
			list = append(list, "The log "+p.log.File+": "+note)
		}
	}
	return list
}

// prepare reads and checks all that is needed.
func (s *simulation) prepare(args []string) (*prepared, error) {
	p := &prepared{args: args}
	var err error
	if p.v, p.invented, err = s.load(args); err != nil {
		return nil, err
	}
	if p.checked, p.warnings, err = s.pass(p.v); err != nil {
		return nil, err
	}
	p.based = text.BasedOn(basis.Of(p.v))
	p.log, err = s.files.readLog(p.v.Plan)
	return p, err
}

// conclude says what came out, and writes the files asked for.
func (s *simulation) conclude(ctx context.Context, p *prepared, results *statistics.Results, run sim.Run, stdout, stderr io.Writer) error {
	summary := s.describe(results)
	summary.Anyway, summary.Warnings = s.anyway, slices.Concat(p.warnings, summary.Warnings, p.notes())
	summary.Checked, summary.Based = p.checked, p.based
	summary.Invented, summary.Settings = p.invented, s.settings
	printed := errors.Join(s.tell(summary, stdout), s.tellLog(summary, p.log, stdout))
	orders := s.bestOrder(ctx, p.v, p.args, run, summary, stderr)
	stopped := results.Stopped || orders != nil && orders.StoppedEarly
	if stopped && s.files.wanted() {
		fmt.Fprintln(stderr, "Interrupted: the files are written of what was sailed. Ctrl-C again ends that too.")
	}
	if err := errors.Join(printed, s.files.write(call.EvenIf(stopped, ctx), p.v, results, summary, p.log, orders)); err != nil {
		return err
	}
	if stopped {
		return call.ErrInterrupted
	}
	return nil
}

// describe summarises the results, closely where a file wants that.
func (s *simulation) describe(results *statistics.Results) *result.Summary {
	if s.files.wanted() {
		return results.Closely()
	}
	return results.Summary()
}

// tellLog prints where the log has the ship, unless a program reads standard output.
func (s *simulation) tellLog(summary *result.Summary, log *result.Log, stdout io.Writer) error {
	if log == nil || s.JSONFile == "-" {
		return nil
	}
	return call.AsFault(text.Logged(stdout, summary, log))
}

// tell prints the answer and writes the JSON.
func (s *simulation) tell(summary *result.Summary, stdout io.Writer) error {
	return s.Give(stdout,
		func(w io.Writer) error { return text.Simulation(w, summary, s.Detail.Detail) },
		func(w io.Writer) error { return json.Simulation(w, summary) })
}
