package main

import (
	"cmp"
	"context"
	"errors"
	"io"
	"slices"

	"github.com/spf13/cobra"

	"coredays/cmd/coredays/call"
	"coredays/cmd/coredays/studied"
	"coredays/model/result"
	"coredays/model/voyage"
	"coredays/output/json"
	"coredays/output/page"
	"coredays/output/sheet"
	"coredays/output/text/alternatives"
	"coredays/sim"
	"coredays/sim/parts"
	"coredays/sim/share"
	"coredays/sim/study"
)

// studying is a call of study.
type studying struct {
	cmd   *cobra.Command
	runs  call.Runs
	shard shard
	csv   string // folder
	dated call.Dated
	page  string // file of the web page
	gate
	call.Answer
}

func newStudy() *cobra.Command {
	var s studying
	cmd := &cobra.Command{
		Use:   "study STUDY.yaml",
		Short: "Many plans at once: scenarios by dates by settings, a row each",
		Long: `Study simulates every plan that a study file lists: each scenario with each setting on each date. The answer is a
table with a row for each plan: days needed, chances, metres, as "coredays simulate" gives them for that plan alone.

  version: 1
  title: Two transects, when and for how long      # without it the name of the file
  scenarios: [north.yaml, south.yaml]              # from the folder of this file on
  dates: 2027-01-14..2028-12-14/30d                # without it each scenario sails on its own date
  vary:                                            # without it each is as it stands
    - {set: sea_days, to: [50 d, 56 d, 60 d]}
    - {set: "sites[SB-01].cap", to: [9 d, 12 d]}

A setting is what --set takes, path and value; dates are what "coredays compare --departures" takes. All plans are
read and checked before the first is simulated. What one machine takes too long for, several share: --shard.`,
		Example: `  coredays study study.yaml --replications 200
  coredays study study.yaml --replications 200 --csv tables --report study.html --json study.json
  coredays study study.yaml --replications 200 --shard 3/16 --part share-03.part`,
		Args: call.Taking(1, 1, "one study"),
		RunE: func(c *cobra.Command, args []string) error {
			if c.Flags().Changed("precision") {
				return errors.New("--precision is for one plan; a study gives each the same replications")
			}
			return s.execute(c.Context(), args[0], c.OutOrStdout(), c.ErrOrStderr())
		},
	}
	s.cmd = cmd
	s.runs.AddFlags(cmd)
	s.shard.addFlags(cmd)
	cmd.Flags().Var(call.OutFolder(&s.csv), "csv", "write the table into `DIR` as CSV, with dictionary.csv telling the columns")
	cmd.Flags().Var(call.OutFile(&s.page, call.AsPage...), "report", "write the study as one web page to `FILE.html` too: charts and table, to read offline or to print")
	s.dated.AddFlag(cmd.Flags())
	s.gate.addFlags(cmd)
	s.Answer.AddFlags(cmd)
	if precision := cmd.Flags().Lookup("precision"); precision != nil {
		precision.Hidden = true
	}
	return cmd
}

// execute simulates and reports.
func (s *studying) execute(ctx context.Context, file string, stdout, stderr io.Writer) error {
	run, err := s.runs.Run()
	if err != nil {
		return err
	}
	if err := cmp.Or(s.shard.misused(run.Replications, s.JSONFile != "" || s.csv != "" || s.page != ""), s.dated.Without(s.page)); err != nil {
		return err
	}
	var p *studied.Plans
	first, end := 0, 0
	err = call.OrInterrupted(ctx, func() (err error) {
		if p, err = s.read(ctx, file, run); err != nil {
			return err
		}
		if first, end = 0, p.Count()*run.Replications; s.shard.asked != "" {
			first, end = parts.StudyRange(p.Sailed(), run.Replications, s.shard.which)
		}
		return call.AsFault(p.Check(ctx, first, end, run.Workers, s.passes))
	})
	if err != nil {
		return err
	}
	defer watched(&run, end-first, stderr)()
	if s.shard.asked != "" {
		return s.shard.sail(ctx, s.call(file, run), p.Listing(), func(put func(any) error) error {
			if err := put(p.Warnings); err != nil {
				return err
			}
			return parts.SailStudy(ctx, p.Sailed(), run, s.shard.which, put)
		}, stdout, stderr)
	}
	g := study.Gather(run.Replications)
	err = study.Sail(ctx, p.Sailed(), run, first, end, g.Add)
	if err != nil && ctx.Err() == nil {
		return call.AsFault(err)
	}
	return s.conclude(ctx, p, g.Plans, run, stdout)
}

// read reads the study and all its scenarios.
func (s *studying) read(ctx context.Context, file string, run sim.Run) (*studied.Plans, error) {
	p, err := studied.Read(ctx, file, run.Replications, run.Workers)
	if err != nil {
		return nil, call.AsFault(err)
	}
	return p, call.SparesInputs(s.cmd, p.Reads())
}

// passes says what the check warns of.
func (s *studying) passes(v *voyage.Voyage) (warnings []string, err error) {
	_, warnings, err = s.pass(v)
	return warnings, err
}

// call is what the shares of the study have in common.
func (s *studying) call(file string, run sim.Run) share.Call {
	return share.Call{Command: "study", Files: []string{file}, Anyway: s.anyway, Seed: run.Seed, Replications: run.Replications}
}

// conclude says what came out, and writes the files asked for.
func (s *studying) conclude(ctx context.Context, p *studied.Plans, figures []result.PlanFigures, run sim.Run, stdout io.Writer) error {
	r := p.Result(figures)
	r.Seed, r.Replications, r.StoppedEarly = run.Seed, run.Replications, len(figures) < p.Count()
	r.Call = []string{p.Study.File}
	if s.anyway {
		r.Call = append(r.Call, "--anyway")
	}
	files := call.EvenIf(r.StoppedEarly, ctx)
	var failed error
	if s.csv != "" {
		if err := sheet.StudyCSV(files, s.csv, r); err != nil {
			failed = call.Unwritten(files, "csv", s.csv, err)
		}
	}
	failed = errors.Join(failed, call.WriteTo(files, "report", s.page, func(w io.Writer) error { return page.Study(w, r, program(), string(s.dated)) }))
	given := s.Give(stdout, func(w io.Writer) error { return alternatives.Study(w, r) }, func(w io.Writer) error { return json.Study(w, r) })
	if err := errors.Join(given, failed); err != nil {
		return call.AsFault(err)
	}
	if r.StoppedEarly {
		return call.ErrInterrupted
	}
	return nil
}

// study puts together what study sailed.
func (m *merging) study(ctx context.Context, all share.All) (joined, error) {
	shared, run := &all[0].Head.Call, runOf(&all[0].Head.Call)
	s := &studying{cmd: m.cmd, gate: gate{shared.Anyway}, Answer: m.Answer, csv: m.files.csv, page: m.files.report, dated: m.files.dated}
	p, err := s.read(ctx, shared.Files[0], run)
	if err != nil {
		return nil, err
	}
	if err := asSailed(all, p.Study.File, p.Listing()); err != nil {
		return nil, err
	}
	for _, share := range all {
		var checked []studied.Checked
		if err := share.Take(&checked); err != nil {
			return nil, call.AsFault(err)
		}
		p.Warnings = append(p.Warnings, checked...)
	}
	slices.SortStableFunc(p.Warnings, func(a, b studied.Checked) int { return cmp.Compare(a.Number, b.Number) })
	figures, err := parts.JoinStudy(ctx, p.Sailed(), run, all)
	return func(ctx context.Context, stdout, _ io.Writer) error { return s.conclude(ctx, p, figures, run, stdout) }, call.AsFault(err)
}
