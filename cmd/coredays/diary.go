package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"coredays/cmd/coredays/call"
	"coredays/model/result"
	"coredays/model/voyage"
	"coredays/output/json"
	"coredays/output/sheet"
	"coredays/output/text"
	"coredays/sim"
)

// diary is a call of diary.
type diary struct {
	chosen
	runs        call.Runs
	replication uint32
	numbered    bool // a replication is given
	at          string
	within      bool
	table       string // file of the table
	hours       bool   // print it hour by hour
	gate
	call.Answer
}

func newDiary() *cobra.Command {
	var d diary
	cmd := &cobra.Command{
		Use:   "diary [SCENARIO]",
		Short: "One simulated expedition: why it took so long, day by day or hour by hour",
		Long: `Diary prints what happens in one replication, so that anyone can see why it took so long: the class of
time against P50 of all, the longest waits and troubles, then the days, or with --hours the hours. The replication is that
of a number, or the one whose days needed are nearest to a quantile of all.`,
		Example: `  coredays diary --replication 17
  coredays diary plan.yaml --at P90
  coredays diary plan.yaml --at P90 --within-days
  coredays diary plan.yaml --at P90 --hours
  coredays diary plan.yaml --replication 3 --csv diary.csv`,
		Args: call.OneScenario,
		RunE: func(c *cobra.Command, args []string) error {
			d.numbered = c.Flags().Changed("replication")
			if d.numbered && c.Flags().Changed("at") {
				return errors.New("give --replication or --at, not both")
			}
			return d.execute(c.Context(), args, c.OutOrStdout(), c.ErrOrStderr())
		},
	}
	d.chosen.addFlags(cmd)
	d.runs.AddFlags(cmd)
	d.gate.addFlags(cmd)
	d.Answer.AddFlags(cmd)
	cmd.Flags().Uint32Var(&d.replication, "replication", 0, "number of the replication, from 0; it may be one that no simulation reached")
	cmd.Flags().StringVar(&d.at, "at", "P50", "the replication nearest to a quantile of days needed, such as P90")
	cmd.Flags().Var(call.OutFile(&d.table, call.AsTable...), "csv", "write the diary as a table to `FILE.csv` too, in the form of a log")
	cmd.Flags().BoolVar(&d.hours, "hours", false, "print it hour by hour, not day by day")
	cmd.Flags().BoolVar(&d.within, "within-days", false, "under the rules of the expedition, within its days, instead of the whole programme")
	return cmd
}

// execute prints the diary asked for; without a choice, that of the median.
func (d *diary) execute(ctx context.Context, args []string, stdout, stderr io.Writer) error {
	run, err := d.runs.Run()
	if err != nil {
		return err
	}
	percent, err := parseQuantile(d.at)
	if err != nil {
		return err
	}
	var v *voyage.Voyage
	var anyway []string
	err = call.OrInterrupted(ctx, func() (err error) {
		if v, _, err = d.load(args); err == nil {
			_, anyway, err = d.pass(v)
		}
		return err
	})
	if err != nil {
		return err
	}
	if d.numbered {
		return d.report(d.entry(ctx, v, int(d.replication), "the one asked for"), anyway, stdout)
	}
	results := replicate(ctx, v, run, stderr)
	if results.Stopped {
		return call.ErrInterrupted
	}
	summary := results.Summary()
	why := fmt.Sprintf("the replication nearest to P%g of days needed among %d", percent, summary.Replications)
	book := d.entry(ctx, v, results.Nearest(percent/100), why)
	if book != nil && !d.within {
		book.Usual = &summary.Needed
	}
	return d.report(book, anyway, stdout)
}

// entry makes the diary of a replication; it is nil where that is interrupted.
func (d *diary) entry(ctx context.Context, v *voyage.Voyage, number int, why string) *result.Diary {
	book := sim.Diary(ctx, v, d.runs.Seed, number, d.within)
	if book != nil {
		book.Why = why
	}
	return book
}

// parseQuantile reads P90 as 90 per cent.
func parseQuantile(text string) (float64, error) {
	number, found := strings.CutPrefix(strings.ToUpper(text), "P")
	percent, err := strconv.ParseFloat(number, 64)
	if !found || err != nil || !(percent > 0 && percent < 100) {
		return 0, fmt.Errorf("--at %q: give a quantile above P0 and below P100, such as P90", text)
	}
	return percent, nil
}

// report prints the diary and writes the files asked for.
func (d *diary) report(book *result.Diary, warnings []string, stdout io.Writer) error {
	if book == nil {
		return call.ErrInterrupted
	}
	book.Warnings = warnings
	failed := call.WriteTo(context.Background(), "csv", d.table, func(w io.Writer) error { return sheet.Diary(w, book) })
	return call.AsFault(errors.Join(d.Give(stdout,
		func(w io.Writer) error { return text.Diary(w, book, d.hours) },
		func(w io.Writer) error { return json.Diary(w, book) }), failed))
}
