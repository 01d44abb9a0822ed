package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"time"

	"github.com/spf13/cobra"
	"golang.org/x/term"

	"coredays/cmd/coredays/call"
	"coredays/cmd/coredays/lookahead"
	"coredays/model/morning"
	"coredays/model/voyage"
	"coredays/output/json"
	webpage "coredays/output/page"
	"coredays/output/text/mornings"
	"coredays/scenario/statefile"
	"coredays/sim"
)

// lookaheadCall is a call of lookahead.
type lookaheadCall struct {
	chosen
	log, cores, state, forecast, before string
	write, at, report                   string
	runs                                call.Runs
	call.Answer
}

func newLookahead() *cobra.Command {
	var l lookaheadCall
	cmd := &cobra.Command{
		Use:   "lookahead SCENARIO --log LOG.csv",
		Short: "Each morning at sea: what still fits, and when to leave",
		Long: `Lookahead reads the ship's operations log and her core table, says where she stands, learns from them how quick
she is, and sails the rest of the expedition from there, thousands of times. It prints one page: the latest
times to leave, the next days, what becomes of each hole and task, what each choice is worth, how far ahead or
behind the plan the ship is and why, and what was learned.

The log has the columns from, to, what, site, hole and depth_mbsf (README); a table that "coredays diary --csv"
writes is one. What the log does not tell is put right by a file: --write-state writes it, commented, and
--state reads it again. A forecast is a table with the columns time and hs_m. --before takes the page that
--json wrote the day before.

A plan is an estimate, not a clearance. The master and the driller decide.`,
		Example: `  coredays lookahead voyage.yaml --log shiplog.csv --cores deck.csv
  coredays lookahead voyage.yaml --log shiplog.csv --at 2028-01-28T06:00Z --forecast forecast.csv --json today.json
  coredays lookahead voyage.yaml --log shiplog.csv --write-state state.yaml`,
		Args: cobra.ExactArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			return l.execute(c.Context(), args, c.OutOrStdout(), c.ErrOrStderr())
		},
	}
	l.chosen.addFlags(cmd)
	l.Answer.AddFlags(cmd)
	f := cmd.Flags()
	f.Var(call.InFile(&l.log), "log", "the ship's operations log, from `LOG.csv`")
	f.Var(call.InFile(&l.cores), "cores", "her core table, from `CORES.csv`")
	f.Var(call.InFile(&l.state), "state", "put right what the log does not tell, from `STATE.yaml`")
	f.Var(call.OutFile(&l.write, ".yaml", ".yml"), "write-state", "write where the ship stands to `FILE.yaml`, to put right, and do nothing else")
	f.Var(call.InFile(&l.forecast), "forecast", "waves forecast, from `FORECAST.csv` with the columns time and hs_m")
	f.Var(call.InFile(&l.before), "before", "say what changed since the page that --json wrote to `YESTERDAY.json`")
	f.Var(call.OutFile(&l.report, call.AsPage...), "report", "write a web page to `FILE.html`, to look at and hand round")
	f.Var((*call.FreeText)(&l.at), "at", "the moment of the page, as `TIME` such as 2027-03-11T06:00Z; without it the end of the log")
	f.IntVar(&l.runs.Replications, "replications", 1000, "how often to sail the rest of the expedition, for each choice")
	f.Uint64Var(&l.runs.Seed, "seed", 1, "seed of all chance: the same seed gives the same answer")
	f.IntVar(&l.runs.Workers, "workers", 0, "how many to sail at a time; 0 for one a processor; the answer is the same")
	return cmd
}

// execute makes the page and prints it.
func (l *lookaheadCall) execute(ctx context.Context, args []string, stdout, stderr io.Writer) error {
	if l.log == "" {
		return errors.New("lookahead needs the ship's operations log: --log LOG.csv")
	}
	run, err := l.runs.Run()
	if err != nil {
		return err
	}
	files, err := l.files()
	if err != nil {
		return err
	}
	var v *voyage.Voyage
	if err := call.OrInterrupted(ctx, func() (err error) { v, _, err = l.load(args); return err }); err != nil {
		return err
	}
	if l.write != "" {
		p, st, _, err := lookahead.Taken(v.Plan, files)
		if err != nil {
			return call.AsFault(err)
		}
		return call.AsFault(call.WriteTo(ctx, "write-state", l.write, func(w io.Writer) error { return statefile.Write(w, p, st) }))
	}
	if err := l.roughly(ctx, v, files, run, stderr); err != nil {
		return call.AsFault(err)
	}
	page, err := lookahead.Page(ctx, v, files, run)
	switch {
	case ctx.Err() != nil:
		return call.ErrInterrupted
	case err != nil:
		return call.AsFault(err)
	}
	if err := l.compare(page); err != nil {
		return call.AsFault(err)
	}
	if err := call.WriteTo(ctx, "report", l.report, func(w io.Writer) error { return webpage.Morning(w, page, program()) }); err != nil {
		return call.AsFault(err)
	}
	return l.Give(stdout,
		func(w io.Writer) error { return mornings.Print(w, page) },
		func(w io.Writer) error { return json.Morning(w, page) })
}

// roughReplications are those of a first answer: P50 of the arrival within a tenth of its spread.
const roughReplications = 100

// roughly gives a first answer, in a line, to who waits for the page before a terminal.
func (l *lookaheadCall) roughly(ctx context.Context, v *voyage.Voyage, files lookahead.Papers, run sim.Run, stderr io.Writer) error {
	if terminal, is := stderr.(*os.File); !is || !term.IsTerminal(int(terminal.Fd())) || run.Replications <= roughReplications {
		return nil
	}
	run.Replications = roughReplications
	page, err := lookahead.Page(ctx, v, files, run)
	if ctx.Err() != nil {
		return nil // told by the page that follows
	}
	if err != nil {
		return err
	}
	_, err = fmt.Fprintln(stderr, "Rough, refining: "+mornings.InBrief(page))
	return err
}

// files reads what the flags name.
func (l *lookaheadCall) files() (f lookahead.Papers, err error) {
	if l.at != "" {
		if f.At, err = time.Parse("2006-01-02T15:04Z07:00", l.at); err != nil {
			if f.At, err = time.Parse(time.RFC3339, l.at); err != nil {
				return f, fmt.Errorf("--at %q: write a time such as 2027-03-11T06:00Z", l.at)
			}
		}
		f.At = f.At.UTC()
	}
	read := func(name string) *lookahead.File {
		if name == "" {
			return nil
		}
		data, wrong := contents(name)
		if wrong != nil {
			err = errors.Join(err, call.AsFault(wrong))
		}
		return &lookahead.File{Name: name, Data: data}
	}
	f.Log = *read(l.log)
	f.Cores, f.State, f.Forecast = read(l.cores), read(l.state), read(l.forecast)
	return f, err
}

// compare says what changed since the page before.
func (l *lookaheadCall) compare(page *morning.Page) error {
	if l.before == "" {
		return nil
	}
	data, err := contents(l.before)
	if err != nil {
		return err
	}
	before, err := json.ReadMorning(l.before, data)
	if err != nil {
		return err
	}
	if before.At.After(page.At) {
		return fmt.Errorf("%s: it is of %s, after the moment of this page", l.before, before.At.Format(time.RFC3339))
	}
	page.Before = before.Changed(page)
	return nil
}
