package main

import (
	"cmp"
	"context"
	"errors"
	"io"
	"slices"

	"github.com/spf13/cobra"

	"coredays/cmd/coredays/call"
	"coredays/model/plan"
	"coredays/model/result"
	"coredays/model/voyage"
	"coredays/output/json"
	"coredays/output/page"
	"coredays/output/sheet"
	"coredays/output/text/alternatives"
	"coredays/output/words"
	"coredays/sim"
	"coredays/sim/choice"
)

// comparison is a call of compare.
type comparison struct {
	chosen
	runs       call.Runs
	shard      shard
	round      string // file of the round that a search has come to
	orders     bool
	departures string
	drop       bool
	tracks     string // file of the map
	page       string // file of the web page
	dated      call.Dated
	csv        string // folder of the tables
	workbook   string // file of the workbook
	gate
	call.Answer
}

func newCompare() *cobra.Command {
	var c comparison
	cmd := &cobra.Command{
		Use:   "compare SCENARIO SCENARIO… | --orders | --departures DATES | --drop [SCENARIO]",
		Short: "Alternatives under the same sea and with the same random numbers: plans, orders, dates, cuts",
		Long: `Compare sets alternatives side by side, replication by replication with the same ground, the same
stream and, on the same date, the same sea, and says which differences are more than noise.

With several scenarios it compares them. With one, or with the built-in demonstration,
  --orders      looks for the best order of the sites among those that the scenario allows;
  --departures  sails the plan on each of several dates: 2027-01-14,2027-02-01 lists them, and
                2027-01-14..2027-06-14/14d goes from the first to the last in steps; a date without
                a time has that of the scenario;
  --drop        tells what each hole, task, measurement and site costs and yields, and what one day
                more would be worth.`,
		Example: `  coredays compare plan.yaml plan.yaml --replications 200
  coredays compare --orders --replications 200
  coredays compare plan.yaml --departures 2027-01-14..2027-03-14/14d --replications 200
  coredays compare plan.yaml --drop --replications 200 --json drop.json
  coredays compare --orders --replications 100 --geojson tracks.geojson
  coredays compare plan.yaml --drop --replications 200 --report drop.html
  coredays compare plan.yaml --drop --replications 200 --csv tables --xlsx drop.xlsx
  coredays compare plan.yaml --drop --replications 200 --shard 3/16 --part share-03.part`,
		RunE: func(cmd *cobra.Command, args []string) error {
			if cmd.Flags().Changed("precision") {
				return errors.New("--precision is for one plan; compare says how many replications would settle a difference")
			}
			return c.execute(cmd.Context(), args, cmd.OutOrStdout(), cmd.ErrOrStderr())
		},
	}
	c.chosen.addFlags(cmd)
	c.runs.AddFlags(cmd)
	c.shard.addFlags(cmd)
	cmd.Flags().Var(call.InFile(&c.round), "round", "with --orders and --shard: sail the round of the search that \"coredays merge --round\" wrote to `FILE`")
	cmd.Flags().BoolVar(&c.orders, "orders", false, "look for the best order of the sites")
	cmd.Flags().Var((*call.FreeText)(&c.departures), "departures", "sail on each of these `dates`, such as 2027-01-14,2027-02-01 or 2027-01-14..2027-06-14/14d")
	cmd.Flags().BoolVar(&c.drop, "drop", false, "tell what each part of the programme costs and yields")
	cmd.Flags().Var(call.OutFile(&c.tracks, call.AsMap...), "geojson", "write the tracks as a map to `FILE` too (GeoJSON)")
	cmd.Flags().Var(call.OutFile(&c.page, call.AsPage...), "report", "write the comparison as one web page to `FILE.html` too: charts and tables, to read offline or to print")
	c.dated.AddFlag(cmd.Flags())
	cmd.Flags().Var(call.OutFolder(&c.csv), "csv", "write the tables of the comparison into `DIR` as CSV files, with dictionary.csv telling the columns")
	cmd.Flags().Var(call.OutFile(&c.workbook, call.AsWorkbook...), "xlsx", "write a workbook of the comparison to `FILE.xlsx`: summary, charts and tables")
	c.gate.addFlags(cmd)
	c.Answer.AddFlags(cmd)
	if precision := cmd.Flags().Lookup("precision"); precision != nil {
		precision.Hidden = true
	}
	return cmd
}

// execute compares and reports.
func (c *comparison) execute(ctx context.Context, args []string, stdout, stderr io.Writer) error {
	run, err := c.runs.Run()
	if err != nil {
		return err
	}
	if err := cmp.Or(c.wanted(args), c.misused(), c.dated.Without(c.page)); err != nil {
		return err
	}
	var r *readyToCompare
	err = call.OrInterrupted(ctx, func() (err error) {
		r, err = c.prepare(args, run)
		return err
	})
	if err != nil {
		return err
	}
	if err := c.make(r); err != nil {
		return err
	}
	if c.shard.asked != "" {
		return c.sailShare(ctx, r, run, stdout, stderr)
	}
	return c.conclude(ctx, r, c.sail(ctx, r, run, stderr), stdout)
}

