package main

import (
	"context"
	"fmt"
	"io"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"coredays/model/logbook"
	"coredays/model/voyage"
	"coredays/output"
	"coredays/sim"
)

// diary is a call of diary.
type diary struct {
	chosen
	runs        runs
	replication int
	at          string
	within      bool
	jsonFile    string
}

func newDiary() *cobra.Command {
	var d diary
	cmd := &cobra.Command{
		Use:   "diary [SCENARIO]",
		Short: "One simulated expedition, hour by hour",
		Long: `Diary prints all that happens in one replication, so that anyone can see why it took so long:
the replication of a number, or the one whose days needed are nearest to a quantile of all.`,
		Example: `  coredays diary --replication 17
  coredays diary plan.yaml --at P90
  coredays diary plan.yaml --at P90 --within-days`,
		Args: cobra.MaximumNArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			return d.execute(c.Context(), args, c.OutOrStdout(), c.ErrOrStderr())
		},
	}
	d.addFlags(cmd)
	d.runs.addFlags(cmd)
	cmd.Flags().IntVar(&d.replication, "replication", -1, "number of the replication, from 0")
	cmd.Flags().StringVar(&d.at, "at", "", "the replication nearest to a quantile of days needed, such as P90")
	cmd.Flags().BoolVar(&d.within, "within-days", false, "under the rules of the expedition, within its days, instead of the whole programme")
	cmd.Flags().StringVar(&d.jsonFile, "json", "", "write the diary as JSON to `FILE`, or to standard output for -")
	cmd.MarkFlagsMutuallyExclusive("replication", "at")
	return cmd
}

// execute prints the diary asked for; without a choice, that of the median.
func (d *diary) execute(ctx context.Context, args []string, stdout, stderr io.Writer) error {
	run, err := d.runs.run()
	if err != nil {
		return err
	}
	quantile, err := parseQuantile(d.at)
	if err != nil {
		return err
	}
	v, _, err := d.load(args)
	if err != nil {
		return err
	}
	number, why := d.replication, fmt.Sprintf("replication %d", d.replication)
	if number < 0 {
		results := replicate(ctx, v, run, stderr)
		if results.Stopped {
			return errInterrupted
		}
		number = results.Nearest(quantile)
		why = fmt.Sprintf("the replication nearest to P%g of days needed among %d", 100*quantile, run.Replications)
	}
	return d.report(entry(v, d.runs.seed, number, d.within, why), stdout)
}

// entry makes the diary of a replication.
func entry(v *voyage.Voyage, seed uint64, number int, within bool, why string) *logbook.Diary {
	book := sim.Diary(v, seed, number, within)
	book.Why = why
	return book
}

// parseQuantile reads P90 as 0.9; nothing is the median.
func parseQuantile(text string) (float64, error) {
	if text == "" {
		return 0.5, nil
	}
	number, found := strings.CutPrefix(strings.ToUpper(text), "P")
	p, err := strconv.ParseFloat(number, 64)
	if !found || err != nil || !(p > 0 && p < 100) {
		return 0, fmt.Errorf("--at %q: give a quantile between P1 and P99, such as P90", text)
	}
	return p / 100, nil
}

// report prints the diary or writes it as JSON.
func (d *diary) report(book *logbook.Diary, stdout io.Writer) error {
	asJSON := func(w io.Writer) error { return output.DiaryJSON(w, book) }
	if d.jsonFile == "-" {
		return asJSON(stdout)
	}
	if d.jsonFile != "" {
		if err := output.WriteFile(d.jsonFile, asJSON); err != nil {
			return fault{err}
		}
	}
	return output.Diary(stdout, book)
}