// readyToCompare is a comparison that is ready to be sailed: a trial, or a search for an order.
type readyToCompare struct {
	args     []string
	voyages  []*voyage.Voyage // as they were read
	warnings []string
	trial    *choice.Trial
	search   *choice.Search
}

// prepare reads and checks all that is needed.
func (c *comparison) prepare(args []string, run sim.Run) (*readyToCompare, error) {
	r := &readyToCompare{args: args}
	var err error
	if r.voyages, r.warnings, err = c.voyages(args); err != nil {
		return nil, err
	}
	if c.orders {
		r.search = choice.NewSearch(r.voyages[0], run)
		return r, c.resume(r, run)
	}
	return r, nil
}

// make makes the alternatives, but for a search.
func (c *comparison) make(r *readyToCompare) (err error) {
	if r.search == nil {
		r.trial, err = c.trial(r)
	}
	return err
}

// trial is what is asked, but for a search.
func (c *comparison) trial(r *readyToCompare) (*choice.Trial, error) {
	v := r.voyages[0]
	var alternatives []choice.Alternative
	switch {
	case c.drop:
		trial, err := choice.Cuts(v)
		return trial, call.AsFault(err)
	case c.departures != "":
		dates, err := call.ParseDates(c.departures, v.Plan.Sails)
		if err != nil {
			return nil, err
		}
		for _, at := range dates {
			alternatives = append(alternatives, choice.Alternative{Name: words.Date(at), Voyage: v.Sailing(at)})
		}
		return choice.Departures(alternatives), nil
	}
	for i, name := range named(r.args) {
		alternatives = append(alternatives, choice.Alternative{Name: name, Voyage: r.voyages[i]})
	}
	return choice.Plans(alternatives), nil
}

// sail does what is asked, with its progress on standard error where that is a terminal.
func (c *comparison) sail(ctx context.Context, r *readyToCompare, run sim.Run, stderr io.Writer) *result.Comparison {
	if r.search != nil {
		defer watched(&run, 0, stderr)()
		return choice.BestOrder(ctx, r.voyages[0], run)
	}
	defer watched(&run, len(r.trial.Alternatives)*run.Replications, stderr)()
	return r.trial.Sail(ctx, run)
}

// conclude says what came out, and writes the files asked for.
func (c *comparison) conclude(ctx context.Context, r *readyToCompare, compared *result.Comparison, stdout io.Writer) error {
	c.label(compared, r.voyages[0].Plan, r.args)
	compared.Warnings = append(r.warnings, ofTheFirst(compared, r.warnings)...)
	return c.report(ctx, compared, stdout)
}

// label says what a comparison is of and how to have it again.
func (c *comparison) label(compared *result.Comparison, p *plan.Plan, args []string) {
	compared.Title, compared.File, compared.Ship, compared.Invented, compared.Call = p.Title, p.File, p.Ship.Name, len(args) == 0, c.call(args)
}

// voyages reads and checks all plans.
func (c *comparison) voyages(args []string) (list []*voyage.Voyage, warnings []string, err error) {
	files := make([][]string, max(1, len(args)))
	for i, file := range args {
		files[i] = []string{file}
	}
	for i, file := range files {
		v, _, err := c.load(file)
		if err != nil {
			return nil, nil, err
		}
		_, anyway, err := c.pass(v)
		if err != nil {
			return nil, nil, err
		}
		list = append(list, v)
		for _, w := range append(slices.Clone(v.Plan.Warnings), anyway...) {
			if len(args) > 1 {
				w = args[i] + ": " + w
			}
			warnings = append(warnings, w)
		}
	}
	return list, warnings, nil
}

// report prints the answer and writes the files asked for.
func (c *comparison) report(ctx context.Context, compared *result.Comparison, stdout io.Writer) error {
	ctx = call.EvenIf(compared.StoppedEarly, ctx)
	var tables error
	if c.csv != "" {
		if err := sheet.ComparisonCSV(ctx, c.csv, compared, program()); err != nil {
			tables = call.Unwritten(ctx, "csv", c.csv, err)
		}
	}
	failed := errors.Join(tables, call.WriteTo(ctx, "xlsx", c.workbook, func(w io.Writer) error { return sheet.ComparisonWorkbook(ctx, w, compared, program()) }),
		call.WriteTo(ctx, "geojson", c.tracks, func(w io.Writer) error { return json.Tracks(w, compared) }),
		call.WriteTo(ctx, "report", c.page, func(w io.Writer) error { return page.Comparison(w, compared, program(), string(c.dated)) }))
	given := c.Give(stdout,
		func(w io.Writer) error { return alternatives.Print(w, compared) },
		func(w io.Writer) error { return json.Comparison(w, compared) })
	if err := errors.Join(given, failed); err != nil {
		return call.AsFault(err)
	}
	if compared.StoppedEarly {
		return call.ErrInterrupted
	}
	return nil
}
